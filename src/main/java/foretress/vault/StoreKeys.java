package foretress.vault;

import foretress.knowledge.Sha256;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.util.UUID;

/** Opens what is sealed in a store that no server has open. */
public final class StoreKeys {
    private final Connection connection;
    private final MasterKey master;

    /** @param masterKey as {@link MasterKeys#read} reads it */
    public StoreKeys(Connection connection, String masterKey) throws GeneralSecurityException {
        this.connection = connection;
        this.master = new MasterKey(masterKey, Clock.systemUTC());
    }

    /**
     * Whether the sealed bytes are the ones whose SHA-256 that code was made of.
     *
     * @param column {@code table.column} of the code
     * @throws GeneralSecurityException when there is no key, or it does not open them
     */
    public boolean isUnaltered(UUID clientId, String place, String sealed, String column, String code)
        throws GeneralSecurityException, SQLException {
        DataKey key = key(clientId);
        return key.code(column, Sha256.of(key.open(place, sealed)).getBytes(StandardCharsets.US_ASCII)).equals(code);
    }

    private DataKey key(UUID clientId) throws GeneralSecurityException, SQLException {
        try (PreparedStatement select =
            connection.prepareStatement("select wrapped from client_key where client_id = ?")) {
            select.setObject(1, clientId);
            try (ResultSet row = select.executeQuery()) {
                if (!row.next()) {
                    throw new GeneralSecurityException("no key for this client");
                }
                return master.unwrap(clientId, row.getString(1));
            }
        }
    }
}
