package foretress.vault;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.util.Calendar;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.UUID;
import java.util.function.Supplier;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.migration.Context;
import org.flywaydb.core.api.migration.JavaMigration;

/**
 * The part of a migration that needs the clients' keys: hashes of answers become codes, what stood in clear is sealed, sealed texts are
 * filled up to a size class. Runs before the server answers, in one transaction: done whole or, after a kill, once more from the start.
 */
public class Coding implements JavaMigration {
    /** @param clientId how a row's client is found */
    private record Column(String table, String name, String clientId) {
        private static final String OWN = "client_id", VISITS = "(select v.key_of from visit v where v.id = visit_id)";

        static Column own(String table, String name) {
            return new Column(table, name, OWN);
        }

        static Column ofVisit(String table, String name) {
            return new Column(table, name, VISITS);
        }

        String where() {
            return table + "." + name;
        }
    }

    private static final List<Column> CODED =
        List.of(Column.ofVisit("topic_answers", "topic"), Column.ofVisit("topic_answers", "submission"),
            Column.ofVisit("read_back", "answers_code"), Column.ofVisit("assessment", "answers_code"),
            Column.ofVisit("signed_consent", "answers_code"),
            Column.own("signed_consent", "text_code"), Column.own("signed_consent", "pdf_code"));
    private static final List<Column> WORDS =
        List.of(Column.own("topic_answers", "asked"), Column.ofVisit("task", "kind"));
    private static final List<Column> BODIES =
        List.of(Column.own("topic_answers", "body"), Column.own("assessment", "body"),
            Column.own("signed_consent", "body"), Column.own("signed_consent", "evidence"),
            Column.own("signed_consent", "pdf"),
            Column.own("decision", "body"));

    private static final Set<String> PAPERS =
        Set.of("assessment.body", "signed_consent.body", "signed_consent.evidence");

    /** What becomes of a value. */
    private interface Change {
        String of(DataKey key, String id, String before) throws GeneralSecurityException;
    }

    private final Map<UUID, DataKey> keys = new HashMap<>();
    private final Supplier<String> masterKey;

    /** @param masterKey as {@link MasterKeys#read} reads it */
    public Coding(Supplier<String> masterKey) {
        this.masterKey = masterKey;
    }

    @Override
    public MigrationVersion getVersion() {
        return MigrationVersion.fromVersion("20261129.2241");
    }

    @Override
    public String getDescription() {
        return "codes in place of hashes";
    }

    @Override
    public Integer getChecksum() {
        return null;
    }

    @Override
    public boolean canExecuteInTransaction() {
        return true;
    }

    @Override
    public void migrate(Context context) throws Exception {
        Connection store = context.getConnection();
        var master = new MasterKey(masterKey.get(), Clock.systemUTC());
        tasksOpen(store, master);
        pages(store, master);
        told(store, master);
        for (Column column : CODED) {
            change(store, master, column, (key, id, before) -> code(key, column.where(), before));
        }
        for (Column column : WORDS) {
            change(store, master, column, (key, id, before) -> word(key, column.where() + "." + id, before));
        }
        for (Column column : BODIES) {
            change(store, master, column, (key, id, before) -> anew(key, column.where() + "." + id, before));
        }
    }

    private void change(Connection store, MasterKey master, Column column, Change change)
        throws SQLException, GeneralSecurityException {
        for (Map.Entry<UUID, UUID> row : rows(store, column).entrySet()) {
            DataKey key = key(store, master, row.getValue());
            String before = read(store, column, row.getKey());
            write(store, column.table(), column.name(), row.getKey(), change.of(key, row.getKey().toString(), before));
        }
    }

    private void tasksOpen(Connection store, MasterKey master) throws SQLException, GeneralSecurityException {
        change(store, master, Column.ofVisit("task", "open_as"),
            (key, id, before) -> code(key, "task.open_as", before));
    }

    /** The name is sealed before its place is taken by its code. */
    private void pages(Connection store, MasterKey master) throws SQLException, GeneralSecurityException {
        Column page = Column.ofVisit("page_shown", "page");
        for (Map.Entry<UUID, UUID> row : rows(store, page).entrySet()) {
            DataKey key = key(store, master, row.getValue());
            String name = read(store, page, row.getKey());
            write(store, "page_shown", "name", row.getKey(), word(key, "page_shown.name." + row.getKey(), name));
            write(store, "page_shown", "page", row.getKey(), code(key, "page_shown.page", name));
        }
    }

