package foretress.alternative;

import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Source;
import foretress.assessment.Standing;
import foretress.assessment.Ways;
import foretress.assessment.Weight;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.EarlierFindings.Earlier;
import foretress.intake.Intake;
import foretress.intake.Plans;
import foretress.intake.StrandMaps;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.plan.TestPlan;
import foretress.questionnaire.Answers;
import foretress.salon.Menu;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.DateWords;
import foretress.web.Language;
import foretress.web.StylistWords;
import foretress.web.WeightSaid;
import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Turns the alternatives of a visit into what the stylist reads: first what reaches the booked aim more gently. */
@RequestScoped
public class InsteadViews {
    private final Alternatives alternatives;
    private final OpenWays open;
    private final Wishes wishes;
    private final BookedChemistry chemistry;
    private final Assessments assessments;
    private final Intake intake;
    private final Plans plans;
    private final StrandMaps maps;
    private final Knowledge knowledge;
    private final Menu menu;
    private final Language language;
    private final StylistWords stylist;
    private final InsteadWords say;
    private final ChairTime time;

    InsteadViews(Alternatives alternatives, OpenWays open, Wishes wishes, BookedChemistry chemistry,
        Assessments assessments,
        Intake intake, Plans plans, StrandMaps maps, Knowledge knowledge, Menu menu, Language language,
        StylistWords stylist, InsteadWords say, ChairTime time) {
        this.alternatives = alternatives;
        this.open = open;
        this.wishes = wishes;
        this.chemistry = chemistry;
        this.assessments = assessments;
        this.intake = intake;
        this.plans = plans;
        this.maps = maps;
        this.knowledge = knowledge;
        this.menu = menu;
        this.language = language;
        this.stylist = stylist;
        this.say = say;
        this.time = time;
    }

    public Instead of(Visit visit, Assessment assessment, List<Earlier> before) {
        List<Alternative> all = alternatives.of(visit, assessment, before);
        List<Service> booked = chemistry.services(visit);
        List<Service> asked = booked.stream().filter(s -> !knowledge.chemistries().dry(s.chemistries())).toList();
        List<Service> shown = asked.isEmpty() ? booked : asked;
        List<String> aims = shown.stream().flatMap(service -> service.aims().stream()).distinct().toList();
        return new Instead(shown.stream().map(service -> booked(visit, service, assessment, all)).toList(),
            other(visit, aims, all), Alternative.Count.of(all),
            wishes.of(visit).map(id -> say.asked(menu.name(id, words()))).orElse(""));
    }

    private Instead.Booked booked(Visit visit, Service service, Assessment assessment, List<Alternative> all) {
        List<Service> order = open.order(visit, service, assessment);
        List<GentlerWay> gentler = ways(visit, open.gentler(order, service), assessment, all);
        List<GentlerWay> stronger = ways(visit, open.stronger(order, service), assessment, all);
        Weight weight = assessment.standing(service.id()).map(Standing::weight).orElse(Weight.COULD_NOT_BE_ASSESSED);
        return new Instead.Booked(menu.name(service.id(), words()), aims(service), weight,
            WeightSaid.of(weight, stylist), gentler.stream().filter(way -> !way.off()).toList(),
            gentler.stream().filter(GentlerWay::off).toList(), stronger, needs(visit, service, weight),
            source(gentler));
    }

    private String aims(Service service) {
        return service.aims().stream().map(words()::aim).collect(Collectors.joining(" · "));
    }

    private List<GentlerWay> ways(Visit visit, List<Service> services, Assessment assessment, List<Alternative> all) {
        Answers said = intake.said(visit);
        return services.stream().flatMap(service -> all.stream().filter(one -> one.id().equals(service.id()))
            .map(one -> way(visit, said, service, assessment, one))).toList();
    }

    private GentlerWay way(Visit visit, Answers said, Service service, Assessment assessment, Alternative stands) {
        boolean off = stands.weight().atLeast(Weight.COULD_NOT_BE_ASSESSED);
        Optional<TestPlan> plan = off ? Optional.empty() : Optional.of(plans.instead(visit, said, List.of(service)));
        Optional<Ways.Lift> lift = knowledge.ways().lift(service, assessment.facts());
        boolean held = lift.filter(l -> l.by().isPresent()).isPresent();
        String lifts = lift.map(this::lifts).orElse("");
        Optional<Ways.Does> does = Optional.ofNullable(knowledge.ways().does().get(service.id()));
        return new GentlerWay(service.id(), stands.service(), stands.weight(), stands.word(), stands.unsaid(),
            stands.weight().atLeast(Weight.RESTRICTS) ? stands.because() : "",
            sentences(does.map(d -> words().text("ways.can." + service.id())), held ? "" : lifts),
            sentences(does.map(d -> words().text("ways.cannot." + service.id())), held ? lifts : ""),
            does.map(d -> say.lasts(words().text("ways.lasts." + d.lasts()))).orElse(""),
            plan.map(this::owes).orElse(""), plan.map(p -> earliest(visit, p)).orElse(""));
    }

