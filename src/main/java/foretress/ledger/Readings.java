package foretress.ledger;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Which readings have an entry of late; forgotten with the server, so that another one begins with entries of its own. */
final class Readings {
    /** How long an entry stands for the same page read again by the same person. */
    static final Duration SPAN = Duration.ofMinutes(15);
    /** More than a whole salon opens within the span. */
    static final int MOST = 10_000;

    private final Map<List<String>, Instant> since = new ConcurrentHashMap<>();

    boolean covers(Reading reading) {
        Instant entry = since.get(key(reading));
        return entry != null && !reading.at().isBefore(entry) && reading.at().isBefore(entry.plus(SPAN));
    }

    void add(Reading reading) {
        if (since.size() >= MOST) {
            since.values().removeIf(entry -> !reading.at().isBefore(entry.plus(SPAN)));
        }
        if (since.size() < MOST) {
            since.put(key(reading), reading.at());
        }
    }

    private static List<String> key(Reading reading) {
        return List.of(reading.actor(), reading.what(), reading.subject());
    }
}
