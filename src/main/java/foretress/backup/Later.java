package foretress.backup;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/** What happened after a backup, where the old store can still be read: acts that the restored one does not know, for the owner to do again. */
public final class Later {
    private Later() {}

    /** @return one line an act, the oldest first; @throws IllegalStateException when the two are not the same salon */
    public static List<String> than(Connection restored, Connection old) throws SQLException {
        long known = number(restored);
        if (known > 0 && !hash(restored, known).equals(hash(old, known))) {
            throw new IllegalStateException(
                "that store's audit chain is another one: it is not where this backup came from");
        }
        List<String> lines = new ArrayList<>();
        try (PreparedStatement select = old.prepareStatement("""
                select e.noted_at, e.what, coalesce(s.name, e.actor) from ledger_entry e
                left join staff s on cast(s.id as varchar(64)) = e.actor where e.number > ? order by e.number""")) {
            select.setLong(1, known);
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    lines.add("%s  %s (%s)".formatted(row.getObject(1, OffsetDateTime.class).toInstant(),
                        row.getString(2), row.getString(3)));
                }
            }
        }
        return lines;
    }

    private static long number(Connection connection) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("select number from ledger_head where id = 1");
            ResultSet row = select.executeQuery()) {
            return row.next() ? row.getLong(1) : 0;
        }
    }

    private static String hash(Connection connection, long number) throws SQLException {
        try (
            PreparedStatement select =
                connection.prepareStatement("select sha256 from ledger_entry where number = ?")) {
            select.setLong(1, number);
            try (ResultSet row = select.executeQuery()) {
                return row.next() ? row.getString(1) : "";
            }
        }
    }
}
