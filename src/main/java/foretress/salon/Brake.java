package foretress.salon;

import foretress.web.Fold;
import foretress.web.Network;
import io.github.bucket4j.Bucket;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Slows guessing down without shutting anybody out. One network may try so often in ten minutes, whoever it names; and each
 * failure in a row for one sign-in name makes that name wait longer, from nothing to a quarter of an hour.
 * A name nobody has waits like any other. Kept in memory: a restart forgives.
 */
@Singleton
class Brake {
    static final int FREE_TRIES = 5;
    static final Duration LONGEST_WAIT = Duration.ofMinutes(15);
    private static final Duration WINDOW = Duration.ofMinutes(10);
    private static final int MOST_KEPT = 20_000;
    private static final int LONGEST_LOGIN = 128;

    private record Failures(int inARow, Instant next) {}

    private final Map<String, Failures> byLogin = new ConcurrentHashMap<>();
    private final Map<String, Bucket> byNetwork = new ConcurrentHashMap<>();
    private final int triesPerAddress;
    private final Clock clock;

    Brake(@ConfigProperty(name = "foretress.sign-in.tries-per-address", defaultValue = "40") int triesPerAddress, Clock clock) {
        this.triesPerAddress = triesPerAddress;
        this.clock = clock;
    }

    /** Takes one try: nothing when it may go ahead, else how long to wait. A try counts as failed until {@link #passed}. */
    Optional<Duration> take(String login, String address) {
        keepSmall();
        var probe = byNetwork.computeIfAbsent(Network.of(address), any -> bucket()).tryConsumeAndReturnRemaining(1);
        if (!probe.isConsumed()) return Optional.of(Duration.ofNanos(probe.getNanosToWaitForRefill()));
        return takeFor(key(login));
    }

    private synchronized Optional<Duration> takeFor(String login) {
        var now = clock.instant();
        var failures = byLogin.getOrDefault(login, new Failures(0, now));
        if (now.isBefore(failures.next())) return Optional.of(Duration.between(now, failures.next()));
        int inARow = failures.inARow() + 1;
        byLogin.put(login, new Failures(inARow, now.plus(wait(inARow))));
        return Optional.empty();
    }

    /** It was the right password: the name starts afresh. */
    void passed(String login) {
        byLogin.remove(key(login));
    }

    /** No sign-in name is longer; what is made up to be longer takes no more room. */
    private static String key(String login) {
        var folded = Fold.fold(login);
        return folded.length() <= LONGEST_LOGIN ? folded : folded.substring(0, LONGEST_LOGIN);
    }

    /** After the free tries 1, 2, 4, ... seconds, up to the longest. */
    static Duration wait(int inARow) {
        if (inARow < FREE_TRIES) return Duration.ZERO;
        var seconds = 1L << Math.min(inARow - FREE_TRIES, 20);
        return seconds > LONGEST_WAIT.toSeconds() ? LONGEST_WAIT : Duration.ofSeconds(seconds);
    }

    private Bucket bucket() {
        return Bucket.builder().addLimit(limit -> limit.capacity(triesPerAddress).refillGreedy(triesPerAddress, WINDOW))
            .withCustomTimePrecision(new ClockMeter(clock)).build();
    }

    /** A flood of made-up names must not fill the memory; what goes first is what no longer brakes. */
    private void keepSmall() {
        var now = clock.instant();
        if (byLogin.size() > MOST_KEPT) byLogin.values().removeIf(f -> f.next().isBefore(now));
        if (byNetwork.size() > MOST_KEPT) byNetwork.values().removeIf(b -> b.getAvailableTokens() == triesPerAddress);
    }

    int kept() {
        return byLogin.size() + byNetwork.size();
    }
}
