package foretress.decision;

import foretress.assessment.Weight;
import foretress.visit.State;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Every reason for which a decision is not taken. The page asks for them beforehand; {@link Decisions} asks again in the transaction that keeps it. */
public enum Refusal {
    /** Something else holds by now than stood on the page: a newer assessment, another plan, a decision made meanwhile. */
    OUTDATED,
    NOT_BEGUN,
    /** Closed, called off or withdrawn. */
    OVER,
    NOT_ANSWERED,
    /** Questions to ask again on the day. */
    NOT_ON_THE_DAY,
    /** Never signed, or not as it stands now. */
    NOT_SIGNED,
    /** A negative skin test counts, and nobody has looked at the spot once more before mixing. */
    SPOT_NOT_SEEN,
    /** What stands in the way can be gone against by nobody. */
    LASTING,
    /** A test owed or another finding in the way, which only the owner can go against. */
    OWNER_ONLY,
    WITHOUT_REASON,
    /** What restricts goes ahead only with changes. */
    RESTRICTED,
    WITHOUT_CONDITIONS;

    /** @param conditions as written so far */
    public record Asked(Verdict verdict, String conditions) {}

    /** @param reason why findings in the way are gone against, as written so far */
    public record Decider(boolean owner, String reason) {}

    /** Whether nothing but words is missing. */
    boolean isMendedByWriting() {
        return this == WITHOUT_REASON || this == WITHOUT_CONDITIONS;
    }

    /** What refuses every decision at a visit that has come so far. */
    static Optional<Refusal> of(State state) {
        if (!state.isAhead()) {
            return Optional.of(OVER);
        }
        return state.hasAnswers() ? Optional.empty() : Optional.of(NOT_BEGUN);
    }

    /** What refuses this verdict on a service; putting off and declining are never refused. */
    static Set<Refusal> of(Asked asked, Decider by, Gate.Open open, List<Gate.Weighing> on) {
        Set<Refusal> refusals = EnumSet.noneOf(Refusal.class);
        if (asked.verdict().goesAhead()) {
            refusals.addAll(open.refusals());
            inTheWay(by, on.stream().filter(Gate.Weighing::inTheWay).toList()).ifPresent(refusals::add);
            unwritten(asked, on).ifPresent(refusals::add);
        }
        return refusals;
    }

    private static Optional<Refusal> inTheWay(Decider by, List<Gate.Weighing> inTheWay) {
        if (inTheWay.stream().anyMatch(Gate.Weighing::lasting)) {
            return Optional.of(LASTING);
        }
        if (inTheWay.isEmpty()) {
            return Optional.empty();
        }
        return !by.owner() ? Optional.of(OWNER_ONLY)
            : Optional.of(WITHOUT_REASON).filter(none -> by.reason().isBlank());
    }

    private static Optional<Refusal> unwritten(Asked asked, List<Gate.Weighing> on) {
        if (asked.verdict() == Verdict.PROCEED) {
            return Optional.of(RESTRICTED).filter(restricted -> Gate.standing(on).compareTo(Weight.RESTRICTS) >= 0);
        }
        return Optional.of(WITHOUT_CONDITIONS).filter(none -> asked.conditions().isBlank());
    }

    /** Thrown by the engine: nothing was kept. */
    public static final class Refused extends RuntimeException {
        private final Set<Refusal> why;

        Refused(Set<Refusal> why) {
            super("not decided: " + why);
            this.why = Set.copyOf(why);
        }

        Refused(Refusal why) {
            this(Set.of(why));
        }

        public Set<Refusal> why() {
            return why;
        }
    }
}
