package foretress.backup;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;

/** What a store says of itself: its kind, which keys it belongs to, whether it was restored. */
public final class Marks {
    private Marks() {}

    public static Optional<String> get(Connection connection, String name) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("select said from mark where name = ?")) {
            select.setString(1, name);
            try (ResultSet row = select.executeQuery()) {
                return row.next() ? Optional.of(row.getString(1)) : Optional.empty();
            }
        }
    }

    static void put(Connection connection, String name, String said) throws SQLException {
        take(connection, name);
        try (PreparedStatement insert = connection.prepareStatement("insert into mark (name, said) values (?, ?)")) {
            insert.setString(1, name);
            insert.setString(2, said);
            insert.executeUpdate();
        }
    }

    static void take(Connection connection, String name) throws SQLException {
        try (PreparedStatement delete = connection.prepareStatement("delete from mark where name = ?")) {
            delete.setString(1, name);
            delete.executeUpdate();
        }
    }
}
