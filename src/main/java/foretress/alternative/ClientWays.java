package foretress.alternative;

import foretress.assessment.Assessment;
import foretress.assessment.Service;
import foretress.assessment.Standing;
import foretress.assessment.Ways;
import foretress.assessment.Weight;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.Intake;
import foretress.intake.Plans;
import foretress.intake.Refusals;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.plan.TestPlan;
import foretress.questionnaire.Answers;
import foretress.salon.Menu;
import foretress.visit.Visit;
import foretress.web.DateWords;
import foretress.web.Language;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a client whose service is off could have instead, in her own words: two or three, the gentlest first. */
@RequestScoped
class ClientWays {
    private static final int MOST = 3;
    /** Offered where too little reaches what was booked. */
    private static final String CARE = "care";

    private final OpenWays open;
    private final Assessments assessments;
    private final BookedChemistry chemistry;
    private final Intake intake;
    private final Plans plans;
    private final Refusals refusals;
    private final Knowledge knowledge;
    private final Menu menu;
    private final Language language;
    private final InsteadWords say;

    ClientWays(OpenWays open, Assessments assessments, BookedChemistry chemistry, Intake intake, Plans plans,
        Refusals refusals, Knowledge knowledge, Menu menu, Language language, InsteadWords say) {
        this.open = open;
        this.assessments = assessments;
        this.chemistry = chemistry;
        this.intake = intake;
        this.plans = plans;
        this.refusals = refusals;
        this.knowledge = knowledge;
        this.menu = menu;
        this.language = language;
        this.say = say;
    }

    /**
     * A service in the client's words.
     *
     * @param what one line of what it does; empty for a service of the salon's own
     */
    record Offered(String id, String name, String what, String lasts, String tests, String earliest) {}

    /** The booked services that are off, by what was answered or by a test that was refused. */
    List<Service> off(Visit visit) {
        Assessment assessment = assessments.of(visit, intake.said(visit));
        boolean refused = !refusals.of(visit).isEmpty();
        return chemistry.services(visit).stream()
            .filter(service -> refused && !knowledge.chemistries().dry(service.chemistries())
                || weight(assessment, service) == Weight.PREVENTS)
            .toList();
    }

    List<Offered> of(Visit visit) {
        Answers said = intake.said(visit);
        Assessment assessment = assessments.of(visit, said);
        List<Service> off = off(visit);
        List<String> booked = chemistry.services(visit).stream().map(Service::id).toList();
        Set<String> refused = refusals.of(visit);
        Stream<Service> same = off.stream().flatMap(service -> open
            .gentler(open.order(visit, service, assessment), service).stream());
        Stream<Service> care = assessments.looked(visit).stream().filter(service -> service.aims().contains(CARE));
        return Stream.concat(same, care).distinct()
            .filter(service -> !booked.contains(service.id())
                && weight(assessment, service).compareTo(Weight.COULD_NOT_BE_ASSESSED) < 0)
            .map(service -> new Planned(service, plans.instead(visit, said, List.of(service))))
            .filter(one -> one.plan().tests().stream().noneMatch(refused::contains))
            .limit(MOST).map(one -> offered(visit, one)).toList();
    }

    /** A service with what it owes, which is worked out once. */
    private record Planned(Service service, TestPlan plan) {}

    private static Weight weight(Assessment assessment, Service service) {
        return assessment.standing(service.id()).map(Standing::weight).orElse(Weight.COULD_NOT_BE_ASSESSED);
    }

    private Offered offered(Visit visit, Planned one) {
        Service service = one.service();
        TestPlan plan = one.plan();
        Optional<Ways.Does> does = Optional.ofNullable(knowledge.ways().does().get(service.id()));
        return new Offered(service.id(), name(service.id()),
            does.map(d -> words().text("ways.client." + service.id())).orElse(""),
            does.map(d -> words().text("ways.lasts." + d.lasts())).orElse(""), tests(plan), earliest(visit, plan));
    }

    private String tests(TestPlan plan) {
        String tests = Stream.concat(plan.tests().stream(), plan.waiting().stream()).distinct().map(words()::plainTest)
            .collect(Collectors.joining(", "));
        return tests.isEmpty() ? say.client_tests_none() : tests;
    }

    private String earliest(Visit visit, TestPlan plan) {
        var dates = new DateWords(language.locale());
        if (open.waitsForAWord(plan)) {
            return say.client_after_word();
        }
        return plan.conflicts().isEmpty() ? dates.weekday(visit.startsThere())
            : plan.visitFrom().map(from -> dates.weekday(from.atZone(visit.zone())))
                .orElseGet(say::client_earliest_ask);
    }

    String name(String service) {
        return menu.name(service, words());
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
