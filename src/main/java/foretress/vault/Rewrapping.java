package foretress.vault;

import java.security.GeneralSecurityException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import javax.sql.DataSource;

/**
 * Wraps the clients' data keys anew with the current master key, each by a statement of its own, beside whatever else goes on: what is killed
 * on the way is gone on with later.
 */
final class Rewrapping {
    /** Rows held at once. */
    static final int SOME = 200;

    /** @param unreadable no key opens them: they were altered, and every use of them says so */
    record Done(int wrapped, int unreadable) {}

    private final DataSource store;
    private final MasterKey master;
    private int wrapped;
    private int unreadable;

    Rewrapping(DataSource store, MasterKey master) {
        this.store = store;
        this.master = master;
    }

    /** @param current fingerprint of the master key that wraps now */
    Done all(String current) throws SQLException {
        try (Connection connection = store.getConnection()) {
            UUID last = null;
            do {
                last = some(connection, last, current);
            } while (last != null);
        }
        return new Done(wrapped, unreadable);
    }

    private UUID some(Connection connection, UUID after, String current) throws SQLException {
        UUID last = null;
        for (Map.Entry<UUID, String> row : notYet(connection, after, current).entrySet()) {
            last = row.getKey();
            try {
                replace(connection, last, row.getValue(), master.wrappedAnew(last, row.getValue()));
                wrapped++;
            } catch (GeneralSecurityException | IllegalArgumentException altered) {
                unreadable++;
            }
        }
        return last;
    }

    private static Map<UUID, String> notYet(Connection connection, UUID after, String current) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("select client_id, wrapped from client_key where "
            + (after == null ? "" : "client_id > ? and ")
            + "(wrapped_by is null or wrapped_by <> ?) order by client_id limit " + SOME)) {
            int place = 1;
            if (after != null) {
                select.setObject(place++, after);
            }
            select.setString(place, current);
            Map<UUID, String> rows = new LinkedHashMap<>();
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    rows.put(row.getObject(1, UUID.class), row.getString(2));
                }
            }
            return rows;
        }
    }

    /** Not where it was forgotten, or wrapped meanwhile by another server. */
    private static void replace(Connection connection, UUID client, String before, MasterKey.Wrapped now)
        throws SQLException {
        try (PreparedStatement update = connection.prepareStatement(
            "update client_key set wrapped = ?, wrapped_by = ? where client_id = ? and wrapped = ?")) {
            update.setString(1, now.text());
            update.setString(2, now.by());
            update.setObject(3, client);
            update.setString(4, before);
            update.executeUpdate();
        }
    }
}
