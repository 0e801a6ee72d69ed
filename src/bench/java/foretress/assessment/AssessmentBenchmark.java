package foretress.assessment;

import foretress.knowledge.Knowledge;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long a client's answers take to become standings of every service; the rules on metal also against plain Java. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 3)
@Fork(1)
public class AssessmentBenchmark {
    private final Knowledge knowledge = Knowledge.load();
    private final RuleSet rules = knowledge.ruleSet();
    private final RuleSet metalOnly = PlainMetal.only(rules);
    private final FactFinder finder = knowledge.factFinder();
    private final Situation client = HeavyClient.of(knowledge);
    private final Facts facts = finder.find(client);

    /** A benchmark against a baseline that says something else would measure nothing. */
    @Setup
    public void bothSayTheSame() {
        Map<String, Weight> plain = PlainMetal.standings(facts, rules.services());
        Assessment assessed = Assessor.assess(metalOnly, facts, rules.services());
        assessed.standings().forEach(standing -> {
            if (plain.get(standing.serviceId()) != standing.weight()) {
                throw new IllegalStateException("%s: %s in plain Java, %s by the rules".formatted(standing.serviceId(),
                    plain.get(standing.serviceId()), standing.weight()));
            }
        });
    }

    @Benchmark
    public Assessment answersToStandings() {
        return Assessor.assess(rules, finder.find(client), rules.services());
    }

    @Benchmark
    public Facts answersToFacts() {
        return finder.find(client);
    }

    @Benchmark
    public Assessment factsToStandings() {
        return Assessor.assess(rules, facts, rules.services());
    }

    @Benchmark
    public Assessment metalRules() {
        return Assessor.assess(metalOnly, facts, rules.services());
    }

    @Benchmark
    public Map<String, Weight> metalInPlainJava() {
        return PlainMetal.standings(facts, rules.services());
    }
}
