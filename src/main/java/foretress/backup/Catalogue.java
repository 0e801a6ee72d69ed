package foretress.backup;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The tables as the database itself lists them, each after those it points at, so that a new table is in the next backup by itself. */
final class Catalogue {
    /** Made anew by whatever makes the tables. */
    private static final String HISTORY = "flyway_schema_history";

    record Column(String name, Cell cell) {}

    /**
     * @param key the first column of the primary key
     * @param inward columns that point at the same table
     */
    record Table(String name, List<Column> columns, String key, Set<String> inward) {}

    private final DatabaseMetaData data;
    private final String schema;

    private Catalogue(Connection connection) throws SQLException {
        this.data = connection.getMetaData();
        this.schema = connection.getSchema();
    }

    static boolean isEmpty(Connection connection) throws SQLException {
        return new Catalogue(connection).names().isEmpty();
    }

    static List<Table> tables(Connection connection) throws SQLException {
        var catalogue = new Catalogue(connection);
        Set<String> names = catalogue.names();
        names.removeIf(name -> lower(name).equals(HISTORY));
        Map<String, Table> tables = new TreeMap<>();
        Map<String, Set<String>> needs = new TreeMap<>();
        for (String name : names) {
            needs.put(lower(name), new TreeSet<>());
            tables.put(lower(name), catalogue.table(name, needs.get(lower(name))));
        }
        return inOrder(tables, needs);
    }

    private static List<Table> inOrder(Map<String, Table> tables, Map<String, Set<String>> needs) {
        Set<String> placed = new LinkedHashSet<>();
        while (placed.size() < tables.size()) {
            List<String> next = tables.keySet().stream()
                .filter(name -> !placed.contains(name) && placed.containsAll(needs.get(name))).toList();
            if (next.isEmpty()) {
                throw new IllegalStateException("tables point at each other in a circle: " + needs);
            }
            placed.addAll(next);
        }
        return placed.stream().map(tables::get).toList();
    }

    private Set<String> names() throws SQLException {
        Set<String> names = new TreeSet<>();
        try (ResultSet rows = data.getTables(null, schema, "%", new String[] { "TABLE", "BASE TABLE" })) {
            while (rows.next()) {
                names.add(rows.getString("TABLE_NAME"));
            }
        }
        return names;
    }

    private Table table(String name, Set<String> needs) throws SQLException {
        Set<String> inward = new TreeSet<>();
        try (ResultSet rows = data.getImportedKeys(null, schema, name)) {
            while (rows.next()) {
                if (rows.getString("PKTABLE_NAME").equals(name)) {
                    inward.add(lower(rows.getString("FKCOLUMN_NAME")));
                } else {
                    needs.add(lower(rows.getString("PKTABLE_NAME")));
                }
            }
        }
        return new Table(lower(name), columns(name), key(name), inward);
    }

    private List<Column> columns(String table) throws SQLException {
        Map<String, Column> columns = new TreeMap<>(); // by name: two databases may have added them in another order
        try (ResultSet rows = data.getColumns(null, schema, table, "%")) {
            while (rows.next()) {
                String type = rows.getString("TYPE_NAME");
                String name = lower(rows.getString("COLUMN_NAME"));
                columns.put(name, new Column(name, Cell.of(type).orElseThrow(
                    () -> new IllegalStateException("%s.%s is of type %s, which no backup knows: add it to Cell"
                        .formatted(lower(table), name, type)))));
            }
        }
        return new ArrayList<>(columns.values());
    }

    private String key(String table) throws SQLException {
        try (ResultSet rows = data.getPrimaryKeys(null, schema, table)) {
            return rows.next() ? lower(rows.getString("COLUMN_NAME")) : "";
        }
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
