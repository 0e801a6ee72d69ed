package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.ComputedAs;
import foretress.assessment.FactDef;
import foretress.assessment.FactValue;
import foretress.assessment.Facts;
import foretress.assessment.Finding;
import foretress.assessment.Rule;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Standing;
import foretress.assessment.Truth;
import foretress.assessment.Weight;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws that hold across rules. Each names its few facts and tries every range of them; the rest of the client is at its best. */
class RuleLawsTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final Set<String> METAL_MEETS =
        Set.of("peroxide", "persulfate", "thio", "gmtg", "hydroxide", "remover");
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);

    /** Whoever must not be tested in a salon, whatever else is or is not known: no finding asks for a skin test. */
    @ParameterizedTest
    @CsvSource({ "colour-reaction, delayed", "colour-reaction, immediate", "tattoo, reacted", "tattoo, immediate",
        "dye-allergy, confirmed",
        "bleach-reaction, delayed", "bleach-reaction, immediate", "age, below-label-age" })
    void aKnownReactorIsNeverSentToASkinTest(String fact, String atLeast) {
        FactDef def = fact(fact);
        Facts reacted = noDoctorsYes(
            Sums.settled(best().with(FactValue.between(def, def.ordinal(atLeast), def.worst(), List.of()))));
        List<Rule> asking =
            KNOWLEDGE.ruleSet().rules().stream().filter(rule -> rule.demands().contains("skin-test")).toList();
        for (Rule rule : asking) {
            everyRange(only(reacted, rule),
                rule.when().reads().stream().filter(id -> !tells(id, fact) && !isAdvice(id)).toList(), facts -> {
                    if (rule.when().of(facts) != Truth.FALSE) {
                        fail("%s asks for a skin test: %s", rule.id(), facts);
                    }
                });
        }
    }

    private static boolean tells(String id, String fact) {
        return Sums.parts(id).anyMatch(part -> part.id().equals(fact));
    }

    private static Facts noDoctorsYes(Facts facts) {
        Facts unasked = facts;
        for (FactDef def : KNOWLEDGE.ruleSet().facts()) {
            unasked = isAdvice(def.id()) ? unasked.with(FactValue.known(def, "not-asked", List.of())) : unasked;
        }
        return unasked;
    }

    /** Lightener is another allergy than dye: a doctor's yes to colour lets the test be made; one about dye opens plants alone. */
    @Test
    void aDoctorsYesAboutAReactionToADyeLetsNoDyeOfTheGroupBeTested() {
        Set<String> group = Set.copyOf(KNOWLEDGE.chemistries().needingSkinTest());
        KNOWLEDGE.ruleSet().rules().stream().filter(rule -> rule.demands().contains("skin-test"))
            .filter(rule -> rule.weights().keySet().stream()
                .anyMatch(key -> group.contains(key) || KNOWLEDGE.chemistries().openedByLetter(key)))
            .forEach(rule -> assertThat(rule.when().reads().stream().filter(RuleLawsTest::isAdvice)).as(rule.id())
                .allMatch("lightener-advice"::equals));
    }

    /** What nobody can go against no doctor's word opens either. */
    @Test
    void noRuleThatNobodyCanGoAgainstReadsADoctorsWord() {
        List<Rule> lasting = KNOWLEDGE.ruleSet().rules().stream().filter(Rule::lasting).toList();
        assertThat(lasting).hasSizeGreaterThan(10)
            .allSatisfy(rule -> assertThat(rule.when().reads()).as(rule.id()).noneMatch(RuleLawsTest::isAdvice));
    }

    /** Every demand for a doctor's word can be met, and by the word about that thing alone. */
    @Test
    void everyDemandForADoctorsWordIsLiftedByExactlyOneFact() {
        List<Rule> asking =
            KNOWLEDGE.ruleSet().rules().stream().filter(rule -> rule.demands().contains("medical-advice")).toList();
        assertThat(asking).hasSizeGreaterThan(5)
            .allSatisfy(rule -> assertThat(rule.when().reads().stream().filter(RuleLawsTest::isAdvice)).as(rule.id())
                .hasSize(1));
    }

    private static boolean isAdvice(String fact) {
        return fact(fact).computation().filter(how -> how.as() == ComputedAs.MEDICAL_ADVICE).isPresent();
    }

    @Test
    void suspectedMetalAlwaysDemandsTheTestUntilItWasReadAndAPositiveOnePrevents() {
        FactDef metal = fact("metal");
        everyRange(List.of("metal-test", "test-cutting", "label-metal", "odd-fade"), others -> {
            Facts facts = others.with(FactValue.known(metal, "suspected", List.of()));
            FactValue test = facts.get("metal-test");
            Assessment assessment = Assessor.assess(KNOWLEDGE.ruleSet(), facts, meetsMetal());
            for (Standing standing : assessment.standings()) {
                Weight least = test.best() >= fact("metal-test").ordinal("nothing") ? Weight.PREVENTS
                    : test.worst() >= fact("metal-test").ordinal("not-done") ? Weight.TEST_FIRST : Weight.RESTRICTS;
                assertThat(standing.weight().atLeast(least)).as("%s %s", standing, test).isTrue();
            }
            if (test.best() <= 1 && test.worst() >= 1) {
                assertThat(demanded(facts)).contains("incompatibility-test");
            }
        });
    }

    @ParameterizedTest
    @MethodSource("services")
    void dontKnowToEverythingTurnsNobodyAwayAndIsNeverNothingFound(Service service) {
        for (Answer silence : List.of(Answer.DONT_KNOW, Answer.RATHER_NOT_SAY)) {
            Weight weight = standing(service, said(service, silence));
            assertThat(weight.atLeast(Weight.NOTE)).as("%s: %s", silence, weight).isTrue();
            assertThat(weight.atLeast(Weight.COULD_NOT_BE_ASSESSED)).as("%s: %s", silence, weight)
                .isEqualTo(ofTheProduct(service).atLeast(Weight.COULD_NOT_BE_ASSESSED));
        }
    }

    @ParameterizedTest
    @MethodSource("services")
    void nothingAnsweredIsNeverNothingFound(Service service) {
        assertThat(standing(service, Answers.NONE).atLeast(Weight.NOTE)).isTrue();
    }

    /** The base client: whoever says "no" to everything owes at most the skin test that every colour owes. */
    @ParameterizedTest
    @MethodSource("services")
    void noToEverythingOwesAtMostASkinTest(Service service) {
        Answers answers = new BaseClient(KNOWLEDGE).complete(Answers.NONE, service.chemistries(), Set.of());
        boolean dyes = KNOWLEDGE.chemistries().needSkinTest(service.chemistries());
        assertThat(standing(service, answers)).as(service.id())
            .isEqualTo(ofTheProduct(service).heavier(dyes ? Weight.TEST_FIRST : Weight.NOTHING_FOUND));
    }

    /** What rules say that read no fact: the product speaks there, and no answer of any client changes it. */
    private static Weight ofTheProduct(Service service) {
        return Weight.heaviest(KNOWLEDGE.ruleSet().rules().stream().filter(rule -> rule.when().reads().isEmpty())
            .flatMap(rule -> service.steps().stream().map(rule::weightOn)).toList());
    }

    @Test
    void aFactThatCouldNotBeFoundIsNeverNothingFound() {
        for (FactDef def : KNOWLEDGE.ruleSet().facts()) {
            var without = new Facts(without(best().byId(), def.id()));
            List<Standing> standings =
                Assessor.assess(KNOWLEDGE.ruleSet(), without, KNOWLEDGE.ruleSet().services()).standings();
            assertThat(standings).as(def.id()).anyMatch(s -> s.weight() == Weight.COULD_NOT_BE_ASSESSED);
        }
    }

    static List<Service> services() {
        return KNOWLEDGE.ruleSet().services();
    }

    private static Weight standing(Service service, Answers answers) {
        var situation = new Situation(TODAY, Optional.of(LocalDate.of(1990, 1, 1)), service.chemistries(),
            KNOWLEDGE.questionnaire(), answers,
            KNOWLEDGE.policy("uk"), List.of());
        Facts facts = KNOWLEDGE.factFinder()
            .find(new Situation(situation.today(), situation.serviceDay(), situation.birthDate(),
                situation.bookedChemistries(), situation.questionnaire(), situation.answers(), situation.policy(),
                situation.tests(), Optional.of(BaseClient.LENGTH_CM)));
        return Assessor.assess(KNOWLEDGE.ruleSet(), facts, List.of(service)).standing(service.id()).orElseThrow()
            .weight();
    }

    /** "Don't know" wherever it is offered, else "rather not say", and the other way round; what offers neither is left out. */
    private static Answers said(Service service, Answer first) {
        Answers answers = Answers.NONE;
        for (Question question : KNOWLEDGE.questionnaire().questions()) {
            Answer second = first == Answer.DONT_KNOW ? Answer.RATHER_NOT_SAY : Answer.DONT_KNOW;
            Optional<Answer> silence =
                Stream.of(first, second).filter(a -> question.offers(a.codes().get(0))).findFirst();
            boolean put =
                KNOWLEDGE.questionnaire().status(question, service.chemistries(), answers) == Question.Status.ASKED;
            answers = put && silence.isPresent() ? answers.with(question.id(), silence.get()) : answers;
        }
        return answers;
    }

    private static List<String> demanded(Facts facts) {
        return Assessor.assess(KNOWLEDGE.ruleSet(), facts, KNOWLEDGE.ruleSet().services()).findings().stream()
            .map(Finding::demands).flatMap(List::stream).toList();
    }

    private static List<Service> meetsMetal() {
        return services().stream().filter(s -> s.chemistries().stream().anyMatch(METAL_MEETS::contains)).toList();
    }

    private static void everyRange(List<String> ids, Consumer<Facts> law) {
        everyRange(best(), ids, law);
    }

    private static void everyRange(Facts facts, List<String> ids, Consumer<Facts> law) {
        if (ids.isEmpty()) {
            law.accept(facts);
            return;
        }
        ranges(fact(ids.get(0))).forEach(value -> everyRange(facts.with(value), ids.subList(1, ids.size()), law));
    }

    private static List<FactValue> ranges(FactDef def) {
        List<FactValue> ranges = new ArrayList<>();
        for (int best = 0; best <= def.worst(); best++) {
            for (int worst = best; worst <= def.worst(); worst++) {
                ranges.add(FactValue.between(def, best, worst, List.of()));
            }
        }
        return ranges;
    }

    private static Facts best() {
        return Facts.of(KNOWLEDGE.ruleSet().facts().stream().map(def -> FactValue.known(def, 0, List.of())).toList());
    }

    private static Facts only(Facts facts, Rule rule) {
        return Facts.of(rule.when().reads().stream().map(facts::get).toList());
    }

    private static Map<String, FactValue> without(Map<String, FactValue> values, String id) {
        Map<String, FactValue> fewer = new LinkedHashMap<>(values);
        fewer.remove(id);
        return fewer;
    }

    private static FactDef fact(String id) {
        return KNOWLEDGE.ruleSet().fact(id).orElseThrow();
    }
}
