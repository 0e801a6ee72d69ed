package foretress.ledger;

import jakarta.inject.Singleton;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

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
     *
     * @param slips kept outside the store, to hold the chain against
     */
    static TrailVerdict check(Connection connection, List<Slip> slips) throws SQLException {
        Head before = head(connection);
        var reading = new TrailReading(slips);
        long last = 0;
        for (List<KeptEntry> some = after(connection, 0); !some.isEmpty(); some = after(connection, last)) {
            for (KeptEntry one : some) {
                if (before.contradicts(one.entry())) {
                    return reading.verdict().brokenAt(one.entry().number());
                }
                if (!reading.read(one)) {
                    return reading.verdict();
                }
                last = one.entry().number();
            }
        }
        return ended(before, reading.verdict(), head(connection));
    }

    private static TrailVerdict ended(Head before, TrailVerdict read, Head after) {
        if (before.number() < 0 || read.whole() < before.number()) {
            return read.brokenAt(read.whole() + 1);
        }
        return read.whole() > after.number() ? read.brokenAt(after.number() + 1) : read;
    }

    /** The next entries after this number, in their order. */
    static List<KeptEntry> after(Connection connection, long number) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("select " + KeptEntry.COLUMNS
            + " from ledger_entry where number > ? order by number limit " + AT_ONCE)) {
            select.setLong(1, number);
            try (ResultSet rows = select.executeQuery()) {
                List<KeptEntry> some = new ArrayList<>();
                while (rows.next()) {
                    some.add(KeptEntry.of(rows));
                }
                return some;
            }
        }
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
