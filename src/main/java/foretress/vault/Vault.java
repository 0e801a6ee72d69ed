package foretress.vault;

import foretress.running.Asked;
import jakarta.inject.Singleton;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Collection;
import java.util.UUID;
import java.util.function.UnaryOperator;

/**
 * Seals what a client said and what was made of it: AES-256-GCM with the client's own key, bound to its place in the store,
 * so that a sealed text copied to another row, column or client does not open. What must be found again or compared without being
 * opened has a code instead. Nothing about an answer may stand in the store but by one of the two.
 */
@Singleton
public class Vault {
    private final ClientKeys keys;

    Vault(ClientKeys keys) {
        this.keys = keys;
    }

    /** Reads these clients' keys at once, so that opening something of each asks the store no more in this transaction. */
    public void fetchKeys(Collection<UUID> clients) {
        keys.fetch(clients);
    }

    /**
     * @param place where the result will be stored: {@code table.column.id}
     * @return text, of one of a few lengths
     */
    public String seal(UUID clientId, String place, byte[] plain) {
        return seal(clientId, place, plain, SizeClass.DOCUMENT);
    }

    /** The same for a few ids or words, in less room: every one up to 240 bytes is as long as any other. */
    public String sealWord(UUID clientId, String place, String plain) {
        return seal(clientId, place, plain.getBytes(StandardCharsets.UTF_8), SizeClass.WORD);
    }

    /** The same for what is the longer the more was found, in more room. */
    public String sealPaper(UUID clientId, String place, byte[] plain) {
        return seal(clientId, place, plain, SizeClass.PAPER);
    }

    private String seal(UUID clientId, String place, byte[] plain, SizeClass least) {
        try {
            return keys.toSeal(clientId).seal(place, plain, least);
        } catch (GeneralSecurityException e) {
            throw new Unreadable(place, e);
        }
    }

    /** @throws Unreadable when it was altered, moved, or its key is gone */
    public byte[] open(UUID clientId, String place, String sealed) {
        try {
            return Asked.reckoned(new Opening(clientId, place, sealed), () -> opened(clientId, place, sealed)).clone();
        } catch (GeneralSecurityException | RuntimeException e) {
            throw e instanceof IllegalStateException mistake ? mistake : new Unreadable(place, e);
        }
    }

    /**
     * The same for one of a great many that are each looked at once: the request does not remember it.
     *
     * @throws Unreadable as {@link #open(UUID, String, String)}
     */
    public byte[] openOnce(UUID clientId, String place, String sealed) {
        try {
            return opened(clientId, place, sealed);
        } catch (GeneralSecurityException | RuntimeException e) {
            throw e instanceof IllegalStateException mistake ? mistake : new Unreadable(place, e);
        }
    }

    private record Opening(UUID clientId, String place, String sealed) {}

    /** What a request asks again it is given again. */
    byte[] opened(UUID clientId, String place, String sealed) throws GeneralSecurityException {
        return keys.toOpen(clientId).orElseThrow(() -> new GeneralSecurityException("no key for this client"))
            .open(place, sealed);
    }

    /** @throws Unreadable as {@link #open(UUID, String, String)} */
    public byte[] open(SealedRow row) {
        return open(row.clientId(), row.place("body"), row.body());
    }

    /** Seals this for whichever place a row gives. */
    public UnaryOperator<String> sealing(UUID clientId, byte[] plain) {
        return place -> seal(clientId, place, plain);
    }

    /** @throws Unreadable as {@link #open(UUID, String, String)} */
    public String openWord(UUID clientId, String place, String sealed) {
        return new String(open(clientId, place, sealed), StandardCharsets.UTF_8);
    }

    /**
     * A name for these words that is the same whenever they are, for this client and this column only. Without the client's key nobody
     * can try which words have it.
     *
     * @param column where it will be stored: {@code table.column}
     * @return 64 hexadecimal digits
     */
    public String code(UUID clientId, String column, String plain) {
        try {
            return keys.toSeal(clientId).code(column, plain.getBytes(StandardCharsets.UTF_8));
        } catch (GeneralSecurityException e) {
            throw new Unreadable(column, e);
        }
    }

    /** From now on nothing sealed for this client opens, here or in any later backup; one made before holds the key too. */
    public void forget(UUID clientId) {
        ClientKey.deleteById(clientId);
    }
}
