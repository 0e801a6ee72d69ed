package foretress.ledger;

import java.sql.Connection;
import java.sql.SQLException;

/** The chain of a store that no server has open. */
public final class StoredChain {
    private StoredChain() {}

    /** Reads the whole chain. */
    public static Ledger.Checked check(Connection connection) throws SQLException {
        return new Chain().check(connection);
    }
}
