package foretress.retention;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A column whose rows point at those of a table.
 *
 * @param at the table they point at; all names in small letters
 */
record ForeignKey(String table, String column, String at) {
    /** Those of one table, as the store has them. */
    static List<ForeignKey> of(Connection connection, String table) throws SQLException {
        DatabaseMetaData store = connection.getMetaData();
        String named = store.storesUpperCaseIdentifiers() ? table.toUpperCase(Locale.ROOT) : table;
        List<ForeignKey> found = new ArrayList<>();
        try (ResultSet keys = store.getImportedKeys(connection.getCatalog(), connection.getSchema(), named)) {
            while (keys.next()) {
                found.add(new ForeignKey(table, keys.getString("FKCOLUMN_NAME").toLowerCase(Locale.ROOT),
                    keys.getString("PKTABLE_NAME").toLowerCase(Locale.ROOT)));
            }
        }
        return found;
    }

    boolean isWithin() {
        return table.equals(at);
    }
}
