package foretress.bench;

import foretress.running.AtStart;
import foretress.running.Clockwork;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * How long the server has run in all, start after start, by a counter that no setting of the wall clock moves. Timers are
 * differences of two readings.
 *
 * <p>It is written down every few seconds while a timer runs, and at every start of one. What ran between the last writing and a
 * crash is lost, and so is the time until the next start: a dish waits that much longer, never shorter, and the record says from
 * when to when nobody watched. A machine that sleeps stops the counter under a server that goes on: then the clock on the wall has gone
 * further than the counter, and the record says that too.
 *
 * <p>On PostgreSQL several servers can count at once. Each writes at every beat and goes on from what the further one wrote, so that no
 * two are more than {@link #APART} apart, and beside another a test begins that much later: never is one over too early at either.
 */
@Singleton
public class BenchTime implements AtStart {
    private static final Logger LOG = Logger.getLogger(BenchTime.class);
    private static final long SELDOM_NANOS = 300_000_000_000L;
    /** Two beats: what one server can be behind another by. */
    static final Duration APART = Duration.ofSeconds(10);
    /** How long after another server wrote this one still counts on it. */
    private static final long BESIDE_NANOS = 60_000_000_000L;

    private final BenchNanos nanos;
    private final Clock clock;
    private final Clockwork clockwork;
    private final boolean shared;
    private final UUID me = UUID.randomUUID();
    private Run base = Run.NONE;
    private long from;
    private volatile BenchLook last;
    private long keptAt;
    private Optional<Long> besideAt = Optional.empty();
    private final Object keeping = new Object();
    /** Between the start's first writing and the end: outside it a beat would write over what the last start kept. */
    private volatile boolean beating;

    /** @param kind of the store; PostgreSQL may have other servers beside this one */
    BenchTime(BenchNanos nanos, Clock clock, Clockwork clockwork,
        @ConfigProperty(name = "quarkus.datasource.db-kind") String kind) {
        this.clockwork = clockwork;
        this.shared = kind.equals("postgresql");
        this.nanos = nanos;
        this.clock = clock;
        this.from = nanos.read();
        this.last = new BenchLook(clock.instant(), from, Run.NONE);
    }

    /** Goes on from what the last start of the server wrote down. */
    @Override
    public void run() {
        Instant now = clock.instant();
        begin(QuarkusTransaction.requiringNew()
            .call(() -> BenchClock.kept().map(row -> back(row, now)).orElse(Run.NONE)));
        keep();
        beating = true;
    }

    /** The counters after a time away, which is written down if a test ran through it; another server may have been there. */
    private Run back(BenchClock row, Instant now) {
        if (shared && Duration.between(row.wall(), now).abs().compareTo(APART) < 0) {
            return row.run();
        }
        if (!BenchRecord.running().isEmpty()) {
            BenchGap.keep(row.ranMillis(), row.wall(), now, false);
        }
        return row.run().rested(now.toEpochMilli() - row.wall().toEpochMilli());
    }

    private synchronized void begin(Run kept) {
        base = kept;
        from = nanos.read();
        last = new BenchLook(clock.instant(), from, kept);
    }

    public synchronized Run reading() {
        return base.on(nanos.read() - from);
    }

    /** What a test begins with: the counter written down, and later by what another server may be ahead. */
    Run begin() {
        synchronized (keeping) {
            Run now = keep();
            boolean beside = shared && besideAt.filter(at -> nanos.read() - at < BESIDE_NANOS).isPresent();
            return beside ? now.on(APART.toNanos()) : now;
        }
    }

    /** Writes the counter down, and a sleep since it was last looked at, in a transaction of its own; what it says then. */
    Run keep() {
        return kept(true);
    }

    /** One at a time: a sleep that one has seen is written down before another can end the test it fell into. */
    private Run kept(boolean always) {
        synchronized (keeping) {
            BenchLook before = last;
            Run now = look();
            Optional<BenchLook.Sleep> slept = last.sleptSince(before);
            return QuarkusTransaction.requiringNew().call(() -> written(now, slept, always)).map(this::caughtUp)
                .orElse(now);
        }
    }

    private Optional<BenchClock.Kept> written(Run now, Optional<BenchLook.Sleep> slept, boolean always) {
        boolean running = !BenchRecord.running().isEmpty();
        if (running) {
            slept.ifPresent(sleep -> BenchGap.keep(sleep.ranMillis(), sleep.from(), sleep.to(), true));
        }
        boolean due = always || running || shared || nanos.read() - keptAt > SELDOM_NANOS;
        return due ? Optional.of(BenchClock.keep(me, now, clock.instant())) : Optional.empty();
    }

    /** Goes on from what the store has, if another server knows of more. */
    private synchronized Run caughtUp(BenchClock.Kept kept) {
        keptAt = nanos.read();
        if (kept.beside()) {
            besideAt = Optional.of(keptAt);
        }
        Run ahead = kept.run().since(last.run());
        base = new Run(base.ranMillis() + ahead.ranMillis(), base.steadyMillis() + ahead.steadyMillis());
        last = new BenchLook(last.wall(), last.nanos(), kept.run());
        return kept.run();
    }

    /**
     * What has run by now; whoever starts a watch with it has every later sleep in that watch, for the counter was read once. It moves
     * neither counter: a machine that slept looks like a clock put forward, which must shorten nothing.
     */
    private synchronized Run look() {
        long counted = nanos.read();
        last = new BenchLook(clock.instant(), counted, base.on(counted - from));
        return last.run();
    }

    @Scheduled(every = "${foretress.bench.every:5s}", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void onTheDot() {
        clockwork.run(this::beat);
    }

    void beat() {
        if (beating) {
            kept(false);
        }
    }

    void lastBeat(@Observes ShutdownEvent event) {
        beating = false;
        try {
            keep();
        } catch (RuntimeException gone) {
            LOG.debug("the store is closed already; timers lose a few seconds");
        }
    }
}
