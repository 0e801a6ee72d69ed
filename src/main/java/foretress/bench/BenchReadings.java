package foretress.bench;

import foretress.questionnaire.Code;
import foretress.vault.SealedJson;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;

/** What each test says now, in the outcomes that facts know. */
@Singleton
class BenchReadings {
    private final SealedJson bodies;
    private final BenchTime time;

    BenchReadings(SealedJson bodies, BenchTime time) {
        this.bodies = bodies;
        this.time = time;
    }

    /** How long it has run, or had when it was ended. */
    Run ran(BenchRecord test) {
        return test.lasted().or(() -> test.started().map(start -> time.reading().since(start))).orElse(Run.NONE);
    }

    List<Seen> seen(BenchRecord test) {
        return seen(test, row -> true);
    }

    private List<Seen> seen(BenchRecord test, Predicate<BenchSeen> which) {
        return BenchSeen.of(test.id()).stream().filter(row -> !row.struck()).filter(which)
            .map(row -> bodies.open(row, Seen.class)).toList();
    }

    MetalCheck metal(BenchRecord test) {
        return metal(test, seen(test));
    }

    private MetalCheck metal(BenchRecord test, List<Seen> seen) {
        BenchMetalBody kept = bodies.open(test, BenchMetalBody.class);
        return new MetalCheck(kept.tufts(), kept.withoutTuft(), seen, ran(test).ranMillis() / 1000,
            kept.nextDay().map(look -> Set.copyOf(look.apart())));
    }

    /** What it says shuts a service and nobody may go against it: a metal test that was not quiet. */
    boolean shuts(BenchRecord test) {
        return test.kind() == BenchKind.METAL && test.started().isPresent() && !test.struck()
            && metal(test).result().shuts();
    }

    /** It would shut nothing any more without that one thing seen. */
    boolean shutsBy(BenchRecord test, UUID sight) {
        return shuts(test) && !metal(test, seen(test, row -> !row.id().equals(sight))).result().shuts();
    }

    /** Empty while it says nothing: too early, or not enough hairs. A struck-out test says nothing either. */
    Optional<String> outcome(BenchRecord test) {
        return test.struck() ? Optional.empty() : switch (test.kind()) {
            case METAL -> metalOutcome(test);
            case ELASTICITY -> bodies.open(test, Elasticity.class).result().map(BenchReadings::code);
            case POROSITY -> bodies.open(test, Porosity.class).result().map(BenchReadings::code);
            case CUTTING, STRAND -> bodies.open(test, BenchTrialBody.class).result().map(BenchReadings::code);
            case LENGTH -> Optional.empty();
        };
    }

    /** The same of the roots alone, for what goes on new growth only, of a test that says something as a whole. */
    Optional<String> rootsOutcome(BenchRecord test) {
        return switch (test.kind()) {
            case ELASTICITY -> bodies.open(test, Elasticity.class).at(Part.ROOTS).map(BenchReadings::code);
            case POROSITY -> bodies.open(test, Porosity.class).at(Part.ROOTS).map(BenchReadings::code);
            default -> Optional.empty();
        };
    }

    private Optional<String> metalOutcome(BenchRecord test) {
        return test.started().isEmpty() ? Optional.empty() : switch (metal(test).result()) {
            case RUNNING -> Optional.empty();
            case SLIGHT_LIGHTENING -> Optional.of("slight-lightening");
            case NOT_WHOLE -> Optional.of("not-whole");
            case NOTHING_HAPPENED -> Optional.of("nothing-happened");
            case REACTION -> Optional.of("positive");
        };
    }

    static String code(Enum<?> constant) {
        return Code.of(constant);
    }
}
