package foretress.backup;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes all tables as they stood at one moment, while others go on writing; {@link BackupReading} reads it. Nothing is held whole. */
final class Snapshot {
    static final String MARK = "foretress store";
    static final int FORMAT = 1;
    /** H2's own level: every table as it was when the transaction began. */
    private static final int H2_SNAPSHOT = 6;
    /** Rows a database hands over at once; each may hold a photo. */
    private static final int AT_ONCE = 16;

    /** The bytes of one row, to be hashed before they go on. */
    private static final class Row extends ByteArrayOutputStream {
        byte[] bytes() {
            return buf;
        }
    }

    private Snapshot() {}

    /** Counts and hashes what the store holds, and keeps nothing. */
    static StoreCount count(Connection connection, long now) throws SQLException, IOException {
        return write(connection, now, OutputStream.nullOutputStream());
    }

    /** @param connection outside a transaction; left as it was */
    static StoreCount write(Connection connection, long now, OutputStream to) throws SQLException, IOException {
        boolean commits = connection.getAutoCommit();
        int isolation = connection.getTransactionIsolation();
        boolean h2 = connection.getMetaData().getDatabaseProductName().equals("H2");
        connection.setTransactionIsolation(h2 ? H2_SNAPSHOT : Connection.TRANSACTION_REPEATABLE_READ);
        connection.setAutoCommit(false);
        try {
            return all(connection, now, new DataOutputStream(to));
        } finally {
            connection.rollback();
            connection.setAutoCommit(commits);
            connection.setTransactionIsolation(isolation);
        }
    }

    private static StoreCount all(Connection connection, long now, DataOutputStream out)
        throws SQLException, IOException {
        String version = Schema.version(connection);
        out.writeUTF(MARK);
        out.writeInt(FORMAT);
        out.writeUTF(version);
        out.writeLong(now);
        Map<String, Sum.Of> tables = new TreeMap<>();
        for (Catalogue.Table table : Catalogue.tables(connection)) {
            out.writeBoolean(true);
            tables.put(table.name(), table(connection, table, out));
        }
        out.writeBoolean(false);
        out.writeInt(tables.size());
        out.flush();
        return new StoreCount(version, now, new TreeMap<>(tables));
    }

    private static Sum.Of table(Connection connection, Catalogue.Table table, DataOutputStream out)
        throws SQLException, IOException {
        out.writeUTF(table.name());
        out.writeInt(table.columns().size());
        for (Catalogue.Column column : table.columns()) {
            out.writeUTF(column.name());
            out.writeByte(column.cell().ordinal());
        }
        Sum.Of sum = rows(connection, table, out);
        out.writeBoolean(false);
        out.writeLong(sum.rows());
        out.writeUTF(sum.sum());
        return sum;
    }

    private static Sum.Of rows(Connection connection, Catalogue.Table table, DataOutputStream out)
        throws SQLException, IOException {
        var sum = new Sum();
        var row = new Row();
        String select = table.columns().stream().map(Catalogue.Column::name)
            .collect(Collectors.joining(", ", "select ", " from " + table.name()));
        try (PreparedStatement statement = connection.prepareStatement(select, ResultSet.TYPE_FORWARD_ONLY,
            ResultSet.CONCUR_READ_ONLY)) {
            statement.setFetchSize(AT_ONCE);
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    row.reset();
                    write(rows, table, new DataOutputStream(row));
                    sum.add(row.bytes(), row.size());
                    out.writeBoolean(true);
                    row.writeTo(out);
                }
            }
        }
        return sum.done();
    }

    private static void write(ResultSet rows, Catalogue.Table table, DataOutputStream out)
        throws SQLException, IOException {
        int at = 0;
        for (Catalogue.Column column : table.columns()) {
            column.cell().write(out, column.cell().get(rows, ++at));
        }
    }

    /** Forgets what is in the tables: what migrations put there is in the backup too. */
    static void empty(Connection connection, Iterable<Catalogue.Table> backwards) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            for (Catalogue.Table table : backwards) {
                statement.executeUpdate("delete from " + table.name());
            }
        }
    }
}
