package foretress.knowledge;

import foretress.assessment.LookedUp;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Step;
import foretress.assessment.TestFact;
import foretress.assessment.Weight;
import foretress.hair.Cut;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.Question;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidTreatment;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads the cases of one file; complains about them as about knowledge. */
final class CaseReader {
    private static final Set<String> OWN =
        Set.of("today", "service-day", "born", "jurisdiction", "service", "steps", "without", "measured",
            "drawn-straight", "tests", "unanswered", "cuts", "looked-up");
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    private static final LocalDate BORN = LocalDate.of(1990, 1, 1);

    private final Knowledge knowledge;
    private final BaseClient base;
    private final Map<String, Step> steps;
    private final Map<String, Service> services;
    private final Set<String> rules;
    private final Set<String> facts;

    CaseReader(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.base = new BaseClient(knowledge);
        this.steps = knowledge.ruleSet().steps().stream().collect(Collectors.toMap(Step::id, Function.identity()));
        this.services =
            knowledge.ruleSet().services().stream().collect(Collectors.toMap(Service::id, Function.identity()));
        this.facts = knowledge.ruleSet().facts().stream().map(f -> f.id()).collect(Collectors.toSet());
        this.rules = knowledge.ruleSet().rules().stream().map(r -> r.id()).collect(Collectors.toSet());
    }

    List<Case> read(String file, Yaml yaml) {
        return (yaml.isList() ? yaml : yaml.only("cases").at("cases")).each(entry -> one(file, entry));
    }

    private Case one(String file, Yaml entry) {
        entry.only("name", "given", "expect", "source");
        Yaml given = entry.at("given");
        Yaml expect = entry.at("expect").only("standing", "findings", "not", "demands", "weights", "standings");
        Service service = service(given);
        return new Case(file, entry.at("name").text(), situation(given, service), service,
            expect.maybe("standing").map(w -> w.oneOf(Weight.BY_CODE, "weight")), ids(expect, "findings", rules),
            ids(expect, "not", rules),
            ids(expect, "demands", new HashSet<>(knowledge.ruleSet().tests())), weights(expect, "weights", rules),
            weights(expect, "standings", services.keySet()));
    }

    private Service service(Yaml given) {
        Set<String> without = new HashSet<>(ids(given, "without", steps.keySet()));
        Service booked = given.maybe("service").map(s -> services.get(s.oneOf(services.keySet(), "service")))
            .orElseGet(() -> new Service("steps",
                given.at("steps").listOrOne().stream().map(s -> steps.get(s.oneOf(steps.keySet(), "step"))).toList()));
        return booked.keeping(booked.stepIds().stream().filter(s -> !without.contains(s)).toList());
    }

    private Situation situation(Yaml given, Service service) {
        LocalDate today = day(given, "today").orElse(TODAY);
        Set<String> unanswered = given.maybe("unanswered")
            .map(l -> new HashSet<>(l.listOrOne().stream().map(Yaml::text).toList())).orElse(new HashSet<>());
        Answers answers = base.complete(answers(given), service.chemistries(), unanswered);
        boolean measured = given.maybe("measured").map(Yaml::yes).orElse(true);
        Optional<Integer> length =
            answers.byQuestion().values().stream().filter(a -> a instanceof Answer.Length l && l.drawnStraight())
                .map(a -> ((Answer.Length) a).lengthCm()).findFirst();
        boolean bornSaid = given.maybe("born").map(b -> !b.text().equals("dont-know")).orElse(true);
        return new Situation(today, day(given, "service-day").orElse(today),
            bornSaid ? day(given, "born").or(() -> Optional.of(BORN)) : Optional.empty(),
            service.chemistries(), knowledge.questionnaire(), answers,
            knowledge.policy(given.maybe("jurisdiction")
                .map(j -> j.oneOf(knowledge.policies().keySet(), "jurisdiction")).orElse("uk")),
            tests(given, today), measured ? length : Optional.empty()).cut(cuts(given))
            .lookingUp(lookedUp(given, today));
    }

    private List<LookedUp> lookedUp(Yaml given, LocalDate today) {
        return given.maybe("looked-up").map(list -> list.listOrOne().stream().map(one -> lookUp(one, today)).toList())
            .orElse(List.of());
    }

    private LookedUp lookUp(Yaml entry, LocalDate today) {
        entry.only("name", "means");
        Set<String> known = new LinkedHashSet<>(LookedUp.OWN);
        known.addAll(LookedUp.towards(knowledge.ruleSet()).keySet());
        String means = entry.at("means").oneOf(known, "meaning");
        return new LookedUp(entry.at("name").text(), means, LookedUp.classes(means, knowledge.ruleSet()), "Petra",
            today,
            "a leaflet");
    }

    private static List<Cut> cuts(Yaml given) {
        return given.maybe("cuts").map(list -> list.listOrOne().stream().map(CaseReader::cut).toList())
            .orElse(List.of());
    }

    private static Cut cut(Yaml entry) {
        entry.only("day", "to");
        return new Cut(LocalDate.parse(entry.at("day").text()), entry.at("to").number(0, Answer.Length.LONGEST_CM));
    }

