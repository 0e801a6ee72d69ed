package foretress.skintest;

import foretress.assessment.SkinTestOutcome;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A test with everything that was told and read of it, opened. */
record TestFile(TestApplied test, TestMethod made, List<Seen> seen) {
    /** One look that counts, and when it was. */
    record Seen(SkinTestEntry entry, SkinLook look) {
        boolean byStaff() {
            return entry.kind() == SkinTestEntry.Kind.READING;
        }
    }

    TestFile {
        seen = List.copyOf(seen);
    }

    List<Seen> counting() {
        return seen.stream().filter(one -> one.entry().counts()).toList();
    }

    /** The heaviest that was told or read stands. A client's "nothing" is no result. */
    Optional<SkinTestOutcome> result() {
        return counting().stream().filter(one -> one.byStaff() || !one.look().nothing()).map(one -> one.look().result())
            .max(Comparator.naturalOrder());
    }

    boolean reacted() {
        return result().filter(SkinTestOutcome::reacted).isPresent();
    }

    /** The first reading by staff after the wait in which nothing was seen. */
    Optional<Seen> readNegative(Instant from) {
        return counting().stream()
            .filter(one -> one.byStaff() && one.look().nothing() && !one.entry().madeAt().isBefore(from)).findFirst();
    }

    /** Begun or read under something that may hide a reaction. */
    boolean masked() {
        return made.masked() || counting().stream().anyMatch(one -> one.byStaff() && !one.look().masking().isEmpty());
    }
}
