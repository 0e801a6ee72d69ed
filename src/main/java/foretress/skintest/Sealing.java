package foretress.skintest;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import foretress.vault.Vault;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.UUID;

/** Records of this room as sealed JSON, each bound to its place. */
@Singleton
class Sealing {
    private final Vault vault;
    private final ObjectMapper json;

    Sealing(Vault vault, ObjectMapper json) {
        this.vault = vault;
        this.json = json;
    }

    String seal(UUID clientId, String place, Object record) {
        try {
            return vault.seal(clientId, place, json.writeValueAsBytes(record));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private <T> T open(UUID clientId, String place, String sealed, Class<T> type) {
        try {
            return json.readValue(vault.open(clientId, place, sealed), type);
        } catch (IOException e) {
            throw new IllegalStateException("what is kept at " + place + " cannot be read", e);
        }
    }

    Made made(SkinTest test) {
        return open(test.clientId(), test.place(), test.body(), Made.class);
    }

    Look look(Entry entry) {
        return open(entry.clientId(), entry.place(), entry.body(), Look.class);
    }

    String words(UUID clientId, String place, String sealed) {
        return new String(vault.open(clientId, place, sealed), StandardCharsets.UTF_8);
    }

    String sealWords(UUID clientId, String place, String words) {
        return vault.seal(clientId, place, words.getBytes(StandardCharsets.UTF_8));
    }

    String sealBytes(UUID clientId, String place, byte[] bytes) {
        return vault.seal(clientId, place, bytes);
    }

    byte[] bytes(Photo photo) {
        return vault.open(photo.clientId(), photo.place(), photo.body());
    }
}
