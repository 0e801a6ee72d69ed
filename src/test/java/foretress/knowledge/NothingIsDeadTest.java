package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.FactDef;
import foretress.assessment.FactValue;
import foretress.assessment.Facts;
import foretress.assessment.Rule;
import foretress.assessment.Service;
import foretress.assessment.Step;
import foretress.assessment.Truth;
import foretress.assessment.Weight;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Nothing in knowledge is dead: every rule can fire and can keep still, is the heaviest somewhere, and reads only what is asked
 * where it weighs; every class of every fact comes out of some answers, and something reads it.
 */
class NothingIsDeadTest {
    private static final Path CASES = Path.of("src/test/cases");
    private static final Set<String> FROM_TREATMENTS = Set.of("left", "left-by-age", "kind-left", "metal");
    private static final Set<String> FROM_MEDICINES =
        Set.of("medicine", "steroid-tablets", "skin-steroid", "chemotherapy", "unknown-medicine");
    /** Told apart for the reader, who asks or words it otherwise; the weight is the same. */
    private static final Set<String> FOR_THE_READER =
        Set.of("asthma: marker and present", "chemotherapy: in-window and now", "hair-length: measured and said",
            "hair-state: breaks and gummy", "label-dye-group: none and other", "porosity: average and not-done",
            "resistant-hair: no and not-done", "root-elasticity: not-done and caution",
            // a doctor's yes opens nothing here, and only a no shuts
            "earlier-reactor-advice: with-care and not-asked", "tattoo-advice: with-care and not-asked");
    /** The policies at hand set no age of their own; one that does is tried with the policy's figures. */
    private static final Set<String> ONLY_BY_A_STRICTER_POLICY = Set.of("age = below-salon-age");
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final List<Rule> RULES = KNOWLEDGE.ruleSet().rules();

    @Test
    void everyRuleCanFireAndCanKeepStill() {
        List<String> dead = new ArrayList<>();
        for (Rule rule : RULES) {
            Set<Truth> seen = readings(rule).stream().map(rule.when()::of).collect(Collectors.toSet());
            boolean readsNothing = rule.when().reads().isEmpty(); // then it is the service that makes it fire
            if (!readsNothing && !seen.equals(Set.of(Truth.TRUE, Truth.FALSE))) {
                dead.add(rule.id() + " is always " + seen);
            }
        }
        assertThat(dead).isEmpty();
    }

    /** A rule whose findings are outweighed wherever it fires, and that asks for nothing of its own, would say nothing. */
    @Test
    void everyRuleIsTheHeaviestSomewhereOrAsksForATestOfItsOwn() {
        List<String> shadowed =
            RULES.stream().filter(rule -> readings(rule).stream().filter(facts -> rule.when().of(facts) == Truth.TRUE)
                .noneMatch(facts -> speaks(rule, facts))).map(Rule::id).toList();
        assertThat(shadowed).isEmpty();
    }

    /** Over the cases, which hold one client for every way a rule can be met. */
    @Test
    void everyClassOfEveryFactComesOutOfSomeAnswers() {
        Map<String, Set<String>> seen = new LinkedHashMap<>();
        for (Case one : Case.read(KNOWLEDGE, KnowledgeFiles.ofFolder(CASES).byPath())) {
            KNOWLEDGE.factFinder().find(one.situation()).byId().values().stream().filter(FactValue::isKnown)
                .forEach(
                    value -> seen.computeIfAbsent(value.fact(), fact -> new LinkedHashSet<>()).add(value.worstClass()));
        }
        List<String> never = KNOWLEDGE.ruleSet().facts().stream().flatMap(def -> def.classes().stream()
            .filter(c -> !seen.getOrDefault(def.id(), Set.of()).contains(c)).map(c -> def.id() + " = " + c)).toList();
        assertThat(never).as("classes no case gives").containsExactlyInAnyOrderElementsOf(ONLY_BY_A_STRICTER_POLICY);
    }

    /** A class told apart by nothing is one too many. */
    @Test
    void everyClassMakesADifferenceToSomeRule() {
        Set<String> told = new TreeSet<>();
        for (FactDef def : KNOWLEDGE.ruleSet().facts()) {
            for (int ordinal = 0; ordinal < def.worst(); ordinal++) {
                int here = ordinal;
                if (RULES.stream().filter(rule -> rule.when().reads().contains(def.id()))
                    .noneMatch(rule -> tellsApart(rule, def, here))
                    && KNOWLEDGE.ruleSet().facts().stream().noneMatch(
                        other -> other.computation().filter(how -> how.of().contains(def.id())).isPresent())) {
                    told.add("%s: %s and %s".formatted(def.id(), def.classes().get(here), def.classes().get(here + 1)));
                }
            }
        }
        assertThat(told).as("classes no rule tells apart").containsExactlyInAnyOrderElementsOf(FOR_THE_READER);
    }

