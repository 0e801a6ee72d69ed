package foretress.backup;

import foretress.vault.StoreKeys;
import java.security.GeneralSecurityException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** Opens signed papers spread over the whole store, to see that they are the very bytes that were signed. */
public final class Papers {
    private static final int MOST = 100;
    /** Without one it was erased, and nobody can open it. */
    private static final String WITH_KEY =
        " where exists (select 1 from client_key k where k.client_id = c.client_id)";

    /** @param altered papers that do not open, or are not the very bytes that were signed */
    public record Checked(int opened, List<UUID> altered) {}

    private Papers() {}

    /**
     * All of them that have a key, or a hundred spread evenly over the years.
     *
     * @throws GeneralSecurityException when this is no key at all
     */
    static Checked check(Connection connection, String masterKey) throws SQLException, GeneralSecurityException {
        var keys = new StoreKeys(connection, masterKey);
        List<UUID> altered = new ArrayList<>();
        int opened = 0;
        try (PreparedStatement select = connection.prepareStatement(
            "select id, client_id, pdf, pdf_code from (select c.*, row_number() over (order by signed_at, id) as place"
                + " from signed_consent c" + WITH_KEY + ") numbered where mod(place - 1, ?) = 0 order by place")) {
            select.setLong(1, Math.max(1, count(connection) / MOST));
            try (ResultSet row = select.executeQuery()) {
                while (opened < MOST && row.next()) {
                    opened++;
                    if (!isUnaltered(keys, row)) {
                        altered.add(row.getObject(1, UUID.class));
                    }
                }
            }
        }
        return new Checked(opened, altered);
    }

    private static boolean isUnaltered(StoreKeys keys, ResultSet row) throws SQLException {
        String place = "signed_consent.pdf." + row.getObject(1, UUID.class);
        try {
            return keys.isUnaltered(row.getObject(2, UUID.class), place, row.getString(3), "signed_consent.pdf_code",
                row.getString(4));
        } catch (GeneralSecurityException | IllegalArgumentException doesNotOpen) {
            return false;
        }
    }

    private static long count(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
            ResultSet row = statement.executeQuery("select count(*) from signed_consent c" + WITH_KEY)) {
            row.next();
            return row.getLong(1);
        }
    }
}