    private Answers answers(Yaml given) {
        Map<String, Answer> answers = new LinkedHashMap<>();
        Map<String, Question> known =
            knowledge.questionnaire().questions().stream().collect(Collectors.toMap(Question::id, Function.identity()));
        Set<String> names = new LinkedHashSet<>(OWN);
        names.addAll(known.keySet());
        for (Map.Entry<Yaml, Yaml> field : given.pairs()) {
            String name = field.getKey().oneOf(names, "question");
            if (!OWN.contains(name)) {
                answers.put(name, answer(known.get(name), field.getValue(), given));
            }
        }
        return new Answers(answers);
    }

    private static Answer answer(Question question, Yaml said, Yaml given) {
        if (said.isText() && said.text().equals(Question.DONT_KNOW)) {
            return Answer.DONT_KNOW;
        } else if (said.isText() && said.text().equals(Question.RATHER_NOT_SAY)) {
            return Answer.RATHER_NOT_SAY;
        }
        return switch (question.kind()) {
            case ONE_OF, SEVERAL_OF -> new Answer.Chosen(
                said.listOrOne().stream().map(c -> c.oneOf(question.options(), "answer called")).toList());
            case HAIR_LENGTH -> new Answer.Length(said.number(0, Answer.Length.LONGEST_CM),
                given.maybe("drawn-straight").map(Yaml::yes).orElse(true));
            case TREATMENTS ->
                new Answer.Treatments(said.listOrOne().stream().map(t -> treatment(question, t)).toList());
            case MEDICINES -> new Answer.Medicines(said.listOrOne().stream().map(CaseReader::medicine).toList());
            case SAID_DATE -> new Answer.Said(CaseDates.read(said));
            case INGREDIENTS, NOTE -> new Answer.Text(said.text());
        };
    }

    private static SaidTreatment treatment(Question question, Yaml entry) {
        entry.only("what", "when", "zone", "by", "often", "every", "since", "extent");
        List<String> kinds = new ArrayList<>(question.options());
        return new SaidTreatment(entry.at("what").oneOf(kinds, "treatment"), CaseDates.read(entry.at("when")),
            word(entry, "zone", SaidTreatment.ZONES, "whole"),
            word(entry, "by", SaidTreatment.BY, "home"), word(entry, "often", SaidTreatment.OFTEN, "once"),
            word(entry, "every", SaidTreatment.EVERY, SaidTreatment.DONT_KNOW),
            entry.maybe("since").map(CaseDates::read).orElse(new SaidDate.NotKnown()),
            word(entry, "extent", SaidTreatment.EXTENTS, SaidTreatment.DONT_KNOW));
    }

    private static Medicine medicine(Yaml entry) {
        if (entry.isText()) {
            return new Medicine(entry.text(), Medicine.NOT_ASKED, Medicine.NOT_ASKED, Medicine.NOT_ASKED);
        }
        entry.only("name", "dose", "route", "last");
        return new Medicine(entry.at("name").text(), word(entry, "dose", Medicine.DOSES, Medicine.NOT_ASKED),
            word(entry, "route", Medicine.ROUTES, Medicine.NOT_ASKED),
            word(entry, "last", Medicine.LAST_TAKEN, Medicine.NOT_ASKED));
    }

    private List<TestFact> tests(Yaml given, LocalDate today) {
        return given.maybe("tests").map(list -> list.listOrOne().stream().map(entry -> test(entry, today)).toList())
            .orElse(List.of());
    }

    private TestFact test(Yaml entry, LocalDate today) {
        entry.only("test", "outcome", "started", "read", "wait-kept", "this-product", "this-visit", "masked",
            "overtaken", "about");
        LocalDate started = day(entry, "started").orElse(today.minusDays(2));
        boolean read = entry.maybe("read").map(r -> !r.text().equals("no")).orElse(true);
        Optional<LocalDate> readOn =
            read ? Optional.of(entry.maybe("read").filter(r -> !r.text().equals("yes")).map(CaseDates::day)
                .orElse(started.plusDays(2))) : Optional.empty();
        String test = entry.at("test").oneOf(TestFact.OUTCOMES.keySet(), "test");
        return new TestFact(test, entry.at("outcome").oneOf(TestFact.OUTCOMES.get(test), "outcome"), started, readOn,
            flag(entry, "wait-kept", true),
            flag(entry, "this-product", true), flag(entry, "this-visit", true), flag(entry, "masked", false),
            flag(entry, "overtaken", false),
            Optional.empty(), entry.maybe("about").map(fact -> fact.oneOf(facts, "fact")));
    }

    private static boolean flag(Yaml entry, String name, boolean otherwise) {
        return entry.maybe(name).map(Yaml::yes).orElse(otherwise);
    }

    private static String word(Yaml entry, String name, List<String> known, String otherwise) {
        return entry.maybe(name).map(w -> w.oneOf(known, name)).orElse(otherwise);
    }

    private static Optional<LocalDate> day(Yaml yaml, String name) {
        return yaml.maybe(name).map(d -> CaseDates.day(d));
    }

    private static List<String> ids(Yaml yaml, String name, Set<String> known) {
        return yaml.maybe(name)
            .map(list -> list.listOrOne().stream().map(id -> id.oneOf(known, "entry called")).toList())
            .orElse(List.of());
    }

    private static Map<String, Weight> weights(Yaml yaml, String name, Set<String> known) {
        Map<String, Weight> weights = new LinkedHashMap<>();
        yaml.maybe(name).ifPresent(map -> map.pairs().forEach(
            p -> weights.put(p.getKey().oneOf(known, "entry called"), p.getValue().oneOf(Weight.BY_CODE, "weight"))));
        return weights;
    }
}
