package foretress.ledger;

import jakarta.inject.Singleton;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/** The stored chain. One writer at a time: the head row is locked until the transaction around it ends. */
@Singleton
class Chain {
    void append(Connection connection, Instant at, String actor, String what, String subject) throws SQLException {
        long number;
        String previous;
        try (var head = connection.prepareStatement("select number, sha256 from ledger_head where id = 1 for update");
             var row = head.executeQuery()) {
            row.next();
            number = row.getLong(1) + 1;
            previous = row.getString(2);
        }
        var entry = new Entry(number, at, actor, what, subject, previous);
        write(connection, entry);
        moveHead(connection, entry);
    }

    private static void write(Connection connection, Entry entry) throws SQLException {
        try (var insert = connection.prepareStatement("""
                insert into ledger_entry (number, noted_at, actor, what, subject, previous_sha256, sha256)
                values (?, ?, ?, ?, ?, ?, ?)""")) {
            insert.setLong(1, entry.number());
            insert.setObject(2, OffsetDateTime.ofInstant(entry.at(), ZoneOffset.UTC));
            insert.setString(3, entry.actor());
            insert.setString(4, entry.what());
            insert.setString(5, entry.subject());
            insert.setString(6, entry.previous());
            insert.setString(7, entry.sha256());
            insert.executeUpdate();
        }
    }

    private static void moveHead(Connection connection, Entry entry) throws SQLException {
        try (var update = connection.prepareStatement("update ledger_head set number = ?, sha256 = ? where id = 1")) {
            update.setLong(1, entry.number());
            update.setString(2, entry.sha256());
            update.executeUpdate();
        }
    }

    /** The number of the first entry that is not as it was written, or is missing; the number after the last when the tail was cut. */
    Optional<Long> firstBroken(Connection connection) throws SQLException {
        long expected = 1;
        var previous = Entry.NOTHING_BEFORE;
        try (var select = connection.prepareStatement("""
                select number, noted_at, actor, what, subject, previous_sha256, sha256 from ledger_entry order by number""");
             var rows = select.executeQuery()) {
            while (rows.next()) {
                var entry = new Entry(rows.getLong(1), rows.getObject(2, OffsetDateTime.class).toInstant(), rows.getString(3),
                    rows.getString(4), rows.getString(5), rows.getString(6));
                if (entry.number() != expected || !entry.previous().equals(previous) || !entry.sha256().equals(rows.getString(7)))
                    return Optional.of(expected);
                previous = entry.sha256();
                expected++;
            }
        }
        return headIs(connection, expected - 1, previous) ? Optional.empty() : Optional.of(expected);
    }

    private static boolean headIs(Connection connection, long number, String sha256) throws SQLException {
        try (var select = connection.prepareStatement("select number, sha256 from ledger_head where id = 1");
             var row = select.executeQuery()) {
            return row.next() && row.getLong(1) == number && row.getString(2).equals(sha256);
        }
    }
}
