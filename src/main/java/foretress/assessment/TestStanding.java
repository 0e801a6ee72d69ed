package foretress.assessment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether a skin test lifts the demand for one, and every reason why it does not, so that a page can name them all. A test
 * stands only when nothing speaks against it.
 */
public record TestStanding(List<Doubt> doubts) {

    /** Why a skin test does not count. */
    public enum Reason {
        /** The skin answered, or may have: no negative test. */
        NOT_NEGATIVE,
        /** No member of staff has read it; what the client saw does not count. */
        NOT_READ,
        /** It was read before the wait that policy and product ask was over. */
        READ_TOO_EARLY,
        /** It was made with another product, shade or maker. */
        OTHER_PRODUCT,
        /** Here a test counts for one application, and it was made for another visit. */
        OTHER_VISIT,
        /** It is too old on the day of the visit. */
        OUT_OF_DATE,
        /** It was begun or read under something that hides a reaction, or may. */
        MASKED,
        /** Something taken now hides a reaction, or may. */
        MASKED_NOW,
        /** Something since may have taught the skin to react. */
        OVERTAKEN
    }

    /**
     * One reason.
     *
     * @param by what it comes from: facts for {@link Reason#MASKED_NOW}, questions for {@link Reason#OVERTAKEN}; else empty
     */
    public record Doubt(Reason reason, List<String> by) {
        public Doubt {
            by = List.copyOf(by);
        }
    }

    public TestStanding {
        doubts = List.copyOf(doubts);
    }

    public boolean stands() {
        return doubts.isEmpty();
    }

    public List<Reason> reasons() {
        return doubts.stream().map(Doubt::reason).toList();
    }

    /** What a reason comes from. */
    public List<String> by(Reason reason) {
        return doubts.stream().filter(doubt -> doubt.reason() == reason).flatMap(doubt -> doubt.by().stream()).toList();
    }

    /**
     * @param maskingNow facts of today that hide a reaction, or may
     * @param since questions whose answers tell of something that may have overtaken it
     */
    static TestStanding of(TestFact test, Policy policy, LocalDate serviceDay, List<String> maskingNow,
        List<String> since) {
        Stricter asked = Stricter.of(policy, test.leaflet());
        var found = new Gathered();
        found.when(SkinTestOutcome.reacted(test), Reason.NOT_NEGATIVE, List.of());
        found.when(test.read().isEmpty(), Reason.NOT_READ, List.of());
        found.when(!test.waitKept(), Reason.READ_TOO_EARLY, List.of());
        found.when(!test.thisProduct(), Reason.OTHER_PRODUCT, List.of());
        found.when(asked.eachApplication() && !test.thisVisit(), Reason.OTHER_VISIT, List.of());
        found.when(asked.lastDay(test.started()).filter(serviceDay::isAfter).isPresent(), Reason.OUT_OF_DATE,
            List.of());
        found.when(test.masked(), Reason.MASKED, List.of());
        found.when(!maskingNow.isEmpty(), Reason.MASKED_NOW, maskingNow);
        found.when(test.overtaken() || !since.isEmpty(), Reason.OVERTAKEN, since);
        return new TestStanding(found.doubts);
    }

    private static final class Gathered {
        private final List<Doubt> doubts = new ArrayList<>();

        void when(boolean holds, Reason reason, List<String> by) {
            if (holds) {
                doubts.add(new Doubt(reason, by));
            }
        }
    }
}
