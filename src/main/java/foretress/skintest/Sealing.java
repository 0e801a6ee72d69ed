package foretress.skintest;

import foretress.vault.SealedJson;
import foretress.vault.Vault;
import jakarta.inject.Singleton;
import java.nio.charset.StandardCharsets;
import java.util.UUID;

/** Records of this room as sealed JSON, each bound to its place. */
@Singleton
class Sealing {
    private final Vault vault;
    private final SealedJson json;

    Sealing(Vault vault, SealedJson json) {
        this.vault = vault;
        this.json = json;
    }

    String seal(UUID clientId, String place, Object record) {
        return json.seal(clientId, place, record);
    }

    TestMethod made(TestApplied test) {
        return json.open(test.clientId(), test.place("body"), test.body(), TestMethod.class);
    }

    SkinLook look(SkinTestEntry entry) {
        return json.open(entry.clientId(), entry.place("body"), entry.body(), SkinLook.class);
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
        return vault.open(photo.clientId(), photo.place("body"), photo.body());
    }
}
