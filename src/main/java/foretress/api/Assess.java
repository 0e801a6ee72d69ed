package foretress.api;

import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Source;
import foretress.assessment.Standing;
import foretress.assessment.Weight;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.plan.Owed;
import foretress.plan.Owing;
import foretress.plan.TestPlan;
import foretress.plan.Waits;
import foretress.questionnaire.Question;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Coded answers into findings, standings and a plan, by the very rules and code the pages use. */
final class Assess {
    static final String CAUTION =
        "This supports the decision of a trained person and never replaces it. Manufacturer's instructions, local law, licensed "
            + "practice and medical advice come first. It never says that a service is safe, nor that a medicine may be changed.";

    private final Knowledge knowledge;
    private final ClientBody client;

    Assess(Knowledge knowledge, ClientBody client) {
        this.knowledge = knowledge;
        this.client = client;
    }

    Operation operation() {
        return Operation.of(client.known(), "assess", "assess", Scope.ASSESS,
            "What a client's answers mean for what is booked, and for every other service",
            "Coded answers, tests and instants in; findings with their words and sources, the standing of every service, and the plan of the tests that "
                + "are owed out. Nothing is stored. A question that is left out is not answered, and never reads as nothing found. "
                + CAUTION,
            ClientBody.Asked.class, Assessed.class,
            List.of("restorer-before-highlights", "nothing-to-report",
                "skin-test-over-the-clock-change", "a-doctors-word"),
            this::answer);
    }

    private Assessed answer(ClientBody.Asked body) {
        ClientBody.Read read = client.read(body);
        List<Service> offered = new ArrayList<>(read.booked());
        List<String> booked = offered.stream().map(Service::id).toList();
        knowledge.ruleSet().services().stream().filter(s -> !booked.contains(s.id())).forEach(offered::add);
        Assessment assessment =
            Assessor.assess(knowledge.ruleSet(), knowledge.factFinder().find(read.situation()), offered);
        Situation hoped = read.situation()
            .saying(knowledge.answeredWell(read.situation().answers(), read.situation().bookedChemistries()));
        Owing owing =
            Owing.of(knowledge.ruleSet(), knowledge.factFinder()::find, read.situation(), hoped, read.booked());
        TestPlan plan = TestPlan.of(owing, read.visit(),
            new Waits(read.situation().policy(), read.skinTest(), owing.readAgainDays(),
                read.situation().birthDate().map(read.situation().policy()::oldEnough)),
            read.hours(),
            read.asked());
        List<String> open = knowledge.questionnaire()
            .missing(read.situation().bookedChemistries(), read.situation().answers()).stream().map(Question::id)
            .toList();
        return new Assessed(judged(assessment, offered, booked, read.words()), open, plan(plan, read.words()),
            CAUTION);
    }

    @Json(name = "Assessment")
    record Assessed(@Json(flat = true) Judged judged,
        @Json(says = "Ids of required questions that were put and not answered.") List<String> unanswered, Plan plan,
        String caution) {}

    /** Everything but the plan, which needs a clock and opening hours. */
    record Judged(
        @Json(says = "SHA-256 of all knowledge files: names the version of the rules.") String ruleSet,
        List<OneStanding> standings, List<OneFinding> findings,
        @Json(says = "Rules that fired as well, and weigh and demand like any other: of the rules on one "
            + "fact the heaviest that may hold speaks, and the words of these are not shown.") List<Silent> spokenFor) {}

    @Json(name = "Standing")
    record OneStanding(String service, String name, boolean booked, Weight weight,
        @Json(
            says = "Nothing was found, and everything that had to be asked was asked and answered. Only then may it be said.") boolean nothingFound,
        @Json(says = "The rules that weigh that much.") List<String> deciding,
        @Json(
            says = "Questions about this service that were not put because another one is booked.") int notAsked,
        @Json(says = "Required questions that were put and not answered.") int unanswered) {}

    @Json(name = "Finding")
    record OneFinding(String rule, Weight weight, @Json(says = "For the stylist.") String title,
        @Json(name = "do", says = "What to do, for the stylist.") String toDo,
        @Json(says = "What the client may read.") String client,
        @Json(says = "It may hold, and is not known to.") boolean onlyIfUnknown, Map<String, Weight> services,
        List<String> demands, @Json(says = "The questions whose answers decided it.") List<String> causes,
        List<OneFact> facts, List<OneSource> sources) {}

    record OneFact(String fact, String best, String worst) {}

    record OneSource(String id, String title, Optional<String> place, String status, String kind) {}

    record Silent(String rule, Weight weight, Map<String, Weight> services, List<String> demands) {}

    @Json(name = "Plan")
    record Plan(Instant visit,
        @Json(says = "The salon is shut at the visit's own time.") boolean visitWhileShut,
        @Json(most = 100,
            says = "Tests that need time before the visit, and can change something.") List<OneOwed> owed,
        @Json(most = 100) List<Named> onTheDay,
        @Json(most = 100,
            says = "Tests that findings ask for and that would prove nothing until something else is cleared up.") List<Named> waiting,
        @Json(
            says = "The earliest visit before which every test in 'owed' could be kept.") Optional<Instant> visitFrom,
        Optional<Instant> lastStartOfAll) {}

