package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.api.Shape.Fields;
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
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Coded answers into findings, standings and a plan, by the very rules and code the pages use. */
final class Assess {
    static final String CAUTION =
        "This supports the decision of a trained person and never replaces it. Manufacturer's instructions, local law, licensed "
            + "practice and medical advice come first. It never says that a service is safe, nor that a medicine may be changed.";
    private static final JsonNodeFactory NODE = JsonNodeFactory.instance;

    private final Knowledge knowledge;
    private final ClientBody client;

    Assess(Knowledge knowledge, ClientBody client) {
        this.knowledge = knowledge;
        this.client = client;
    }

    Operation operation() {
        return new Operation("assess", "assess", Optional.of(Scope.ASSESS),
            "What a client's answers mean for what is booked, and for every other service",
            "Coded answers, tests and instants in; findings with their words and sources, the standing of every service, and the plan of the tests that "
                + "are owed out. Nothing is stored. A question that is left out is not answered, and never reads as nothing found. "
                + CAUTION,
            Optional.of(client.shape()), response(), List.of("restorer-before-highlights", "nothing-to-report",
                "skin-test-over-the-clock-change", "a-doctors-word"),
            this::answer);
    }

    private JsonNode answer(JsonNode body) {
        ClientBody.Read read = client.read(body);
        List<Service> offered = new ArrayList<>(read.booked());
        List<String> booked = offered.stream().map(Service::id).toList();
        knowledge.ruleSet().services().stream().filter(s -> !booked.contains(s.id())).forEach(offered::add);
        Assessment assessment =
            Assessor.assess(knowledge.ruleSet(), knowledge.factFinder().find(read.situation()), offered);
        Situation hoped = read.situation()
            .saying(knowledge.answeredWell(read.situation().answers(), read.situation().bookedChemistries()));
        Owing owing = Owing.of(knowledge.ruleSet(), knowledge.factFinder(), read.situation(), hoped, read.booked());
        TestPlan plan = TestPlan.of(owing, read.visit(),
            new Waits(read.situation().policy(), read.skinTest(), owing.readAgainDays(),
                read.situation().birthDate().map(read.situation().policy()::oldEnough)),
            read.hours(),
            read.asked());
        ObjectNode answer = told(assessment, offered, booked, read.words());
        ArrayNode open = answer.putArray("unanswered");
        knowledge.questionnaire().missing(read.situation().bookedChemistries(), read.situation().answers()).stream()
            .map(Question::id).forEach(open::add);
        answer.set("plan", plan(plan, read.words()));
        return answer.put("caution", CAUTION);
    }

    /** Everything but the plan, which needs a clock and opening hours. */
    ObjectNode told(Assessment assessment, List<Service> offered, List<String> booked, Words words) {
        ObjectNode answer = NODE.objectNode().put("ruleSet", assessment.ruleSetHash());
        ArrayNode standings = answer.putArray("standings");
        assessment.standings().forEach(s -> standings.add(standing(s, booked.contains(s.serviceId()), words)));
        ArrayNode findings = answer.putArray("findings");
        List<Service> looked = offered.stream().filter(s -> booked.contains(s.id())).toList();
        assessment.spoken().forEach(f -> findings.add(finding(f, assessment, offered, words.finding(f, looked))));
        ArrayNode silent = answer.putArray("spokenFor");
        assessment.findings().stream().filter(f -> !f.speaks()).forEach(f -> silent.add(silent(f, offered)));
        return answer;
    }

    private static ObjectNode standing(Standing standing, boolean booked, Words words) {
        String name = words.find("services." + standing.serviceId()).isPresent()
            || words.find("services." + standing.serviceId() + ".name").isPresent()
                ? words.service(standing.serviceId()) : standing.serviceId();
        ObjectNode node = NODE.objectNode().put("service", standing.serviceId()).put("name", name).put("booked", booked)
            .put("weight", standing.weight().code()).put("nothingFound", standing.nothingFound());
        standing.deciding().forEach(node.putArray("deciding")::add);
        return node.put("notAsked", standing.notAsked()).put("unanswered", standing.unanswered());
    }

    private static ObjectNode silent(Finding finding, List<Service> offered) {
        ObjectNode node = NODE.objectNode().put("rule", finding.ruleId()).put("weight", finding.weight().code());
        weights(node.putObject("services"), finding, offered);
        finding.demands().forEach(node.putArray("demands")::add);
        return node;
    }

