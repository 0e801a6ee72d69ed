package foretress.vault;

import jakarta.inject.Singleton;
import jakarta.transaction.Status;
import jakarta.transaction.TransactionSynchronizationRegistry;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;

/**
 * Puts what was committed onto the device itself; {@link DurableActs} has it done before anybody is told that an act was taken.
 * H2 with WRITE_DELAY=0 survives a killed process but not a power cut; PostgreSQL is durable at each commit by its defaults.
 */
@Singleton
public class Durable {
    private final DataSource store;
    private final TransactionSynchronizationRegistry transactions;

    Durable(DataSource store, TransactionSynchronizationRegistry transactions) {
        this.store = store;
        this.transactions = transactions;
    }

    /** @throws IllegalStateException inside a transaction, where there is nothing to force yet */
    public void force() {
        if (transactions.getTransactionStatus() != Status.STATUS_NO_TRANSACTION) {
            throw new IllegalStateException("commit first: what is not committed cannot be forced to the device");
        }
        try (Connection connection = store.getConnection()) {
            if (connection.getMetaData().getDatabaseProductName().equals("H2")) {
                try (Statement statement = connection.createStatement()) {
                    statement.execute("CHECKPOINT SYNC");
                }
            }
        } catch (SQLException e) {
            throw new IllegalStateException("the store could not be forced to the device", e);
        }
    }
}
