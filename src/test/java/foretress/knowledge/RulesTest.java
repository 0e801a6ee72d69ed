package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import foretress.assessment.FactDef;
import foretress.assessment.Rule;
import foretress.assessment.Service;
import foretress.assessment.Step;
import foretress.assessment.Weight;
import foretress.questionnaire.Question;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What every rule and its words must keep to, whatever it is about. */
@Execution(ExecutionMode.CONCURRENT)
class RulesTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    /** We call nothing safe, and never speak of stopping, pausing or changing a medicine. */
    private static final Map<String, Pattern> NEVER_SAID = Map.of(
        "en",
        Pattern.compile("\\bsafe(ly|ty)?\\b|stop (taking|using)|(pause|skip|delay) (your|the) (medicine|tablet|cream)",
            Pattern.CASE_INSENSITIVE),
        "es", never("\\bsegur[oa]s?\\b|deje de (tomar|usar)|suspenda|interrumpa"),
        "fr", never("sans (danger|risque)|arrêtez (de prendre|le|la|vos|votre)|suspendez|interrompez"),
        "pl", never("bezpieczn|odstaw|przesta(ń|ć) (brać|zażywać|stosować)"),
        "ar", never("\\bآمن|أوقفوا|(توقفوا|التوقف) عن (أخذ|تناول)"),
        "vi", never("an toàn|(ngừng|ngưng|bỏ) (uống|dùng)? ?thuốc"));

    /** Nobody is taught to sit a sting out, promised a service, or kept from a dermatologist's test. */
    private static final Map<String, Pattern> NEVER_TAUGHT = Map.of(
        "en",
        never("sting[^.]{0,30}(is|are) (common|normal|usual)|possible again once|skin test[^.]{0,20}anywhere else"),
        "es", never("(ard|pic)[^.]{0,30}(es|son) (normal|habitual|común|frecuente)|de nuevo posible en cuanto"
            + "|prueba en la piel[^.]{0,20}ning[uú]n otro"),
        "fr", never("piqu[^.]{0,30}(est|sont) (normal|courant)|à nouveau possible dès|test[^.]{0,20}ailleurs"),
        "pl", never("szczyp[^.]{0,30}(to|jest) (normal|częst)|znów (będzie )?możliw|prób[^.]{0,20}nigdzie indziej"),
        "ar", never("لسع[^.]{0,30}(طبيعي|شائع)|ولا في أي مكان آخر"),
        "vi", never("xót[^.]{0,30}(là )?bình thường|thử[^.]{0,20}nơi nào khác"));

    private static Pattern never(String said) {
        return Pattern.compile(said, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** A service that a rule weighs on must have put every question the rule reads; else it fires for everybody who books it. */
    @Test
    void whateverARuleReadsIsAskedForEveryServiceItWeighsOn() {
        List<String> holes = new ArrayList<>();
        for (Rule rule : KNOWLEDGE.ruleSet().rules()) {
            for (Service service : KNOWLEDGE.ruleSet().services()) {
                if (service.steps().stream().anyMatch(step -> rule.weightOn(step) != Weight.NOTHING_FOUND)) {
                    read(rule).filter(question -> !asked(question, service.chemistries()))
                        .forEach(question -> holes.add("%s weighs on %s, which does not ask %s".formatted(rule.id(),
                            service.id(), question.id())));
                }
            }
        }
        assertThat(holes).isEmpty();
    }

    @Test
    void everyChemistryWeighedOnIsUsedByAStepOrServes() {
        Set<String> used =
            KNOWLEDGE.ruleSet().steps().stream().flatMap(step -> step.uses().stream()).collect(Collectors.toSet());
        KNOWLEDGE.ruleSet().steps().stream().map(Step::id).forEach(used::add);
        assertThat(KNOWLEDGE.ruleSet().rules().stream().flatMap(rule -> rule.weights().keySet().stream())
            .filter(key -> !used.contains(key))).isEmpty();
    }

    @Test
    void everySourceIsCitedAndEveryFactIsRead() {
        Set<String> cited = KNOWLEDGE.ruleSet().rules().stream().flatMap(rule -> rule.sources().stream())
            .collect(Collectors.toCollection(TreeSet::new));
        KNOWLEDGE.policies().values().forEach(policy -> {
            cited.addAll(policy.sources().values());
            policy.warnings().forEach(warning -> cited.add(warning.source()));
        });
        KNOWLEDGE.ways().does().values().forEach(does -> cited.addAll(does.sources()));
        assertThat(cited).as("sources cited")
            .containsExactlyInAnyOrderElementsOf(KNOWLEDGE.ruleSet().sources().keySet());
        Set<String> read = KNOWLEDGE.ruleSet().rules().stream().flatMap(rule -> rule.when().reads().stream())
            .collect(Collectors.toSet());
        assertThat(KNOWLEDGE.ruleSet().facts().stream().map(FactDef::id).filter(fact -> !read.contains(fact)))
            .as("facts no rule reads").isEmpty();
    }

    /**
     * A known reactor, someone too young, someone who reacted to lightener: whoever asks for a skin test leaves them out. After
     * lightener a doctor's yes lets the test be made, and nothing else does.
     */
    @Test
    void whoeverAsksForASkinTestLeavesOutWhomASalonMustNotTest() {
        List<Rule> asking =
            KNOWLEDGE.ruleSet().rules().stream().filter(rule -> rule.demands().contains("skin-test")).toList();
        assertThat(KNOWLEDGE.ruleSet().fact("reactor").orElseThrow().sumOf()).containsOnly(
            entry("colour-reaction", "delayed"),
            entry("tattoo", "reacted"), entry("dye-allergy", "confirmed"));
        assertThat(asking).isNotEmpty().allSatisfy(rule -> assertThat(rule.when().reads())
            .contains("reactor", "age")
            .containsAnyOf("bleach-reaction", "lightener-advice"));
    }

    @ParameterizedTest
    @MethodSource("sentences")
    void noFindingCallsAnythingSafeOrTouchesAMedicine(String language, String rule, String sentence) {
        assertThat(NEVER_SAID.get(language).matcher(sentence).find()).as("%s %s: %s", language, rule, sentence)
            .isFalse();
    }

    @ParameterizedTest
    @MethodSource("sentences")
    @DisplayName("R32: no finding teaches to sit a sting out, promises a service, or forbids a dermatologist's test")
    void noFindingTeachesToWaitPromisesOrForbidsTheDermatologist(String language, String rule, String sentence) {
        assertThat(NEVER_TAUGHT.get(language).matcher(sentence).find()).as("%s %s: %s", language, rule, sentence)
            .isFalse();
    }

    static Stream<Arguments> sentences() {
        return NEVER_SAID.keySet().stream().flatMap(
            language -> KNOWLEDGE.ruleSet().rules().stream().flatMap(rule -> Stream.of(false, true).flatMap(unsure -> {
                Words.FindingWords words = KNOWLEDGE.words(language).finding(rule.id(), unsure);
                return Stream.of(words.title(), words.do_(), words.client())
                    .map(sentence -> arguments(language, rule.id(), sentence));
            }))).distinct();
    }

    private static Stream<Question> read(Rule rule) {
        Set<String> ids = new LinkedHashSet<>();
        rule.when().reads().stream().flatMap(Sums::parts)
            .forEach(def -> def.rows().forEach(row -> ids.addAll(row.when().keySet())));
        return ids.stream().map(id -> KNOWLEDGE.questionnaire().question(id).orElseThrow());
    }

    private static boolean asked(Question question, Set<String> chemistries) {
        return question.askedFor().isEmpty() || question.askedFor().stream().anyMatch(chemistries::contains);
    }
}