    record Named(String test, String name) {}

    record OneOwed(String test, String name,
        @Json(
            says = "On the physical clock, from its start to the last reading that lies before the visit.") long takesHours,
        @Json(flat = true) Bounds bounds,
        @Json(least = 1, most = 10,
            says = "Every reading, in hours since the start; one that falls when the "
                + "salon is shut is made at the next open moment.") List<Long> readingsAfterHours,
        @Json(
            says = "The earliest visit it could be kept for, begun at the next open moment.") Optional<Instant> visitFrom,
        Optional<Instant> firstOpenStart, Optional<Instant> lastOpenStart,
        @Json(
            says = "Begun at lastOpenStart, what is left between the end of its wait and latestRead: below 15 nothing may go wrong.") Optional<Long> slackMinutes,
        List<Begin> windows, Optional<Conflict> conflict) {}

    /** Between which moments it is begun and read. */
    record Bounds(
        @Json(says = "Before this it would be too old on the day, or it is past.") Instant earliestStart,
        @Json(
            says = "The last open moment from which it can be read before the visit; past, where there is a conflict.") Instant latestStart,
        @Json(
            says = "The last open moment for the last reading: as the visit begins, where the salon is open then.") Instant latestRead) {}

    @Json(says = "Moments at which it can begin, both included: it takes 15 minutes and ends before closing.")
    record Begin(Instant from, Instant to) {}

    record Conflict(Owed.Reason reason, long visitInMinutes, long needsMinutes) {}

    /** For an assessment made elsewhere too. */
    Judged judged(Assessment assessment, List<Service> offered, List<String> booked, Words words) {
        List<Service> looked = offered.stream().filter(s -> booked.contains(s.id())).toList();
        return new Judged(assessment.ruleSetHash(),
            assessment.standings().stream().map(s -> standing(s, booked.contains(s.serviceId()), words)).toList(),
            assessment.spoken().stream().map(f -> finding(f, assessment, offered, words.finding(f, looked))).toList(),
            assessment.findings().stream().filter(f -> !f.speaks())
                .map(f -> new Silent(f.ruleId(), f.weight(), weights(f, offered), List.copyOf(f.demands()))).toList());
    }

    private static OneStanding standing(Standing standing, boolean booked, Words words) {
        String id = standing.serviceId();
        boolean worded =
            words.find("services." + id).isPresent() || words.find("services." + id + ".name").isPresent();
        return new OneStanding(id, worded ? words.service(id) : id, booked, standing.weight(),
            standing.nothingFound(), standing.deciding(), standing.notAsked(), standing.unanswered());
    }

    private static Map<String, Weight> weights(Finding finding, List<Service> offered) {
        Map<String, Weight> weights = new LinkedHashMap<>();
        offered.stream().filter(s -> finding.on(s) != Weight.NOTHING_FOUND)
            .forEach(s -> weights.put(s.id(), finding.on(s)));
        return weights;
    }

    private OneFinding finding(Finding finding, Assessment assessment, List<Service> offered, Words.FindingWords said) {
        return new OneFinding(finding.ruleId(), finding.weight(), said.title(), said.do_(), said.client(),
            finding.onlyIfUnknown(), weights(finding, offered), List.copyOf(finding.demands()),
            knowledge.questionnaire().questions().stream().map(Question::id).filter(finding.causes()::contains)
                .toList(),
            finding.facts().stream().map(id -> assessment.facts().byId().get(id))
                .map(fact -> new OneFact(fact.fact(), fact.bestClass(), fact.worstClass())).toList(),
            finding.sources().stream().map(this::source).toList());
    }

    private OneSource source(String id) {
        Source source = knowledge.ruleSet().sources().get(id);
        return new OneSource(id, source.title(), source.place(), inWords(source.status()), inWords(source.kind()));
    }

    private static String inWords(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static Plan plan(TestPlan plan, Words words) {
        return new Plan(plan.visit(), plan.shut(), plan.owed().stream().map(o -> owed(o, words)).toList(),
            named(plan.onTheDay(), words), named(plan.waiting(), words), plan.visitFrom(), plan.lastStartOfAll());
    }

    private static List<Named> named(List<String> tests, Words words) {
        return tests.stream().map(test -> new Named(test, words.test(test))).toList();
    }

    private static OneOwed owed(Owed owed, Words words) {
        return new OneOwed(owed.test(), words.test(owed.test()), owed.takes().toHours(),
            new Bounds(owed.earliestStart(), owed.latestStart(), owed.latestRead()),
            owed.readings().stream().map(Duration::toHours).toList(),
            owed.visitFrom(), owed.firstOpenStart(), owed.lastOpenStart(),
            owed.lastOpenStart().map(last -> owed.slack(last).toMinutes()),
            owed.windows().stream().map(w -> new Begin(w.first(), w.last())).toList(),
            owed.conflict()
                .map(c -> new Conflict(c.reason(), c.visitIn().toMinutes(), c.needs().toMinutes())));
    }
}