    private static void weights(ObjectNode services, Finding finding, List<Service> offered) {
        offered.stream().filter(s -> finding.on(s) != Weight.NOTHING_FOUND)
            .forEach(s -> services.put(s.id(), finding.on(s).code()));
    }

    private ObjectNode finding(Finding finding, Assessment assessment, List<Service> offered, Words.FindingWords said) {
        ObjectNode node = NODE.objectNode().put("rule", finding.ruleId()).put("weight", finding.weight().code())
            .put("title", said.title())
            .put("do", said.do_()).put("client", said.client()).put("onlyIfUnknown", finding.onlyIfUnknown());
        weights(node.putObject("services"), finding, offered);
        finding.demands().forEach(node.putArray("demands")::add);
        ArrayNode causes = node.putArray("causes");
        knowledge.questionnaire().questions().stream().map(Question::id).filter(finding.causes()::contains)
            .forEach(causes::add);
        ArrayNode facts = node.putArray("facts");
        finding.facts().stream().map(id -> assessment.facts().byId().get(id))
            .forEach(fact -> facts.add(NODE.objectNode().put("fact", fact.fact())
                .put("best", fact.bestClass()).put("worst", fact.worstClass())));
        ArrayNode sources = node.putArray("sources");
        finding.sources().forEach(id -> sources.add(source(id)));
        return node;
    }

