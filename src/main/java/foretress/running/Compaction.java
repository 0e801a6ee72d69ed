package foretress.running;

import io.quarkus.scheduler.Scheduled;
import jakarta.inject.Singleton;
import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.h2.engine.Session;
import org.h2.engine.SessionLocal;
import org.h2.jdbc.JdbcConnection;
import org.h2.mvstore.MVStore;
import org.jboss.logging.Logger;

/**
 * Keeps the H2 file from growing while it is open. Every commit appends whole pages, and H2 tidies up behind them only where commits may
 * wait ({@code WRITE_DELAY}); ours never do, so it is told to. Nothing to do for a database in memory, or for PostgreSQL.
 */
@Singleton
class Compaction {
    private static final Logger LOG = Logger.getLogger(Compaction.class);
    /** Per cent of the file that must be in use, or old pages are gathered into new ones. */
    private static final int FILLED = 80;
    /** Most that one round writes anew: a commit that comes meanwhile waits for it, about a tenth of a second. */
    private static final int MOST_BYTES = 1 << 20;

    private final DataSource store;
    private final Clockwork clockwork;

    Compaction(DataSource store, Clockwork clockwork) {
        this.store = store;
        this.clockwork = clockwork;
    }

    @Scheduled(every = "15s", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void onTheDot() {
        clockwork.run(this::round);
    }

    private void round() {
        try (Connection connection = store.getConnection()) {
            if (connection.isWrapperFor(JdbcConnection.class)) {
                compact(connection.unwrap(JdbcConnection.class));
            }
        } catch (SQLException later) {
            LOG.debug("the file is not compacted in this round", later);
        }
    }

    static void compact(JdbcConnection connection) {
        Session session = connection.getSession();
        if (session instanceof SessionLocal here) {
            MVStore file = here.getDatabase().getStore().getMvStore();
            if (file.isPersistent()) {
                file.compact(FILLED, MOST_BYTES);
            }
        }
    }
}
