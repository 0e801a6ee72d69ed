package foretress.vault;

import jakarta.inject.Singleton;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Collection;
import java.util.Base64;
import java.util.UUID;
import java.util.regex.Pattern;

/**
 * Seals what a client said and what was made of it: AES-256-GCM with the client's own key, bound to its place in the store,
 * so that a sealed text copied to another row, column or client does not open.
 */
@Singleton
public class Vault {
    private static final Pattern PLACE = Pattern.compile("[a-z_]+\\.[a-z_0-9]+\\.\\S+");

    private final ClientKeys keys;

    Vault(ClientKeys keys) {
        this.keys = keys;
    }

    /** Reads these clients' keys at once, so that opening something of each asks the store no more in this transaction. */
    public void fetchKeys(Collection<UUID> clients) {
        if (!clients.isEmpty()) ClientKey.list("clientId in ?1", clients);
    }

    /**
     * @param place where the result will be stored: {@code table.column.id}
     * @return base64 text
     */
    public String seal(UUID clientId, String place, byte[] plain) {
        try {
            return Base64.getEncoder().encodeToString(keys.toSeal(clientId).encrypt(plain, bound(place)));
        } catch (GeneralSecurityException e) {
            throw new Unreadable(place, e);
        }
    }

    /** @throws Unreadable when it was altered, moved, or its key is gone */
    public byte[] open(UUID clientId, String place, String sealed) {
        try {
            var key = keys.toOpen(clientId).orElseThrow(() -> new GeneralSecurityException("no key for this client"));
            return key.decrypt(Base64.getDecoder().decode(sealed), bound(place));
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            throw new Unreadable(place, e);
        }
    }

    /** From now on nothing sealed for this client opens, here or in any later backup. */
    public void forget(UUID clientId) {
        ClientKey.deleteById(clientId);
    }

    private static byte[] bound(String place) {
        if (!PLACE.matcher(place).matches())
            throw new IllegalStateException("a place is table.column.id, not " + place);
        return place.getBytes(StandardCharsets.UTF_8);
    }
}
