package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import dev.cel.common.CelValidationException;
import dev.cel.common.types.SimpleType;
import dev.cel.compiler.CelCompiler;
import dev.cel.compiler.CelCompilerBuilder;
import dev.cel.compiler.CelCompilerFactory;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelRuntime;
import dev.cel.runtime.CelRuntimeFactory;
import foretress.assessment.Condition;
import foretress.assessment.FactDef;
import foretress.assessment.FactValue;
import foretress.assessment.Facts;
import foretress.assessment.Rule;
import foretress.assessment.Truth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** Our walker against the runtime of the condition language, on everything known; and against every reading, on ranges. */
@Execution(ExecutionMode.CONCURRENT)
class ConditionTest {
    private static final int FACT_SETS = 100_000;
    private static final Pattern COMPARISON = Pattern.compile("(\\w+)\\s*(==|!=|<=|>=|<|>)\\s*(\\w+)");
    private static final String[] SIGNS = { "==", "!=", "<", "<=", ">", ">=" };

    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private final Map<String, FactDef> facts = KNOWLEDGE.ruleSet().facts().stream()
        .collect(
            Collectors.toMap(def -> ConditionReader.written(def.id()), def -> def, (a, b) -> a, LinkedHashMap::new));
    private final ConditionReader reader = new ConditionReader(facts.values());
    private final CelCompiler compiler = compiler();
    private final CelRuntime runtime = CelRuntimeFactory.standardCelRuntimeBuilder().build();
    private final Random random = new Random(20261124);

    @Test
    void ourWalkerAgreesWithTheRuntimeOnEveryKnownFactSet() throws Exception {
        List<String> texts = new ArrayList<>(written().values());
        for (int i = 0; i < 200; i++) {
            texts.add(invented(3));
        }
        List<Condition> ours = texts.stream().map(this::read).toList();
        List<CelRuntime.Program> theirs = new ArrayList<>();
        for (String text : texts) {
            theirs.add(program(text));
        }
        for (int i = 0; i < FACT_SETS; i++) {
            Map<String, Long> values = new HashMap<>();
            facts.forEach((name, def) -> values.put(name, (long) random.nextInt(def.classes().size())));
            Facts known = known(values);
            for (int tried = 0; tried < 4; tried++) {
                int n = random.nextInt(texts.size());
                Truth expected = (Boolean) theirs.get(n).eval(values) ? Truth.TRUE : Truth.FALSE;
                assertThat(ours.get(n).of(known)).as("%s with %s", texts.get(n), values).isEqualTo(expected);
            }
        }
    }

    /** Sound: true means true under every reading, false means false under every reading. */
    @Test
    void onRangesItIsTrueOrFalseOnlyWhenEveryReadingIs() {
        for (int i = 0; i < 3_000; i++) {
            Condition condition = read(invented(2));
            List<FactValue> ranges = condition.reads().stream().map(this::range).toList();
            Truth truth = condition.of(Facts.of(ranges));
            for (Facts reading : readings(ranges)) {
                Truth seen = condition.of(reading);
                assertThat(truth == Truth.UNKNOWN || truth == seen)
                    .as("%s on %s is %s, one reading %s", condition, ranges, truth, seen).isTrue();
            }
        }
    }

    /** The short way of reading a condition and CEL's come to the same tree, or the short way stands aside. */
    @Test
    void bothWaysOfReadingComeToOneTree() {
        List<String> texts = new ArrayList<>(written().values());
        for (int i = 0; i < 2_000; i++) {
            texts.add(invented(4));
        }
        texts.add("true");
        for (String text : texts) {
            assertThat(new PlainConditions(facts).read(text)).as(text).contains(reader.readAsCel(yaml(text)));
        }
    }

    @Test
    void whatIsNoUsualConditionIsLeftToCel() {
        String right = invented(0);
        for (String text : List.of("", "false", "true && " + right, right + " " + right, right + " &&", "(" + right,
            right + ")",
            "!" + right, "!!(" + right + ")", right + " == true", "1 == 1", "nobody == nothing",
            right.replaceAll("\\w+$", "nobody"),
            right + " // so", right + " & " + right, right + "; ", "\u00a0" + right, right.replace(' ', '.'))) {
            assertThat(new PlainConditions(facts).read(text)).as(text).isEmpty();
        }
    }

