package foretress.ledger;

import jakarta.inject.Singleton;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/** The stored chain. One writer at a time: the head row is locked until the transaction around it ends. */
@Singleton
class Chain {
    /** Rows fetched at a time, so that a chain of years is never held whole. */
    private static final int AT_ONCE = 1000;

    void append(Connection connection, Instant at, String actor, String what, String subject) throws SQLException {
        long number;
        String previous;
        try (
            PreparedStatement head =
                connection.prepareStatement("select number, sha256 from ledger_head where id = 1 for update");
            ResultSet row = head.executeQuery()) {
            row.next();
            number = row.getLong(1) + 1;
            previous = row.getString(2);
        }
        var entry = new AuditEntry(number, at, actor, what, subject, previous);
        write(connection, entry);
        moveHead(connection, entry);
    }

    private static void write(Connection connection, AuditEntry entry) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
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

    private static void moveHead(Connection connection, AuditEntry entry) throws SQLException {
        try (PreparedStatement update =
            connection.prepareStatement("update ledger_head set number = ?, sha256 = ? where id = 1")) {
            update.setLong(1, entry.number());
            update.setString(2, entry.sha256());
            update.executeUpdate();
        }
    }

    /**
     * Reads the whole chain, some rows at a time. Entries written meanwhile are none the worse: what stood at its end before the reading
     * must stand in it, and nothing beyond its end after the reading.
     */
    Ledger.Checked check(Connection connection) throws SQLException {
        Head before = head(connection);
        long expected = 1;
        String previous = AuditEntry.NOTHING_BEFORE;
        try (PreparedStatement select = connection.prepareStatement(
            """
                select number, noted_at, actor, what, subject, previous_sha256, sha256 from ledger_entry order by number""")) {
            select.setFetchSize(AT_ONCE);
            try (ResultSet rows = select.executeQuery()) {
                while (rows.next()) {
                    var entry = new AuditEntry(rows.getLong(1), rows.getObject(2, OffsetDateTime.class).toInstant(),
                        rows.getString(3),
                        rows.getString(4), rows.getString(5), rows.getString(6));
                    boolean asWritten = entry.number() == expected && entry.previous().equals(previous)
                        && entry.sha256().equals(rows.getString(7));
                    if (!asWritten || before.contradicts(entry)) {
                        return new Ledger.Checked(expected - 1, Optional.of(expected));
                    }
                    previous = entry.sha256();
                    expected++;
                }
            }
        }
        return ended(before, expected - 1, head(connection));
    }

    /** @param last the last entry read, itself and all before it as they were written */
    private static Ledger.Checked ended(Head before, long last, Head after) {
        if (before.number() < 0 || last < before.number()) {
            return new Ledger.Checked(last, Optional.of(last + 1));
        }
        return last > after.number() ? new Ledger.Checked(after.number(), Optional.of(after.number() + 1))
            : new Ledger.Checked(last, Optional.empty());
    }

    /** Where the chain ends, as it is kept beside the entries; number -1 when that is missing. */
    private record Head(long number, String sha256) {
        boolean contradicts(AuditEntry entry) {
            return entry.number() == number && !entry.sha256().equals(sha256);
        }
    }

    private static Head head(Connection connection) throws SQLException {
        try (
            PreparedStatement select =
                connection.prepareStatement("select number, sha256 from ledger_head where id = 1");
            ResultSet row = select.executeQuery()) {
            return row.next() ? new Head(row.getLong(1), row.getString(2)) : new Head(-1, "");
        }
    }
}
