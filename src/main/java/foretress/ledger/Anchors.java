package foretress.ledger;

import jakarta.inject.Singleton;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;

/**
 * The slips that were made of the chain, each of all entries since the one before. They are kept here so that they can be printed again;
 * they prove something only where a copy lies outside the store.
 */
@Singleton
public class Anchors {
    /** Another server has made the slip of this stretch in the same moment. */
    public static final class MadeElsewhere extends RuntimeException {
        private static final long serialVersionUID = 1;

        MadeElsewhere(SQLException e) {
            super(e);
        }
    }

    private static final String TAKEN = "23";
    private static final String SLIP =
        "select made_on, first_number, last_number, head_sha256, root_sha256 from ledger_anchor";

    private final DataSource store;
    private final Clock clock;

    Anchors(DataSource store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /**
     * Makes and keeps the slip of all entries since the last one, in the transaction around it.
     *
     * @param day today in the salon's zone
     * @return nothing when nothing was entered since
     * @throws MadeElsewhere when another server was quicker; the transaction is lost then
     * @throws IllegalStateException when the entries since do not hang together
     */
    public Optional<Slip> make(LocalDate day) {
        try (Connection connection = store.getConnection()) {
            Optional<Slip> before = last(connection);
            Optional<Slip> made = slip(connection, before, day);
            if (made.isPresent()) {
                keep(connection, made.get());
            }
            return made;
        } catch (SQLException e) {
            if (String.valueOf(e.getSQLState()).startsWith(TAKEN)) {
                throw new MadeElsewhere(e);
            }
            throw unreadable(e);
        }
    }

    private static Optional<Slip> slip(Connection connection, Optional<Slip> before, LocalDate day)
        throws SQLException {
        long first = before.map(Slip::last).orElse(0L) + 1;
        long last = first - 1;
        String head = before.map(Slip::head).orElse(AuditEntry.NOTHING_BEFORE);
        var tree = new Merkle();
        for (List<KeptEntry> some = Chain.after(connection, last); !some.isEmpty();
            some = Chain.after(connection, last)) {
            for (KeptEntry one : some) {
                if (!one.follows(last, head)) {
                    throw new IllegalStateException(
                        "entry %d of the audit chain is missing or not as it was written".formatted(last + 1));
                }
                tree.add(HexFormat.of().parseHex(one.sha256()));
                last = one.entry().number();
                head = one.sha256();
            }
        }
        return last < first ? Optional.empty() : Optional.of(new Slip(day, first, last, head, tree.root()));
    }

    private void keep(Connection connection, Slip slip) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into ledger_anchor (first_number, last_number, made_on, head_sha256, root_sha256, made_at)
                values (?, ?, ?, ?, ?, ?)""")) {
            insert.setLong(1, slip.first());
            insert.setLong(2, slip.last());
            insert.setObject(3, slip.day());
            insert.setString(4, slip.head());
            insert.setString(5, slip.root());
            insert.setObject(6, OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC));
            insert.executeUpdate();
        }
    }

    /** Whether one was made at this moment or later. */
    public boolean madeSince(Instant moment) {
        try (Connection connection = store.getConnection();
            PreparedStatement select =
                connection.prepareStatement("select count(*) from ledger_anchor where made_at >= ?")) {
            select.setObject(1, OffsetDateTime.ofInstant(moment, ZoneOffset.UTC));
            try (ResultSet row = select.executeQuery()) {
                row.next();
                return row.getLong(1) > 0;
            }
        } catch (SQLException e) {
            throw unreadable(e);
        }
    }

    /** The newest first. */
    public List<Slip> newest(int most) {
        try (Connection connection = store.getConnection()) {
            return some(connection, " order by last_number desc limit " + most);
        } catch (SQLException e) {
            throw unreadable(e);
        }
    }

    /** The one whose last entry has this number. */
    public Optional<Slip> ending(long last) {
        try (Connection connection = store.getConnection()) {
            return some(connection, " where last_number = " + last).stream().findFirst();
        } catch (SQLException e) {
            throw unreadable(e);
        }
    }

    /** All that lie in this store, in their order; none where it is older than slips. */
    static List<Slip> all(Connection connection) throws SQLException {
        return some(connection, " order by first_number");
    }

    private static Optional<Slip> last(Connection connection) throws SQLException {
        return some(connection, " order by last_number desc limit 1").stream().findFirst();
    }

    private static List<Slip> some(Connection connection, String which) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(SLIP + which);
            ResultSet row = select.executeQuery()) {
            List<Slip> slips = new ArrayList<>();
            while (row.next()) {
                slips.add(new Slip(row.getObject(1, LocalDate.class), row.getLong(2), row.getLong(3), row.getString(4),
                    row.getString(5)));
            }
            return slips;
        }
    }

    private static IllegalStateException unreadable(SQLException e) {
        return new IllegalStateException("the slips of the audit chain could not be read or written", e);
    }
}
