package foretress.web;

import foretress.running.ClockMeter;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import jakarta.inject.Singleton;
import jakarta.ws.rs.ClientErrorException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Slows guessing down without letting anybody shut anybody else out. Whoever shows nothing of ours costs the network they come from;
 * whoever holds something of ours, as a link, a device's cookie or a session, is counted by that thing alone, so that no crowd of
 * strangers stands in their way. Nothing is counted for all together. Kept in memory: a restart forgives.
 */
@Singleton
public class RateLimiter {
    public static final int FREE_TRIES = 5;
    public static final Duration LONGEST_WAIT = Duration.ofMinutes(15);
    private static final Duration WINDOW = Duration.ofMinutes(10);
    private static final int MOST_KEPT = 20_000;

    /** What is tried, so that the crowd at one leaves the other alone. */
    public enum Door { SIGN_IN, LINK, PAPER }

    private record Failures(int inARow, Instant next) {}

    private final Map<String, Bucket> buckets = newestKept();
    private final Map<String, Failures> failures = newestKept();
    private final int signIns;
    private final int knocks;
    private final Clock clock;

    public RateLimiter(@ConfigProperty(name = "foretress.sign-in.tries-per-address", defaultValue = "40") int signIns,
        @ConfigProperty(name = "foretress.door.knocks-per-address", defaultValue = "40") int knocks, Clock clock) {
        this.signIns = signIns;
        this.knocks = knocks;
        this.clock = clock;
    }

    /** A try by somebody who shows nothing of ours: nothing when it may go ahead, else how long to wait. Addresses of one IPv6 /64 are one. */
    public Optional<Duration> stranger(Door door, String address) {
        return take(door, "from " + Network.of(address));
    }

    /** A try by whoever holds this thing of ours. */
    public Optional<Duration> holder(Door door, String thing) {
        return take(door, "with " + thing);
    }

    private synchronized Optional<Duration> take(Door door, String key) {
        ConsumptionProbe probe =
            buckets.computeIfAbsent(door + " " + key, any -> bucket(door)).tryConsumeAndReturnRemaining(1);
        return probe.isConsumed() ? Optional.empty() : Optional.of(Duration.ofNanos(probe.getNanosToWaitForRefill()));
    }

    /** A guess at this secret, counted as wrong until {@link #passed}: each wrong one in a row makes the next wait longer, up to {@link #LONGEST_WAIT}. */
    public synchronized Optional<Duration> guess(String secret) {
        Instant now = clock.instant();
        Failures before = failures.getOrDefault(secret, new Failures(0, now));
        if (now.isBefore(before.next())) {
            return Optional.of(Duration.between(now, before.next()));
        }
        int inARow = before.inARow() + 1;
        failures.put(secret, new Failures(inARow, now.plus(wait(inARow))));
        return Optional.empty();
    }

    /** It was right: the counting starts afresh. */
    public synchronized void passed(String secret) {
        failures.remove(secret);
    }

    /** After the free tries 1, 2, 4, ... seconds, up to the longest. */
    public static Duration wait(int inARow) {
        if (inARow < FREE_TRIES) {
            return Duration.ZERO;
        }
        long seconds = 1L << Math.min(inARow - FREE_TRIES, 20);
        return seconds > LONGEST_WAIT.toSeconds() ? LONGEST_WAIT : Duration.ofSeconds(seconds);
    }

    /** The refusal, with when to come again (RFC 9110, 10.2.3). */
    public static ClientErrorException tooOften(Duration wait) {
        return new ClientErrorException(
            Response.status(429).header(HttpHeaders.RETRY_AFTER, wait.toSeconds() + 1).build());
    }

    private Bucket bucket(Door door) {
        int tries = door == Door.SIGN_IN ? signIns : knocks;
        return Bucket.builder().addLimit(limit -> limit.capacity(tries).refillGreedy(tries, WINDOW))
            .withCustomTimePrecision(new ClockMeter(clock)).build();
    }

    /** A flood of made-up names must not fill the memory: what was not asked after for longest goes. */
    private static <T> Map<String, T> newestKept() {
        return Collections.synchronizedMap(new LinkedHashMap<>(64, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<String, T> eldest) {
                return size() > MOST_KEPT;
            }
        });
    }

    int kept() {
        return buckets.size() + failures.size();
    }
}
