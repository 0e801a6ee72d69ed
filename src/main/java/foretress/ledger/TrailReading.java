package foretress.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/** Reads a chain from its first entry on, one at a time, and holds it against slips kept outside. Where the entries lie it does not know. */
final class TrailReading {
    /** A slip whose stretch has begun and not ended. */
    private record Open(Slip slip, Merkle tree) {}

    private final List<Slip> waiting;
    private final List<Open> open = new ArrayList<>();
    private String previous = AuditEntry.NOTHING_BEFORE;
    private long whole;
    private Optional<Long> firstBroken = Optional.empty();
    private long proven;
    private Optional<Slip> against = Optional.empty();

    TrailReading(List<Slip> slips) {
        waiting = new ArrayList<>(slips);
        waiting.sort(Comparator.comparingLong(Slip::first));
    }

    /**
     * The next entry as it lies there; after one that is not as it was written nothing more is read.
     *
     * @return whether it is as it was written
     */
    boolean read(KeptEntry next) {
        if (firstBroken.isPresent()) {
            return false;
        }
        if (!next.follows(whole, previous)) {
            firstBroken = Optional.of(whole + 1);
            return false;
        }
        whole++;
        previous = next.sha256();
        compare();
        return true;
    }

    private void compare() {
        while (!waiting.isEmpty() && waiting.get(0).first() == whole) {
            open.add(new Open(waiting.remove(0), new Merkle()));
        }
        byte[] leaf = HexFormat.of().parseHex(previous);
        open.forEach(one -> one.tree().add(leaf));
        open.removeIf(one -> one.slip().last() == whole && settled(one));
    }

    private boolean settled(Open one) {
        if (one.slip().head().equals(previous) && one.slip().root().equals(one.tree().root())) {
            proven = whole;
        } else if (against.isEmpty()) {
            against = Optional.of(one.slip());
        }
        return true;
    }

    /** What the reading came to, the last entry read being the last there is. */
    TrailVerdict verdict() {
        Optional<Long> broken = firstBroken.or(() -> isCut() ? Optional.of(whole + 1) : Optional.empty());
        return new TrailVerdict(whole, broken, proven, against);
    }

    private boolean isCut() {
        return !open.isEmpty() || !waiting.isEmpty();
    }
}
