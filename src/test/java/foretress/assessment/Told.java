package foretress.assessment;

import foretress.hair.Residue;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Keeps;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidDate.Hemisphere;
import foretress.questionnaire.SaidTreatment;
import foretress.questionnaire.Topic;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A client before a visit, built in words, over a questionnaire of a few questions. */
final class Told {
    static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    static final Set<String> LIGHTENER = Set.of("peroxide", "persulfate");

    static final Question LOTION = choice("lotion", List.of("yes", "no"), LIGHTENER, Map.of());
    static final Question SMELL =
        choice("smell", List.of("eggs", "sweet"), LIGHTENER, Map.of("lotion", List.of("yes")));
    static final Question TREATMENTS =
        new Question("treatments", Kind.TREATMENTS, List.of("restorer", "bleach", "perm", "henna-pure",
            "henna-unknown", "dont-know"), true, false, LIGHTENER, Map.of(), true, Keeps.THREE_MONTHS, false);
    static final Question LENGTH = new Question("length", Kind.HAIR_LENGTH, List.of(), true, false, Set.of(), Map.of(),
        true, Keeps.THREE_MONTHS, false);
    static final Question MEDICINES = new Question("medicines", Kind.MEDICINES, List.of(), true, true, Set.of(),
        Map.of(), true, Keeps.THE_DAY, false);
    static final Question LABEL = new Question("label", Kind.INGREDIENTS, List.of(), false, false, Set.of(), Map.of(),
        false, Keeps.FOR_GOOD, false);
    static final Questionnaire QUESTIONS =
        new Questionnaire(List.of(new Topic("all", List.of(LOTION, SMELL, TREATMENTS, LENGTH, MEDICINES, LABEL))));
    static final List<Cue> CUES =
        List.of(new Cue("restorer", List.of("restorer"), 1, Map.of("lotion", List.of("yes"))));
    static final KnownTreatments TREATED =
        new KnownTreatments(List.of(new TreatmentKind("restorer", Residue.METAL, true),
            new TreatmentKind("bleach", Residue.LIGHTENED, false), new TreatmentKind("perm", Residue.PERMED, false),
            new TreatmentKind("henna-pure", Residue.HENNA, false),
            new TreatmentKind("henna-unknown", Residue.HENNA, true),
            new TreatmentKind("dont-know", Residue.UNKNOWN, true)), CUES);

    static final Policy UK = new Policy("uk",
        Map.of("label-age", 16, "minimum-age", 18, "skin-test-wait-hours", 48, "skin-test-validity-months", 6,
            "permed-hair-weeks", 12, "steroid-low-dose-mg", 10),
        Map.of(), "999", "A4", Hemisphere.NORTH, List.of());
    static final Policy US = new Policy("us",
        Map.of("label-age", 16, "minimum-age", 16, "skin-test-wait-hours", 24, "skin-test-validity-months", 0,
            "steroid-low-dose-mg", 10),
        Map.of(), "911", "Letter",
        Hemisphere.NORTH, List.of());

    private Answers answers = Answers.NONE;
    private Optional<LocalDate> born = Optional.of(LocalDate.of(1990, 1, 1));
    private Optional<Integer> measured = Optional.empty();
    private Set<String> booked = LIGHTENER;
    private LocalDate serviceDay = TODAY;
    private Policy policy = UK;
    private List<TestFact> tests = List.of();
    private Lexicon lexicon = Lexicon.KNOWS_NOTHING;

    static Told aClient() {
        return new Told();
    }

    static Question choice(String id, List<String> options, Set<String> askedFor, Map<String, List<String>> when) {
        return new Question(id, Kind.ONE_OF, options, true, false, askedFor, when, true, Keeps.THE_DAY, false);
    }

    Told said(String question, String code) {
        return said(question, Answer.Chosen.of(code));
    }

    Told said(String question, Answer answer) {
        answers = answers.with(question, answer);
        return this;
    }

    Told used(String what, SaidDate when) {
        List<SaidTreatment> list =
            new ArrayList<>(answers.to("treatments").map(a -> ((Answer.Treatments) a).list()).orElse(List.of()));
        list.add(new SaidTreatment(what, when, "whole", "home", "once"));
        return said("treatments", new Answer.Treatments(list));
    }

    Told neverTreated() {
        return said("treatments", new Answer.Treatments(List.of()));
    }

    Told measured(int cm) {
        measured = Optional.of(cm);
        return this;
    }

    Told born(String day) {
        born = Optional.of(LocalDate.parse(day));
        return this;
    }

    Told birthDateNotKnown() {
        born = Optional.empty();
        return this;
    }

    Told booked(String... chemistries) {
        booked = Set.of(chemistries);
        return this;
    }

    Told on(String day) {
        serviceDay = LocalDate.parse(day);
        return this;
    }

    Told under(Policy other) {
        policy = other;
        return this;
    }

    Told tested(TestFact... made) {
        tests = List.of(made);
        return this;
    }

    Told readBy(Lexicon other) {
        lexicon = other;
        return this;
    }

    FactValue fact(FactDef def, FactDef... others) {
        List<FactDef> all = new ArrayList<>(Arrays.asList(others));
        all.add(def);
        var rules = new RuleSet(all, TREATED, List.of(), List.of(), List.of(), List.of(), Map.of(), "0");
        var situation =
            new Situation(TODAY, serviceDay, born, booked, QUESTIONS, answers, policy, tests, measured);
        return new FactFinder(rules, lexicon).find(situation).byId().get(def.id());
    }

    /** Of a test at the chair: the outcomes in the order of the classes but "not-done", which stands second. */
    static FactDef tested(String id, String test, String... outcomes) {
        List<String> classes = new ArrayList<>(List.of(outcomes));
        classes.add(1, "not-done");
        Map<String, Integer> ordinals = new LinkedHashMap<>();
        Stream.of(outcomes).forEach(outcome -> ordinals.put(outcome, classes.indexOf(outcome)));
        return new FactDef(id, classes, List.of(), Optional
            .of(FactDef.Computation.ofChairTests(List.of(test), new FactDef.Outcomes(ordinals, 1))));
    }

    static FactDef computed(String id, String computation, List<String> of, String... classes) {
        return new FactDef(id, List.of(classes), List.of(),
            Optional.of(new FactDef.Computation(ComputedAs.of(computation), of, Optional.empty(), Optional.empty())));
    }
}
