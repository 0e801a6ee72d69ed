package foretress.decision;

import foretress.assessment.Service;
import foretress.assessment.Weight;
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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says beside each field of the decision form what to put right, and who may not do what it asks. */
@RequestScoped
class DecisionCheck {
    private final Gate gate;
    private final BookedChemistry chemistry;
    private final Intake intake;
    private final Menu menu;
    private final DecisionText text;
    private final DecisionWords say;

    DecisionCheck(Gate gate, BookedChemistry chemistry, Intake intake, Menu menu, DecisionText text, DecisionWords say) {
        this.gate = gate;
        this.chemistry = chemistry;
        this.intake = intake;
        this.menu = menu;
        this.text = text;
        this.say = say;
    }

    /** Why it may not be done at all. */
    enum Refusal { NOBODY_MAY, ONLY_THE_OWNER_MAY }

    /**
     * What reading came to.
     *
     * @param against findings in the way are gone against, so the owner proves again who they are
     */
    record Checked(Optional<Refusal> refusal, boolean against, Mistakes mistakes) {}

    Checked check(Visit visit, Assessed.Now now, DecisionForm form, Staff by) {
        Mistakes mistakes = new Mistakes();
        Gate.Open open = gate.open(visit, now);
        List<Gate.Weighing> against = new ArrayList<>();
        mistakes.expect(DecisionForm.uuid(form.submission()).isPresent() && visit.state.isAhead(), "verdict-0", say.visit_over());
        List<Service> planned = chemistry.services(visit);
        for (int place = 0; place < planned.size(); place++) {
            One one = form.services().get(place);
            List<Gate.Weighing> on = gate.on(visit, now, planned.get(place));
            verdict(one, place, text.service(planned.get(place).id()), on, open, mistakes);
            fields(one, place, intake.today(visit), mistakes);
            if (ahead(one)) {
                on.stream().filter(Gate.Weighing::inTheWay).forEach(against::add);
            }
        }
        reason(form, !against.isEmpty(), mistakes);
        return new Checked(refusal(against, by), !against.isEmpty(), mistakes);
    }

    private void verdict(One one, int place, String service, List<Gate.Weighing> on, Gate.Open open, Mistakes mistakes) {
        boolean plain = one.chosen().filter(Verdict.PROCEED::equals).isPresent();
        boolean fits = !ahead(one) || open.none() && (!plain || Gate.standing(on).compareTo(Weight.RESTRICTS) < 0);
        if (mistakes.expect(one.chosen().isPresent(), "verdict-" + place, say.verdict_missing(service))) {
            mistakes.expect(fits, "verdict-" + place, say.verdict_not_now());
        }
    }

    private void fields(One one, int place, LocalDate today, Mistakes mistakes) {
        boolean changes = one.chosen().filter(Verdict.PROCEED_WITH_CHANGES::equals).isPresent();
        boolean later = one.chosen().filter(Verdict.POSTPONE::equals).isPresent();
        mistakes.expect(!changes || !one.conditions().isBlank(), "conditions-" + place, say.conditions_missing());
        mistakes.expect(one.conditions().length() <= DecisionForm.LONGEST, "conditions-" + place, say.conditions_long(DecisionForm.LONGEST));
        mistakes.expect(!later || one.day().filter(day -> day.isAfter(today)).isPresent(), "until-" + place, say.until_wrong());
        mistakes.expect(one.alternative().isEmpty() || menu.service(one.alternative()).isPresent(), "alternative-" + place,
            say.alternative_none());
    }

    private void reason(DecisionForm form, boolean against, Mistakes mistakes) {
        mistakes.expect(!against || !form.reason().isBlank(), "reason", say.reason_missing());
        mistakes.expect(form.reason().length() <= DecisionForm.LONGEST, "reason", say.conditions_long(DecisionForm.LONGEST));
    }

    private static boolean ahead(One one) {
        return one.chosen().filter(Verdict::goesAhead).isPresent();
    }

    private static Optional<Refusal> refusal(List<Gate.Weighing> against, Staff by) {
        if (against.stream().anyMatch(Gate.Weighing::lasting)) {
            return Optional.of(Refusal.NOBODY_MAY);
        }
        return against.isEmpty() || by.role == Role.OWNER ? Optional.empty() : Optional.of(Refusal.ONLY_THE_OWNER_MAY);
    }
}
