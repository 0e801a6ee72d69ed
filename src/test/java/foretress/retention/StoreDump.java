package foretress.retention;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import javax.sql.DataSource;

/** Everything that stands in the store, by table, a line a row. */
final class StoreDump {
    private StoreDump() {}

    static Map<String, Set<String>> of(DataSource store) throws SQLException {
        Map<String, Set<String>> dump = new TreeMap<>();
        try (Connection connection = store.getConnection()) {
            try (ResultSet tables = connection.getMetaData().getTables(connection.getCatalog(),
                connection.getSchema(), "%", new String[] { "TABLE", "BASE TABLE" })) {
                while (tables.next()) {
                    dump.put(tables.getString("TABLE_NAME").toLowerCase(Locale.ROOT), new TreeSet<>());
                }
            }
            for (Map.Entry<String, Set<String>> table : dump.entrySet()) {
                table.getValue().addAll(rows(connection, table.getKey(), "1 = 1", List.of()));
            }
        }
        return dump;
    }

    /** The rows of these people. */
    static Set<String> rows(DataSource store, String table, String condition, List<UUID> who) throws SQLException {
        try (Connection connection = store.getConnection()) {
            return rows(connection, table,
                condition.replace(":who", String.join(", ", Collections.nCopies(who.size(), "?"))), who);
        }
    }

    private static Set<String> rows(Connection connection, String table, String condition, List<UUID> who)
        throws SQLException {
        Set<String> found = new TreeSet<>();
        try (PreparedStatement select =
            connection
                .prepareStatement("select * from \"%s\" where %s".formatted(named(connection, table), condition))) {
            for (int i = 0; i < who.size(); i++) {
                select.setObject(i + 1, who.get(i));
            }
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    var line = new StringBuilder();
                    for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
                        line.append(row.getString(i)).append('\t');
                    }
                    found.add(line.toString());
                }
            }
        }
        return found;
    }

    private static String named(Connection connection, String table) throws SQLException {
        return connection.getMetaData().storesUpperCaseIdentifiers() && !table.equals("flyway_schema_history")
            ? table.toUpperCase(Locale.ROOT) : table;
    }
}