    /** One letter lost, doubled or changed: whatever the short way still takes, CEL reads the same. */
    @Test
    void aSlipInAConditionIsReadAsCelReadsItOrNotAtAll() {
        String letters = "()!&|=<> _a";
        for (int i = 0; i < 3_000; i++) {
            var slip = new StringBuilder(invented(2));
            int at = random.nextInt(slip.length());
            slip.replace(at, at + random.nextInt(2), "" + letters.charAt(random.nextInt(letters.length())));
            new PlainConditions(facts).read(slip.toString())
                .ifPresent(
                    plain -> assertThat(reader.readAsCel(yaml(slip.toString()))).as(slip.toString()).isEqualTo(plain));
        }
    }

    private static Yaml yaml(String text) {
        return Yaml.read("tried", '"' + text + '"', new Complaints()).orElseThrow();
    }

    @Test
    void aConditionPrintsItselfAsTheRuleFileHasIt() {
        written().forEach((id, text) -> {
            String ours = KNOWLEDGE.ruleSet().rule(id).orElseThrow().when().toString();
            assertThat(ours).as(id).isEqualTo(text.replaceAll("\\s+", " ").strip());
        });
    }

    @Test
    void aPrintedConditionReadsAsItself() {
        KNOWLEDGE.ruleSet().rules().stream().map(Rule::when)
            .forEach(when -> assertThat(read(when.toString())).isEqualTo(when));
        for (int i = 0; i < 500; i++) {
            Condition condition = read(invented(4));
            assertThat(read(condition.toString())).isEqualTo(condition);
        }
    }

    private Condition read(String text) {
        var complaints = new Complaints();
        Condition condition = reader.read(Yaml.read("tried", '"' + text + '"', complaints).orElseThrow());
        assertThat(complaints.all()).isEmpty();
        return condition;
    }

    /** What the rule files say, by rule id. */
    private static Map<String, String> written() {
        Map<String, String> written = new LinkedHashMap<>();
        KnowledgeFiles.ofClassPath().under("rules")
            .forEach((path, text) -> Yaml.read(path, text, new Complaints()).orElseThrow().list()
                .forEach(rule -> written.put(rule.at("id").text(), rule.at("when").text())));
        return written;
    }

    /** The classes become numbers by a text replacement, so that nothing of our own tree takes part. */
    private CelRuntime.Program program(String text) throws CelValidationException, CelEvaluationException {
        String numbered = COMPARISON.matcher(text).replaceAll(m -> {
            List<String> classes = facts.get(m.group(1)).classes().stream().map(ConditionReader::written).toList();
            return m.group(1) + " " + m.group(2) + " " + classes.indexOf(m.group(3));
        });
        return runtime.createProgram(compiler.compile(numbered).getAst());
    }

    private CelCompiler compiler() {
        CelCompilerBuilder builder = CelCompilerFactory.standardCelCompilerBuilder().setResultType(SimpleType.BOOL);
        facts.keySet().forEach(name -> builder.addVar(name, SimpleType.INT));
        return builder.build();
    }

    private String invented(int depth) {
        if (depth == 0 || random.nextInt(5) == 0) {
            String name = List.copyOf(facts.keySet()).get(random.nextInt(6));
            List<String> classes = facts.get(name).classes();
            return "%s %s %s".formatted(name, SIGNS[random.nextInt(6)],
                ConditionReader.written(classes.get(random.nextInt(classes.size()))));
        }
        return switch (random.nextInt(3)) {
            case 0 -> "!(" + invented(depth - 1) + ")";
            case 1 -> "(" + invented(depth - 1) + ") && (" + invented(depth - 1) + ")";
            default -> "(" + invented(depth - 1) + ") || (" + invented(depth - 1) + ")";
        };
    }

    private Facts known(Map<String, Long> values) {
        return Facts.of(values.entrySet().stream()
            .map(e -> FactValue.known(facts.get(e.getKey()), e.getValue().intValue(), List.of())).toList());
    }

    private FactValue range(String id) {
        FactDef def = facts.get(ConditionReader.written(id));
        int one = random.nextInt(def.classes().size());
        int other = random.nextInt(def.classes().size());
        return FactValue.between(def, Math.min(one, other), Math.max(one, other), List.of());
    }

    private List<Facts> readings(List<FactValue> ranges) {
        List<Facts> readings = List.of(new Facts(Map.of()));
        for (FactValue range : ranges) {
            List<Facts> more = new ArrayList<>();
            for (Facts reading : readings) {
                for (int c = range.best(); c <= range.worst(); c++) {
                    more.add(
                        reading.with(FactValue.known(facts.get(ConditionReader.written(range.fact())), c, List.of())));
                }
            }
            readings = more;
        }
        return readings;
    }
}
