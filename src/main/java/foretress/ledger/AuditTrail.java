package foretress.ledger;

import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.OutputStream;
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
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.sql.DataSource;

/** Reads the audit chain, some of it at a time, the newest first. */
@Singleton
public class AuditTrail {
    /** How many lines come at once. */
    public static final int PAGE = 50;
    private static final int AT_ONCE = 1000;

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
        Optional<Set<String>> acts, Optional<Instant> from, Optional<Instant> until) {
        /** Everything there is. */
        boolean all() {
            return Stream.of(subjects, actor, acts, from, until).allMatch(Optional::isEmpty);
        }

        boolean nothing() {
            return Stream.of(subjects, acts).anyMatch(some -> some.filter(Collection::isEmpty).isPresent());
        }
    }

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
        if (asked.nothing()) {
            return new Found(List.of(), false);
        }
        List<Object> values = new ArrayList<>();
        String sql = "select number, noted_at, actor, what, subject from ledger_entry" + where(asked, values)
            + " order by number desc limit " + (PAGE + 1) + " offset " + (long) page * PAGE;
        List<Line> lines = read(sql, values, AuditTrail::line);
        return new Found(List.copyOf(lines.subList(0, Math.min(PAGE, lines.size()))), lines.size() > PAGE);
    }

    /** Every line that is asked for, the oldest first; however many, only some are held at once. */
    public void each(Asked asked, Consumer<Line> to) {
        entries(asked, kept -> {
            AuditEntry e = kept.entry();
            to.accept(new Line(e.number(), e.at(), e.actor(), e.what(), e.subject()));
        });
    }

    /** What is asked for as JSON with its hashes, for {@link TrailProof}: the whole trail can be proved from it, a part cannot. */
    public void write(Asked asked, OutputStream out) throws IOException {
        TrailProof.write(out, asked.all(), to -> entries(asked, to));
    }

    private void entries(Asked asked, Consumer<KeptEntry> to) {
        long last = 0;
        for (List<KeptEntry> some = entries(asked, last); !some.isEmpty(); some = entries(asked, last)) {
            some.forEach(to);
            last = some.get(some.size() - 1).entry().number();
        }
    }

    private List<KeptEntry> entries(Asked asked, long after) {
        if (asked.nothing()) {
            return List.of();
        }
        List<Object> values = new ArrayList<>();
        String where = where(asked, values);
        values.add(after);
        return read("select " + KeptEntry.COLUMNS + " from ledger_entry" + where + (where.isEmpty() ? " where" : " and")
            + " number > ? order by number limit " + AT_ONCE, values, KeptEntry::of);
    }

    /**
     * What one person, link or program did to one record in a stretch of time.
     *
     * @param subject pseudonym of the record; blank for what touched none
     */
    public record Touched(String actor, String subject, long times, Instant first, Instant last) {}

    /** Which records were touched by whom, from the first moment up to but not at the second; one line a person and record. */
    public List<Touched> touched(Instant from, Instant until) {
        return read("""
            select actor, subject, count(*), min(noted_at), max(noted_at) from ledger_entry
            where noted_at >= ? and noted_at < ? group by actor, subject order by actor, 4, subject""",
            List.of(OffsetDateTime.ofInstant(from, ZoneOffset.UTC), OffsetDateTime.ofInstant(until, ZoneOffset.UTC)),
            row -> new Touched(row.getString(1), row.getString(2), row.getLong(3), moment(row, 4), moment(row, 5)));
    }

    private static Instant moment(ResultSet row, int column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
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
        return new TreeSet<>(read("select distinct what from ledger_entry", List.of(), row -> row.getString(1)));
    }

    private interface Row<T> {
        T read(ResultSet row) throws SQLException;
    }

    private <T> List<T> read(String sql, List<Object> values, Row<T> each) {
        try (Connection connection = store.getConnection();
            PreparedStatement select = connection.prepareStatement(sql)) {
            for (int i = 0; i < values.size(); i++) {
                select.setObject(i + 1, values.get(i));
            }
            List<T> all = new ArrayList<>();
            try (ResultSet rows = select.executeQuery()) {
                while (rows.next()) {
                    all.add(each.read(rows));
                }
            }
            return all;
        } catch (SQLException e) {
            throw new IllegalStateException("the audit chain could not be read", e);
        }
    }

    private static Line line(ResultSet row) throws SQLException {
        return new Line(row.getLong(1), row.getObject(2, OffsetDateTime.class).toInstant(), row.getString(3),
            row.getString(4), row.getString(5));
    }
}
