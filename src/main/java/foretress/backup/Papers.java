package foretress.backup;

import foretress.vault.StoreKeys;
import java.io.IOException;
import java.security.GeneralSecurityException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;

/** Opens signed papers spread over the whole store, to see that they are the very bytes that were signed. */
final class Papers {
    private static final int MOST = 100;

    private Papers() {}

    /** @return how many were opened; all of them, or a hundred spread evenly over the years */
    static int check(Connection connection, String masterKey)
        throws SQLException, GeneralSecurityException, IOException {
        var keys = new StoreKeys(connection, masterKey);
        long step = Math.max(1, count(connection) / MOST);
        int opened = 0;
        try (PreparedStatement select = connection.prepareStatement(
            "select id, client_id, pdf, pdf_code from (select c.*, row_number() over (order by signed_at, id) as place"
                + " from signed_consent c) numbered where mod(place - 1, ?) = 0 order by place")) {
            select.setLong(1, step);
            try (ResultSet row = select.executeQuery()) {
                while (opened < MOST && row.next()) {
                    check(keys, row);
                    opened++;
                }
            }
        }
        return opened;
    }

    private static void check(StoreKeys keys, ResultSet row)
        throws SQLException, GeneralSecurityException, IOException {
        UUID id = row.getObject(1, UUID.class);
        if (!keys.isUnaltered(row.getObject(2, UUID.class), "signed_consent.pdf." + id, row.getString(3),
            "signed_consent.pdf_code", row.getString(4))) {
            throw new IOException("the signed paper %s is not what was signed".formatted(id));
        }
    }

    private static long count(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
            ResultSet row = statement.executeQuery("select count(*) from signed_consent")) {
            row.next();
            return row.getLong(1);
        }
    }
}