    private static String sentences(Optional<String> one, String other) {
        return Stream.concat(one.stream(), Stream.of(other)).filter(text -> !text.isEmpty())
            .collect(Collectors.joining(" "));
    }

    private String lifts(Ways.Lift lift) {
        return lift.by()
            .map(by -> words().text("ways.lift." + (by.none() ? "none" : "unsure")).replace("{why}",
                words().text("ways.held-back." + by.id())))
            .orElseGet(() -> words().text("ways.lift.levels").replace("{levels}", String.valueOf(lift.levels())));
    }

    private String owes(TestPlan plan) {
        String tests = Stream.concat(plan.tests().stream(), plan.waiting().stream()).distinct().map(words()::test)
            .collect(Collectors.joining(", "));
        return tests.isEmpty() ? say.nothing_owed() : tests;
    }

    private String earliest(Visit visit, TestPlan plan) {
        if (open.waitsForAWord(plan)) {
            return say.word_first();
        }
        if (plan.conflicts().isEmpty()) {
            return plan.lastStartOfAll().map(start -> say.at_visit_by(time.dayAndTime(start.atZone(visit.zone()))))
                .orElseGet(say::at_visit);
        }
        return plan.visitFrom().map(from -> time.dayAndTime(from.atZone(visit.zone()))).orElse("");
    }

    private List<Need> needs(Visit visit, Service service, Weight weight) {
        Answers said = intake.said(visit);
        Outlook outlook = Outlook.of(knowledge, assessments.situation(visit, said), service,
            maps.map(visit, said, words()));
        List<Need> needs = new ArrayList<>();
        if (weight == Weight.TEST_FIRST) {
            TestPlan plan = plans.instead(visit, said, List.of(service));
            needs.add(new Need(say.tests_good(owes(plan)), earliest(visit, plan), say.tests_good_how(), false));
        }
        if (outlook.word()) {
            needs.add(new Need(say.doctor(), "", say.doctor_how(), true));
        }
        if (outlook.heals()) {
            needs.add(new Need(say.heals(), "", say.heals_how(), false));
        }
        if (outlook.recovers()) {
            needs.add(new Need(say.recovers(), "", say.recovers_how(), true));
        }
        outlook.cut().ifPresent(cut -> cut(cut, needs));
        outlook.settled().ifPresent(
            finding -> needs.add(new Need(say.final_reason(title(finding)), "", "", false)));
        return needs;
    }

    private void cut(Outlook.CutTo cut, List<Need> needs) {
        String left = cut.left().map(finding -> say.after_cut_left(title(finding))).orElse("");
        needs.add(new Need(say.cut_to(cut.cm()), say.after_cut(), left, true));
        cut.grown().ifPresent(month -> needs.add(new Need(say.grown(),
            new DateWords(language.locale()).month(month), say.grown_how() + (left.isEmpty() ? "" : " " + left),
            false)));
    }

    private List<Instead.Aim> other(Visit visit, List<String> booked, List<Alternative> all) {
        List<Instead.Aim> other = new ArrayList<>();
        List<Service> services = assessments.looked(visit);
        for (String aim : knowledge.aims()) {
            List<Alternative> ways = booked.contains(aim) ? List.of()
                : all.stream().filter(one -> services.stream()
                    .anyMatch(s -> s.id().equals(one.id()) && s.aims().contains(aim))).toList();
            if (!ways.isEmpty()) {
                other.add(new Instead.Aim(words().aim(aim), ways));
            }
        }
        return other;
    }

    private String source(List<GentlerWay> ways) {
        List<String> keys = ways.stream().flatMap(way -> Optional.ofNullable(knowledge.ways().does().get(way.service()))
            .stream()).flatMap(does -> does.sources().stream()).distinct().toList();
        return keys.isEmpty() ? "" : say.source(keys.stream().map(knowledge.ruleSet().sources()::get)
            .map(this::source).collect(Collectors.joining("; ")));
    }

    private String source(Source source) {
        return source.title() + " (" + status(source) + ")";
    }

    private String status(Source source) {
        return switch (source.status()) {
            case PUBLISHED -> stylist.source_published();
            case COMMON_PRACTICE -> stylist.source_common_practice();
            case FROM_MEMORY -> stylist.source_from_memory();
            case OWN_DECISION -> stylist.source_own_decision();
        };
    }

    private String title(Finding finding) {
        return words().finding(finding.ruleId(), finding.onlyIfUnknown()).title();
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