    /** Facts of the treatments and the medicines too: their questions must be put wherever a rule that reads them weighs. */
    @Test
    void whatAComputationReadsIsAskedForEveryServiceItsRulesWeighOn() {
        List<String> holes = new ArrayList<>();
        for (Rule rule : RULES) {
            Set<Question> read = rule.when().reads().stream().map(id -> KNOWLEDGE.ruleSet().fact(id).orElseThrow())
                .flatMap(NothingIsDeadTest::computedFrom).collect(Collectors.toCollection(LinkedHashSet::new));
            KNOWLEDGE.ruleSet().services().stream().filter(service -> weighs(rule, service))
                .forEach(service -> read.stream()
                    .filter(question -> !question.askedFor().isEmpty()
                        && question.askedFor().stream().noneMatch(service.chemistries()::contains))
                    .forEach(question -> holes.add(
                        "%s weighs on %s, which does not ask %s".formatted(rule.id(), service.id(), question.id()))));
        }
        assertThat(holes).isEmpty();
    }

    private static Stream<Question> computedFrom(FactDef def) {
        String name = def.computation().map(how -> how.as().code()).orElse("");
        Stream<Question> cues = name.equals("metal") || name.startsWith("left") || name.equals("kind-left")
            ? KNOWLEDGE.ruleSet().cues().stream()
                .filter(cue -> def.computation().orElseThrow().of().contains(cue.what()))
                .flatMap(cue -> cue.when().keySet().stream())
                .map(id -> KNOWLEDGE.questionnaire().question(id).orElseThrow())
            : Stream.of();
        Stream<Question> list = KNOWLEDGE.questionnaire().questions().stream()
            .filter(question -> FROM_TREATMENTS.contains(name) && question.kind() == Kind.TREATMENTS
                || FROM_MEDICINES.contains(name) && question.kind() == Kind.MEDICINES);
        return Stream.concat(cues, list);
    }

    private static boolean weighs(Rule rule, Service service) {
        return service.steps().stream().anyMatch(step -> rule.weightOn(step) != Weight.NOTHING_FOUND);
    }

    /** Whether going from one class to the next changes how the rule comes out, whatever its other facts are. */
    private static boolean tellsApart(Rule rule, FactDef def, int ordinal) {
        return readings(rule).stream().filter(facts -> facts.get(def.id()).best() == ordinal)
            .anyMatch(facts -> rule.when().of(facts) != rule.when()
                .of(facts.with(FactValue.known(def, ordinal + 1, List.of()))));
    }

    /** On some step it weighs as much as anything does, or what it asks for no other rule asks for there. */
    private static boolean speaks(Rule rule, Facts facts) {
        Facts whole = whole(facts);
        List<Rule> others =
            RULES.stream().filter(other -> other != rule && other.when().of(whole) == Truth.TRUE).toList();
        return KNOWLEDGE.ruleSet().steps().stream().filter(step -> rule.weightOn(step) != Weight.NOTHING_FOUND)
            .anyMatch(step -> others.stream().allMatch(other -> rule.weightOn(step).atLeast(other.weightOn(step)))
                || asksAlone(rule, step, others));
    }

    private static boolean asksAlone(Rule rule, Step step, List<Rule> others) {
        return rule.demands().stream().anyMatch(test -> others.stream()
            .noneMatch(other -> other.demands().contains(test) && other.weightOn(step) != Weight.NOTHING_FOUND));
    }

    /** These, and every other fact at its best. */
    private static Facts whole(Facts few) {
        Map<String, FactValue> values = new LinkedHashMap<>();
        KNOWLEDGE.ruleSet().facts().forEach(def -> values.put(def.id(), FactValue.known(def, 0, List.of())));
        values.putAll(few.byId());
        return new Facts(values);
    }

    /** Every known reading of the facts a rule reads. */
    private static List<Facts> readings(Rule rule) {
        List<List<FactValue>> readings = List.of(List.of());
        for (String id : rule.when().reads()) {
            FactDef def = KNOWLEDGE.ruleSet().fact(id).orElseThrow();
            List<List<FactValue>> more = new ArrayList<>();
            for (List<FactValue> reading : readings) {
                for (int ordinal = 0; ordinal <= def.worst(); ordinal++) {
                    more.add(
                        Stream.concat(reading.stream(), Stream.of(FactValue.known(def, ordinal, List.of()))).toList());
                }
            }
            readings = more;
        }
        return readings.stream().map(Facts::of).toList();
    }
}
