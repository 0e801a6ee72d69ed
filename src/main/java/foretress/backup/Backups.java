package foretress.backup;

import foretress.ledger.Ledger;
import foretress.running.AtStart;
import foretress.running.Clockwork;
import foretress.running.ConsoleNotices;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.scheduler.Scheduled;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import javax.sql.DataSource;
import org.jboss.logging.Logger;

/** Takes a backup whenever the last one is a day old, when the owner presses the button, and when the command asks for one. */
@Singleton
public class Backups implements AtStart {
    private static final Logger LOG = Logger.getLogger(Backups.class);
    /** Time for the clock to come round and for the writing itself; past it the owner is warned. */
    private static final Duration GRACE = Duration.ofHours(2);

    /**
     * How things stand.
     *
     * @param set whether a folder and a key were given
     * @param last when the newest good one was taken
     * @param late there is none, or it is older than the schedule
     * @param failed the last try came to nothing
     */
    public record Standing(boolean set, Optional<Instant> last, boolean late, boolean failed) {}

    private final DataSource store;
    private final Ledger ledger;
    private final Clock clock;
    private final Clockwork clockwork;
    private final ConsoleNotices notices;
    private final Optional<BackupShelf> shelf;
    private final Optional<BackupKey> key;
    private final Optional<Path> wanted;
    private final Duration every;
    private volatile boolean failed;
    private volatile Instant lastTry = Instant.EPOCH;

    Backups(DataSource store, Ledger ledger, Clock clock, Clockwork clockwork, ConsoleNotices notices,
        BackupSettings settings) {
        this.store = store;
        this.ledger = ledger;
        this.clock = clock;
        this.clockwork = clockwork;
        this.notices = notices;
        this.shelf = settings.shelf();
        this.key = settings.key();
        this.wanted = shelf.map(one -> one.folder().resolve(BackupWish.FILE));
        this.every = settings.every();
    }

    @Override
    public void run() {
        if (restoredBefore()) {
            ledger.note("server", "store restored from a backup", "");
            notices.add(
                "This store was restored from a backup: links, sessions and programs' tokens of before are closed.");
        }
    }

    /** Said once. */
    private boolean restoredBefore() {
        return QuarkusTransaction.requiringNew().call(() -> {
            try (Connection connection = store.getConnection()) {
                boolean said = Marks.get(connection, "restored").isPresent();
                Marks.take(connection, "restored");
                return said;
            } catch (SQLException e) {
                throw new IllegalStateException("the store could not be read", e);
            }
        });
    }

    @Scheduled(every = "${foretress.backup.every:5s}", delayed = "30s",
        concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void onTheDot() {
        clockwork.run(this::takeDue);
    }

    private void takeDue() {
        boolean asked = wanted.filter(Files::exists).isPresent();
        if (asked || isDue()) {
            take("server");
        }
    }

    /** After a failure no sooner than the command or the owner asks, or the next hour begins. */
    private boolean isDue() {
        return isOlderThan(every) && (!failed || clock.instant().isAfter(lastTry.plus(Duration.ofHours(1))));
    }

    /**
     * Takes one now, beside whatever else goes on.
     *
     * @param actor who asked, as the audit chain names people
     * @return whether it was written and read back
     */
    public synchronized boolean take(String actor) {
        if (shelf.isEmpty() || key.isEmpty()) {
            return false;
        }
        lastTry = clock.instant();
        failed = true;
        try {
            write(shelf.get(), key.get());
            ledger.note(actor, "backup taken", "");
            failed = false;
        } catch (IOException | SQLException | RuntimeException e) {
            LOG.errorf("no backup could be taken: %s", e.getClass().getSimpleName() + ", " + e.getMessage());
        } finally {
            answer();
        }
        return !failed;
    }

    private void write(BackupShelf shelf, BackupKey key) throws IOException, SQLException {
        try (Connection connection = store.getConnection()) {
            BackupFile.write(shelf.place(clock.instant()), key, connection, clock.millis());
        }
        shelf.prune();
    }

    private void answer() {
        try {
            if (wanted.isPresent()) {
                Files.deleteIfExists(wanted.get());
            }
        } catch (IOException e) {
            LOG.errorf("the wish for a backup could not be taken away: %s", e.getMessage());
        }
    }

    public Standing standing() {
        return new Standing(shelf.isPresent() && key.isPresent(), last(), isOlderThan(every.plus(GRACE)), failed);
    }

    /** One from the future, by a clock that was wrong, is no good as a last one. */
    private boolean isOlderThan(Duration age) {
        Instant now = clock.instant();
        return last().filter(at -> !at.isAfter(now) && !at.plus(age).isBefore(now)).isEmpty();
    }

    private Optional<Instant> last() {
        try {
            return shelf.isPresent() ? shelf.get().newest() : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