    private void told(Connection store, MasterKey master) throws SQLException, GeneralSecurityException {
        for (Map.Entry<UUID, UUID> row : rows(store, new Column("visit", "standing_code", "key_of")).entrySet()) {
            try (PreparedStatement query =
                store.prepareStatement("select standing_code, owed_what, owed_by from visit where id = ?")) {
                query.setObject(1, row.getKey());
                ResultSet visit = query.executeQuery();
                visit.next();
                write(store, "visit", "told", row.getKey(),
                    word(key(store, master, row.getValue()), "visit.told." + row.getKey(), told(visit)));
            }
        }
    }

    /** As {@code visit.Told} spells it. */
    private static String told(ResultSet visit) throws SQLException {
        Timestamp by = visit.getTimestamp(3, Calendar.getInstance(TimeZone.getTimeZone("UTC")));
        return visit.getString(1) + "\n" + (visit.getString(2) == null ? "" : visit.getString(2)) + "\n"
            + (by == null ? "" : by.toInstant());
    }

    private static String code(DataKey key, String column, String plain) throws GeneralSecurityException {
        return key.code(column, plain.getBytes(StandardCharsets.UTF_8));
    }

    private static String word(DataKey key, String place, String plain) throws GeneralSecurityException {
        return key.seal(place, plain.getBytes(StandardCharsets.UTF_8), SizeClass.WORD);
    }

    /** What does not open stays as it is: it is for those to tell who read it. */
    private static String anew(DataKey key, String place, String sealed) {
        try {
            return key.seal(place, key.open(place, sealed),
                PAPERS.contains(place.substring(0, place.lastIndexOf('.'))) ? SizeClass.PAPER : SizeClass.DOCUMENT);
        } catch (GeneralSecurityException | RuntimeException unreadable) {
            return sealed;
        }
    }

    private static Map<UUID, UUID> rows(Connection store, Column column) throws SQLException {
        var rows = new HashMap<UUID, UUID>();
        try (PreparedStatement query = store.prepareStatement(
            "select id, %s from %s where %s is not null".formatted(column.clientId(), column.table(), column.name()))) {
            ResultSet found = query.executeQuery();
            while (found.next()) {
                rows.put(found.getObject(1, UUID.class), found.getObject(2, UUID.class));
            }
        }
        return rows;
    }

    private static String read(Connection store, Column column, UUID id) throws SQLException {
        try (PreparedStatement query =
            store.prepareStatement("select %s from %s where id = ?".formatted(column.name(), column.table()))) {
            query.setObject(1, id);
            ResultSet found = query.executeQuery();
            found.next();
            return found.getString(1);
        }
    }

    private static void write(Connection store, String table, String column, UUID id, String value)
        throws SQLException {
        try (PreparedStatement update =
            store.prepareStatement("update %s set %s = ? where id = ?".formatted(table, column))) {
            update.setString(1, value);
            update.setObject(2, id);
            update.executeUpdate();
        }
    }

    private DataKey key(Connection store, MasterKey master, UUID clientId)
        throws SQLException, GeneralSecurityException {
        DataKey known = keys.get(clientId);
        if (known != null) {
            return known;
        }
        DataKey key = master.unwrap(clientId, wrapped(store, master, clientId));
        keys.put(clientId, key);
        return key;
    }

    /** A client without a key was forgotten or has never answered; a fresh one keeps what little stood in clear from being read. */
    private static String wrapped(Connection store, MasterKey master, UUID clientId)
        throws SQLException, GeneralSecurityException {
        try (PreparedStatement query = store.prepareStatement("select wrapped from client_key where client_id = ?")) {
            query.setObject(1, clientId);
            ResultSet found = query.executeQuery();
            return found.next() ? found.getString(1) : fresh(store, master, clientId);
        }
    }

    private static String fresh(Connection store, MasterKey master, UUID clientId)
        throws SQLException, GeneralSecurityException {
        String wrapped = master.newWrappedKey(clientId).text();
        try (PreparedStatement insert =
            store.prepareStatement("insert into client_key (client_id, wrapped, made_at) values (?, ?, ?)")) {
            insert.setObject(1, clientId);
            insert.setString(2, wrapped);
            insert.setTimestamp(3, Timestamp.from(Clock.systemUTC().instant()));
            insert.executeUpdate();
        }
        return wrapped;
    }
}
