package foretress.backup;

import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Fills an empty store: first its tables, as they were at that version, then their rows, in one transaction. */
final class Loading implements BackupReading.To {
    /** A row that points into its own table: told once all rows are there. */
    private record Later(String sql, Object value, Object key) {}

    private final Connection connection;
    private final Schema schema;
    private Map<String, Catalogue.Table> known = Map.of();
    private final List<Later> later = new ArrayList<>();
    private Catalogue.Table table;
    private List<Catalogue.Column> columns = List.of();
    private PreparedStatement insert;
    private final Batch waiting = new Batch();

    /** @param connection in a transaction, which the caller commits once all is checked */
    Loading(Connection connection, Schema schema) {
        this.connection = connection;
        this.schema = schema;
    }

    @Override
    public void version(String version) throws SQLException {
        schema.make(version);
        List<Catalogue.Table> tables = new ArrayList<>(Catalogue.tables(connection));
        known = tables.stream().collect(Collectors.toMap(Catalogue.Table::name, Function.identity()));
        Collections.reverse(tables);
        Snapshot.empty(connection, tables);
    }

    @Override
    public void table(String name, List<Catalogue.Column> given) throws SQLException, IOException {
        table = known.get(name);
        if (table == null || !table.columns().equals(given)) {
            throw new IOException("table %s is another one in this program".formatted(name));
        }
        columns = given;
        insert = connection.prepareStatement("insert into %s (%s) values (%s)".formatted(name,
            given.stream().map(Catalogue.Column::name).collect(Collectors.joining(", ")),
            String.join(", ", Collections.nCopies(given.size(), "?"))));
    }

    @Override
    public void row(Object[] values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            boolean inward = values[i] != null && table.inward().contains(columns.get(i).name());
            if (inward) {
                later.add(new Later("update %s set %s = ? where %s = ?".formatted(table.name(), columns.get(i).name(),
                    table.key()), values[i], values[keyAt()]));
            }
            set(i + 1, columns.get(i).cell(), inward ? null : values[i]);
        }
        insert.addBatch();
        if (waiting.isFullWith(values)) {
            flush();
        }
    }

    private int keyAt() {
        return columns.stream().map(Catalogue.Column::name).toList().indexOf(table.key());
    }

    private void set(int at, Cell cell, Object value) throws SQLException {
        if (value != null) {
            insert.setObject(at, value);
            return;
        }
        insert.setNull(at, switch (cell) {
            case UUID -> Types.OTHER;
            case TEXT -> Types.VARCHAR;
            case NUMBER -> Types.BIGINT;
            case TRUTH -> Types.BOOLEAN;
            case MOMENT -> Types.TIMESTAMP_WITH_TIMEZONE;
            case DAY -> Types.DATE;
            case LOCAL -> Types.TIMESTAMP;
            case BYTES -> Types.VARBINARY;
        });
    }

    private void flush() throws SQLException {
        insert.executeBatch();
        waiting.written();
    }

    @Override
    public void end() throws SQLException {
        flush();
        insert.close();
        for (Later one : later) {
            try (PreparedStatement update = connection.prepareStatement(one.sql())) {
                update.setObject(1, one.value());
                update.setObject(2, one.key());
                update.executeUpdate();
            }
        }
        later.clear();
    }
}
