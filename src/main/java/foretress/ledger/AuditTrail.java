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
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.sql.DataSource;

/** Reads the audit chain, some of it at a time, the newest first. */
@Singleton
public class AuditTrail {
    /** How many lines come at once. */
    public static final int PAGE = 50;

    /**
     * What is looked for.
     *
     * @param subjects records, by their pseudonyms; empty for every record
     * @param actor a staff id, "client", "nobody" or "server"
     * @param acts what was done, word for word, one of them; empty for everything
     * @param from the first moment
     * @param until the first moment that is too late
     */
    public record Asked(Optional<Set<String>> subjects, Optional<String> actor,
        Optional<Set<String>> acts, Optional<Instant> from, Optional<Instant> until) {}

    /** @param subject pseudonym of the record it was done to; blank for none */
    public record Line(long number, Instant at, String actor, String what, String subject) {}

    /** @param more whether there are earlier ones */
    public record Found(List<Line> lines, boolean more) {}

    private final DataSource store;
    private final Pseudonyms pseudonyms;

    AuditTrail(DataSource store, Pseudonyms pseudonyms) {
        this.store = store;
        this.pseudonyms = pseudonyms;
    }

    /** The name under which the chain knows the record with this id. */
    public String pseudonym(String id) {
        return pseudonyms.of(id);
    }

    /** @param page counted from 0 */
    public Found find(Asked asked, int page) {
        if (Stream.of(asked.subjects(), asked.acts()).anyMatch(some -> some.filter(Collection::isEmpty).isPresent())) {
            return new Found(List.of(), false);
        }
        List<Object> values = new ArrayList<>();
        String sql = "select number, noted_at, actor, what, subject from ledger_entry" + where(asked, values)
            + " order by number desc limit " + (PAGE + 1) + " offset " + (long) page * PAGE;
        List<Line> lines = read(sql, values);
        return new Found(List.copyOf(lines.subList(0, Math.min(PAGE, lines.size()))), lines.size() > PAGE);
    }

    private static String where(Asked asked, List<Object> values) {
        List<String> all = new ArrayList<>();
        asked.subjects().ifPresent(subjects -> in(all, values, "subject", subjects));
        asked.actor().ifPresent(actor -> add(all, values, "actor = ?", actor));
        asked.acts().ifPresent(acts -> in(all, values, "what", acts));
        asked.from()
            .ifPresent(from -> add(all, values, "noted_at >= ?", OffsetDateTime.ofInstant(from, ZoneOffset.UTC)));
        asked.until()
            .ifPresent(until -> add(all, values, "noted_at < ?", OffsetDateTime.ofInstant(until, ZoneOffset.UTC)));
        return all.isEmpty() ? "" : " where " + String.join(" and ", all);
    }

    private static void in(List<String> all, List<Object> values, String column, Set<String> some) {
        all.add(column + " in (" + String.join(", ", Collections.nCopies(some.size(), "?")) + ")");
        values.addAll(new TreeSet<>(some));
    }

    private static void add(List<String> all, List<Object> values, String condition, Object value) {
        all.add(condition);
        values.add(value);
    }

    /** Everything that was ever done here, each once. */
    public Set<String> acts() {
        try (Connection connection = store.getConnection();
            PreparedStatement select = connection.prepareStatement("select distinct what from ledger_entry");
            ResultSet rows = select.executeQuery()) {
            Set<String> acts = new TreeSet<>();
            while (rows.next()) {
                acts.add(rows.getString(1));
            }
            return acts;
        } catch (SQLException e) {
            throw new IllegalStateException("the audit chain could not be read", e);
        }
    }

    private List<Line> read(String sql, List<Object> values) {
        try (Connection connection = store.getConnection();
            PreparedStatement select = connection.prepareStatement(sql)) {
            for (int i = 0; i < values.size(); i++) {
                select.setObject(i + 1, values.get(i));
            }
            List<Line> lines = new ArrayList<>();
            try (ResultSet rows = select.executeQuery()) {
                while (rows.next()) {
                    lines.add(line(rows));
                }
            }
            return lines;
        } catch (SQLException e) {
            throw new IllegalStateException("the audit chain could not be read", e);
        }
    }

    private static Line line(ResultSet row) throws SQLException {
        return new Line(row.getLong(1), row.getObject(2, OffsetDateTime.class).toInstant(), row.getString(3),
            row.getString(4), row.getString(5));
    }
}
