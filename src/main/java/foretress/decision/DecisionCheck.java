package foretress.decision;

import foretress.assessment.Service;
import foretress.decision.DecisionForm.One;
import foretress.intake.BookedChemistry;
import foretress.intake.Intake;
import foretress.salon.Menu;
import foretress.salon.Role;
import foretress.salon.Staff;
import foretress.visit.Visit;
import foretress.web.Mistakes;
import jakarta.enterprise.context.RequestScoped;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Says beside each field of the decision form what to put right, and who may not do what it asks. */
@RequestScoped
class DecisionCheck {
    private final Gate gate;
    private final BookedChemistry chemistry;
    private final Intake intake;
    private final Menu menu;
    private final DecisionText text;
    private final DecisionWords say;

    DecisionCheck(Gate gate, BookedChemistry chemistry, Intake intake, Menu menu, DecisionText text,
        DecisionWords say) {
        this.gate = gate;
        this.chemistry = chemistry;
        this.intake = intake;
        this.menu = menu;
        this.text = text;
        this.say = say;
    }

    /**
     * What reading came to.
     *
     * @param refusal why it may not be done at all, whatever is put right
     * @param against findings in the way are gone against, so the owner proves again who they are
     */
    record Checked(Optional<Refusal> refusal, boolean against, Mistakes mistakes) {}

    Checked check(Visit visit, CurrentAssessment.Now now, DecisionForm form, Staff by) {
        var mistakes = new Mistakes();
        Gate.Open open = gate.open(visit, now);
        var decider = new Refusal.Decider(by.role == Role.OWNER, form.reason());
        Set<Refusal> refusals = EnumSet.noneOf(Refusal.class);
        boolean against = false;
        mistakes.expect(DecisionForm.uuid(form.submission()).isPresent(), "verdict-0", say.visit_over());
        Refusal.of(visit.state).ifPresent(refusal -> say(refusal, 0, mistakes));
        List<Service> planned = chemistry.services(visit);
        for (int place = 0; place < planned.size(); place++) {
            One one = form.services().get(place);
            List<Gate.Weighing> on = gate.on(visit, now, planned.get(place));
            Set<Refusal> here =
                one.chosen().map(verdict -> Refusal.of(new Refusal.Asked(verdict, one.conditions()), decider, open, on))
                    .orElse(Set.of());
            mistakes.expect(one.chosen().isPresent(), "verdict-" + place,
                say.verdict_missing(text.service(planned.get(place).id())));
            for (Refusal refusal : here) {
                say(refusal, place, mistakes);
            }
            fields(one, place, intake.today(visit), mistakes);
            refusals.addAll(here);
            against |=
                one.chosen().filter(Verdict::goesAhead).isPresent() && on.stream().anyMatch(Gate.Weighing::inTheWay);
        }
        mistakes.expect(!refusals.contains(Refusal.WITHOUT_REASON), "reason", say.reason_missing());
        mistakes.expect(form.reason().length() <= DecisionForm.LONGEST, "reason",
            say.conditions_long(DecisionForm.LONGEST));
        return new Checked(Stream.of(Refusal.LASTING, Refusal.OWNER_ONLY).filter(refusals::contains).findFirst(),
            against, mistakes);
    }

    /** What can be put right on the page is said once beside its field. */
    private void say(Refusal refusal, int place, Mistakes mistakes) {
        switch (refusal) {
            case NOT_BEGUN -> mistakes.add("verdict-" + place, say.visit_not_answered(false));
            case OVER -> mistakes.add("verdict-" + place, say.visit_over());
            case NOT_ANSWERED, NOT_ON_THE_DAY, NOT_SIGNED, SPOT_NOT_SEEN, RESTRICTED ->
                mistakes.expect(mistakes.at("verdict-" + place).isPresent(), "verdict-" + place, say.verdict_not_now());
            case WITHOUT_CONDITIONS -> mistakes.add("conditions-" + place, say.conditions_missing());
            case OUTDATED, LASTING, OWNER_ONLY, WITHOUT_REASON -> {}
        }
    }

    private void fields(One one, int place, LocalDate today, Mistakes mistakes) {
        boolean later = one.chosen().filter(Verdict.POSTPONE::equals).isPresent();
        mistakes.expect(one.conditions().length() <= DecisionForm.LONGEST, "conditions-" + place,
            say.conditions_long(DecisionForm.LONGEST));
        mistakes.expect(!later || one.day().filter(day -> day.isAfter(today)).isPresent(), "until-" + place,
            say.until_wrong());
        mistakes.expect(one.alternative().isEmpty() || menu.service(one.alternative()).isPresent(),
            "alternative-" + place,
            say.alternative_none());
    }
}
