package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.ComputedAs;
import foretress.assessment.FactDef;
import foretress.assessment.FactValue;
import foretress.assessment.Facts;
import foretress.assessment.Finding;
import foretress.assessment.Rule;
import foretress.assessment.Service;
import foretress.assessment.Truth;
import foretress.assessment.Weight;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Keeps;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * Facts × acts that a person can record. An act moves one fact: a test that is made and comes out well, a doctor who says yes, a name
 * that is looked up, a question that is asked again, a day that is waited for, hair that is cut or grown. No fact that gets better ever
 * makes a service heavier (the laws), so a state has a way out exactly where every act taken at its best opens the service.
 *
 * <p>Every rule is tried in every state of the facts it reads, none left out; whole clients by lot, with a fixed seed.
 */
@DisplayName("R36, R37, R39: no state of a client is without a next act, unless its rule is final and says so")
@Execution(ExecutionMode.CONCURRENT)
class WayOutTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final Path REVIEWED = Path.of("src/test/reviewed/no-way-out.txt");
    private static final int CLIENTS = 4000;
    /** The tests of the salon, by the computation that reads them: the test that a finding must ask for. */
    private static final Map<String, String> TESTS = Map.ofEntries(Map.entry("skin-test", "skin-test"),
        Map.entry("letter-or-test", "skin-test"), Map.entry("medical-advice", "medical-advice"),
        Map.entry("metal-test", "incompatibility-test"), Map.entry("test-cutting", "test-cutting"),
        Map.entry("elasticity-test", "elasticity-test"), Map.entry("elasticity-of-roots", "elasticity-test"),
        Map.entry("porosity-test", "porosity-test"), Map.entry("porosity-of-roots", "porosity-test"));
    /** Of these the newest result counts: one that came out badly is made again when the hair is better. */
    private static final Set<String> AGAIN =
        Set.of("test-cutting", "elasticity-test", "elasticity-of-roots", "porosity-test", "porosity-of-roots");
    /** What the calendar, scissors and growth change. */
    private static final Set<String> IN_TIME =
        Set.of("age", "metal", "left", "left-by-age", "kind-left", "hair-length", "chemotherapy", "label-metal",
            "label-dye-group",
            "label-unknown");

    /** What an act can come to at its best. */
    private static FactValue after(FactDef def, FactValue now) {
        return isOpenToAnAct(def, now) ? FactValue.known(def, 0, List.of())
            : now.isKnown() ? now : FactValue.known(def, now.best(), List.of());
    }

    private static boolean isOpenToAnAct(FactDef def, FactValue now) {
        String how = readBy(def);
        if (TESTS.containsKey(how)) {
            return AGAIN.contains(how) || now.worst() <= def.notDone();
        }
        return IN_TIME.contains(how) || how.equals("unknown-medicine") || how.isEmpty() && isAskedAgain(def);
    }

    /** The computation, or of a test at the chair which. */
    private static String readBy(FactDef def) {
        return def.computation()
            .map(how -> how.as() == ComputedAs.CHAIR_TEST ? how.of().get(0) : how.as().code()).orElse("");
    }

    /** All it is told by holds for a while only; what was ever is not asked again. */
    private static boolean isAskedAgain(FactDef def) {
        return def.rows().stream().flatMap(row -> row.when().keySet().stream())
            .map(id -> KNOWLEDGE.questionnaire().question(id).orElseThrow())
            .allMatch(q -> q.keeps() != Keeps.FOR_GOOD && q.kind() != Question.Kind.MEDICINES);
    }

    private static boolean closes(Rule rule) {
        return KNOWLEDGE.ruleSet().steps().stream().anyMatch(step -> rule.weightOn(step).atLeast(Weight.TEST_FIRST));
    }

    private static Facts after(Facts facts) {
        return Facts.of(facts.byId().values().stream()
            .map(value -> after(KNOWLEDGE.ruleSet().fact(value.fact()).orElseThrow(), value)).toList());
    }

    @Test
    void everyRuleThatClosesAServiceCanBeOpenedInEveryStateOrIsFinal() throws IOException {
        List<String> states = new ArrayList<>();
        Set<String> without = new TreeSet<>();
        for (Rule rule : KNOWLEDGE.ruleSet().rules()) {
            for (Facts facts : closes(rule) ? states(rule) : List.<Facts>of()) {
                if (!rule.lasting() && rule.when().of(facts) == Truth.TRUE
                    && rule.when().of(after(facts)) == Truth.TRUE) {
                    without.add(rule.id());
                    states.add(rule.id() + ": " + facts.byId().values());
                }
            }
        }
        Files.write(Path.of("target/no-way-out.txt"), states);
        assertThat(without).as("states without a next act stand in target/no-way-out.txt").isEqualTo(reviewed());
    }

    @Test
    void whatOpensARuleIsAskedForByARuleThatStandsThen() {
        for (Rule rule : KNOWLEDGE.ruleSet().rules()) {
            for (Facts facts : closes(rule) && !rule.lasting() ? states(rule) : List.<Facts>of()) {
                if (rule.when().of(facts) == Truth.TRUE && rule.when().of(after(facts)) != Truth.TRUE) {
                    assertThat(isToldOf(rule, facts)).as("%s in %s", rule.id(), facts.byId().values()).isTrue();
                }
            }
        }
    }

    /** Time, an answer or a look-up tells itself; a test or a word must be asked for, by this rule or by another that stands. */
    private static boolean isToldOf(Rule rule, Facts facts) {
        return facts.byId().values().stream().anyMatch(value -> {
            FactDef def = KNOWLEDGE.ruleSet().fact(value.fact()).orElseThrow();
            Optional<String> test = Optional.ofNullable(TESTS.get(readBy(def)));
            boolean helps = isOpenToAnAct(def, value) && value.worst() > 0;
            return helps && (test.isEmpty() || rule.demands().contains(test.get()) || anotherAsks(test.get(), facts));
        });
    }

    /** With everything else well: where it is not, a heavier rule stands and has its own way out. */
    private static boolean anotherAsks(String test, Facts facts) {
        Map<String, FactValue> well = new LinkedHashMap<>();
        KNOWLEDGE.ruleSet().facts().forEach(def -> well.put(def.id(), FactValue.known(def, 0, List.of())));
        well.putAll(facts.byId());
        var all = new Facts(well);
        return KNOWLEDGE.ruleSet().rules().stream().filter(other -> other.demands().contains(test))
            .anyMatch(other -> other.when().of(all) != Truth.FALSE)
            || AGAIN.stream().anyMatch(again -> test.equals(TESTS.get(again)));
    }

    /** Everything a rule reads, each known in each of its classes. */
    private static List<Facts> states(Rule rule) {
        List<List<FactValue>> states = List.of(List.of());
        for (String id : rule.when().reads()) {
            FactDef def = KNOWLEDGE.ruleSet().fact(id).orElseThrow();
            List<List<FactValue>> more = new ArrayList<>();
            for (List<FactValue> state : states) {
                for (int ordinal = 0; ordinal <= def.worst(); ordinal++) {
                    List<FactValue> longer = new ArrayList<>(state);
                    longer.add(FactValue.known(def, ordinal, List.of()));
                    more.add(longer);
                }
            }
            states = more;
        }
        return states.stream().map(Facts::of).toList();
    }

    @Test
    void ofClientsDrawnByLotNobodyIsLeftStandingButByAFinalRule() throws IOException {
        var lot = new Random(36);
        Set<String> left = new TreeSet<>();
        for (int n = 0; n < CLIENTS; n++) {
            Facts drawn =
                Sums.settled(Facts.of(KNOWLEDGE.ruleSet().facts().stream().map(def -> drawn(def, lot)).toList()));
            left.addAll(left(Sums.settled(after(drawn))));
        }
        assertThat(left).isSubsetOf(reviewed());
    }

    /** Mostly well, as people are; otherwise any class, or anything between two. */
    private static FactValue drawn(FactDef def, Random lot) {
        if (lot.nextInt(4) > 0) {
            return FactValue.known(def, 0, List.of());
        }
        int one = lot.nextInt(def.worst() + 1);
        int other = lot.nextInt(3) > 0 || alwaysKnown(def) ? one : lot.nextInt(def.worst() + 1);
        return FactValue.between(def, Math.min(one, other), Math.max(one, other), List.of());
    }

    private static boolean alwaysKnown(FactDef def) {
        return def.isAlwaysKnown();
    }

    private static Set<String> left(Facts facts) {
        List<Service> services = KNOWLEDGE.ruleSet().services();
        Assessment then = Assessor.assess(KNOWLEDGE.ruleSet(), facts, services);
        return services.stream()
            .flatMap(service -> then.on(service).stream().filter(f -> f.on(service).atLeast(Weight.TEST_FIRST)))
            .map(Finding::ruleId).filter(id -> !KNOWLEDGE.ruleSet().rule(id).orElseThrow().lasting())
            .collect(Collectors.toSet());
    }

    private static Set<String> reviewed() throws IOException {
        return Files.readAllLines(REVIEWED).stream().filter(line -> !line.isBlank() && !line.startsWith("#"))
            .map(line -> line.split(" ", 2)[0]).collect(Collectors.toCollection(TreeSet::new));
    }
}
