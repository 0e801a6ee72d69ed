package foretress.vault;

import foretress.running.AuditEvent;
import foretress.running.Clockwork;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.event.Event;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * Takes a new master key into use while the server works: reads master.key again when it has changed and, once the new key's moment has come,
 * wraps every client's data key anew. What is sealed with the data keys is not touched.
 */
@Singleton
public class MasterKeyChange {
    private static final Logger LOG = Logger.getLogger(MasterKeyChange.class);
    private static final int FINGERPRINT = 32;

    private final DataSource store;
    private final MasterKey master;
    private final Clockwork clockwork;
    private final Event<AuditEvent> happened;
    private final Optional<Path> file;
    private String read = "";

    MasterKeyChange(DataSource store, MasterKey master, Clockwork clockwork, Event<AuditEvent> happened,
        @ConfigProperty(name = "foretress.master-key-file") Optional<String> file) {
        this.store = store;
        this.master = master;
        this.clockwork = clockwork;
        this.happened = happened;
        this.file = file.map(Path::of);
    }

    @Scheduled(every = "${foretress.master-key.every:20s}", delayed = "5s",
        concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void onTheDot() {
        clockwork.run(this::look);
    }

    private void look() {
        file.ifPresent(this::readAgain);
        wrapAnew();
    }

    /** A file that cannot be read now leaves the keys in use that are. */
    void readAgain(Path keys) {
        try {
            String text = Files.readString(keys, StandardCharsets.US_ASCII);
            if (!text.equals(read)) {
                master.use(MasterKeys.read(text));
                read = text;
            }
        } catch (IOException | GeneralSecurityException | IllegalArgumentException e) {
            LOG.errorf("%s could not be read again: %s", keys.getFileName(), e.getClass().getSimpleName());
        }
    }

    /** Does nothing where the store says it belongs to the current one. */
    void wrapAnew() {
        String current = master.current();
        if (belongsTo().filter(said -> !said.startsWith(current)).isEmpty()) {
            return;
        }
        try {
            Rewrapping.Done done = new Rewrapping(store, master).all(current);
            mark(current);
            LOG.infof("%d clients' keys were wrapped by the new master key; %d could not be opened", done.wrapped(),
                done.unreadable());
        } catch (SQLException e) {
            LOG.errorf("clients' keys could not all be wrapped by the new master key: %s", e.getSQLState());
        }
    }

    private Optional<String> belongsTo() {
        return QuarkusTransaction.requiringNew().call(() -> {
            try (Connection connection = store.getConnection(); PreparedStatement select =
                connection.prepareStatement("select said from mark where name = 'keys'");
                ResultSet row = select.executeQuery()) {
                return row.next() ? Optional.of(row.getString(1)) : Optional.<String>empty();
            }
        });
    }

    /** From now on the store opens without the master key of before. */
    private void mark(String current) {
        QuarkusTransaction.requiringNew().run(() -> {
            try (Connection connection = store.getConnection(); PreparedStatement update =
                connection.prepareStatement("update mark set said = ? where name = 'keys' and said = ?")) {
                String before = belongsTo().orElseThrow();
                update.setString(1, current + before.substring(FINGERPRINT));
                update.setString(2, before);
                if (update.executeUpdate() == 1) {
                    happened.fire(new AuditEvent("server", "new master key in use", ""));
                }
            } catch (SQLException e) {
                throw new IllegalStateException("the store could not be marked", e);
            }
        });
    }
}
