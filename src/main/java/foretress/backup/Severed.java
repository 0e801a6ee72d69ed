package foretress.backup;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collections;
import javax.sql.DataSource;

/**
 * What a restore closes. A backup does not know which links were taken back after it, so none of them may work again, and no mail that
 * may have left long ago is sent once more.
 */
public record Severed(int links, int sessions, int programs, int mails) {
    static final Severed NOTHING = new Severed(0, 0, 0, 0);

    static Severed all(DataSource store, Instant now) throws SQLException {
        OffsetDateTime at = now.atOffset(ZoneOffset.UTC);
        try (Connection connection = store.getConnection()) {
            connection.setAutoCommit(false);
            var severed = new Severed(
                run(connection, at, "update invitation set revoked_at = ? where revoked_at is null and expires_at > ?")
                    + run(connection, at, "update aftercare_link set expires_at = ? where expires_at > ?"),
                run(connection, at, "update door set closed_at = ? where closed_at is null")
                    + run(connection, at, "delete from staff_session")
                    + run(connection, at, "update door_code set expires_at = ? where expires_at > ?")
                    + run(connection, at, "delete from set_up_code"),
                run(connection, at,
                    "update program_token set revoked_at = ? where revoked_at is null and expires_at > ?"),
                run(connection, at,
                    "update outbox set given_up_at = ?, body = null where sent_at is null and given_up_at is null"));
            Marks.put(connection, "restored", now.toString());
            connection.commit();
            return severed;
        }
    }

    /** Each question mark stands for the moment. */
    private static int run(Connection connection, OffsetDateTime at, String sql) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            int marks = Collections.frequency(sql.chars().boxed().toList(), (int) '?');
            for (int i = 1; i <= marks; i++) {
                statement.setObject(i, at);
            }
            return statement.executeUpdate();
        }
    }
}