    private ObjectNode source(String id) {
        Source source = knowledge.ruleSet().sources().get(id);
        ObjectNode node = NODE.objectNode().put("id", id).put("title", source.title());
        source.place().ifPresent(place -> node.put("place", place));
        return node.put("status", source.status().name().toLowerCase(Locale.ROOT).replace('_', ' '))
            .put("kind", source.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }

    private static ObjectNode plan(TestPlan plan, Words words) {
        ObjectNode node = NODE.objectNode().put("visit", plan.visit().toString()).put("visitWhileShut", plan.shut());
        ArrayNode owed = node.putArray("owed");
        plan.owed().forEach(o -> owed.add(owed(o, words)));
        ArrayNode onTheDay = node.putArray("onTheDay");
        plan.onTheDay()
            .forEach(test -> onTheDay.add(NODE.objectNode().put("test", test).put("name", words.test(test))));
        ArrayNode waiting = node.putArray("waiting");
        plan.waiting().forEach(test -> waiting.add(NODE.objectNode().put("test", test).put("name", words.test(test))));
        put(node, "visitFrom", plan.visitFrom());
        plan.lastStartOfAll().ifPresent(last -> node.put("lastStartOfAll", last.toString()));
        return node;
    }

    private static ObjectNode owed(Owed owed, Words words) {
        ObjectNode node = NODE.objectNode().put("test", owed.test()).put("name", words.test(owed.test()))
            .put("takesHours", owed.takes().toHours())
            .put("earliestStart", owed.earliestStart().toString()).put("latestStart", owed.latestStart().toString())
            .put("latestRead", owed.latestRead().toString());
        ArrayNode readings = node.putArray("readingsAfterHours");
        owed.readings().forEach(wait -> readings.add(wait.toHours()));
        put(node, "visitFrom", owed.visitFrom());
        put(node, "firstOpenStart", owed.firstOpenStart());
        put(node, "lastOpenStart", owed.lastOpenStart());
        owed.lastOpenStart().ifPresent(last -> node.put("slackMinutes", owed.slack(last).toMinutes()));
        ArrayNode windows = node.putArray("windows");
        owed.windows().forEach(
            w -> windows.add(NODE.objectNode().put("from", w.first().toString()).put("to", w.last().toString())));
        owed.conflict()
            .ifPresent(c -> node.putObject("conflict").put("reason", reason(c.reason()))
                .put("visitInMinutes", c.visitIn().toMinutes())
                .put("needsMinutes", c.needs().toMinutes()));
        return node;
    }

    private static String reason(Owed.Reason reason) {
        return reason.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static void put(ObjectNode node, String name, Optional<Instant> at) {
        at.ifPresent(instant -> node.put(name, instant.toString()));
    }

    private static Shape response() {
        Shape weight = Shape.code(Arrays.stream(Weight.values()).map(Weight::code).toList()).named("Weight");
        Shape texts = Shape.list(Shape.text(), 0, 10_000);
        Fields standing = Shape.object().need("service", Shape.text()).need("name", Shape.text())
            .need("booked", Shape.flag()).need("weight", weight)
            .need("nothingFound", Shape.flag().saying(
                "Nothing was found, and everything that had to be asked was asked and answered. Only then may it be said."))
            .need("deciding", texts.saying("The rules that weigh that much."))
            .need("notAsked", Shape.number().saying("Questions about this service that were "
                + "not put because another one is booked."))
            .need("unanswered", Shape.number().saying("Required questions that were put and not answered."));
        Fields fact = Shape.object().need("fact", Shape.text()).need("best", Shape.text()).need("worst", Shape.text());
        Fields source = Shape.object().need("id", Shape.text()).need("title", Shape.text()).may("place", Shape.text())
            .need("status", Shape.text()).need("kind", Shape.text());
        Fields finding = Shape.object().need("rule", Shape.text()).need("weight", weight)
            .need("title", Shape.text().saying("For the stylist."))
            .need("do", Shape.text().saying("What to do, for the stylist."))
            .need("client", Shape.text().saying("What the client may read."))
            .need("onlyIfUnknown", Shape.flag().saying("It may hold, and is not known to."))
            .need("services", Shape.map(weight))
            .need("demands", texts).need("causes", texts.saying("The questions whose answers decided it."))
            .need("facts", Shape.list(fact, 0, 10_000))
            .need("sources", Shape.list(source, 0, 10_000));
        Fields silent = Shape.object().need("rule", Shape.text()).need("weight", weight)
            .need("services", Shape.map(weight)).need("demands", texts);
        return Shape.object()
            .need("ruleSet", Shape.text().saying("SHA-256 of all knowledge files: names the version of the rules."))
            .need("standings", Shape.list(standing.named("Standing"), 0, 10_000))
            .need("findings", Shape.list(finding.named("Finding"), 0, 10_000))
            .need("spokenFor",
                Shape.list(silent, 0, 10_000)
                    .saying("Rules that fired as well, and weigh and demand like any other: of the rules on one "
                        + "fact the heaviest that may hold speaks, and the words of these are not shown."))
            .need("unanswered", texts.saying("Ids of required questions that were put and not answered."))
            .need("plan", planShape().named("Plan")).need("caution", Shape.text()).named("Assessment");
    }

    private static Shape planShape() {
        Fields window = Shape.object().need("from", Shape.text()).need("to", Shape.text());
        Fields conflict =
            Shape.object().need("reason", Shape.code(Arrays.stream(Owed.Reason.values()).map(Assess::reason).toList()))
                .need("visitInMinutes", Shape.number()).need("needsMinutes", Shape.number());
        Fields owed = Shape.object().need("test", Shape.text()).need("name", Shape.text())
            .need("takesHours",
                Shape.number()
                    .saying("On the physical clock, from its start to the last reading that lies before the visit."))
            .need("readingsAfterHours",
                Shape.list(Shape.number(), 1, 10)
                    .saying("Every reading, in hours since the start; one that falls when the "
                        + "salon is shut is made at the next open moment."))
            .need("earliestStart", Shape.text().saying("Before this it would be too old on the day, or it is past."))
            .need("latestStart", Shape.text().saying(
                "The last open moment from which it can be read before the visit; past, where there is a conflict."))
            .need("latestRead",
                Shape.text().saying(
                    "The last open moment for the last reading: as the visit begins, where the salon is open then."))
            .may("firstOpenStart", Shape.text()).may("lastOpenStart", Shape.text())
            .may("slackMinutes", Shape.number().saying(
                "Begun at lastOpenStart, what is left between the end of its wait and latestRead: below 15 nothing may go wrong."))
            .may("visitFrom",
                Shape.text().saying("The earliest visit it could be kept for, begun at the next open moment."))
            .need("windows",
                Shape.list(
                    window.saying(
                        "Moments at which it can begin, both included: it takes 15 minutes and ends before closing."),
                    0, 10_000))
            .may("conflict", conflict);
        Fields named = Shape.object().need("test", Shape.text()).need("name", Shape.text());
        return Shape.object().need("visit", Shape.text())
            .need("visitWhileShut", Shape.flag().saying("The salon is shut at the visit's own time."))
            .need("owed",
                Shape.list(owed, 0, 100).saying("Tests that need time before the visit, and can change something."))
            .need("onTheDay", Shape.list(named, 0, 100))
            .need("waiting",
                Shape.list(named, 0, 100).saying(
                    "Tests that findings ask for and that would prove nothing until something else is cleared up."))
            .may("visitFrom",
                Shape.text().saying("The earliest visit before which every test in 'owed' could be kept."))
            .may("lastStartOfAll", Shape.text());
    }
}
