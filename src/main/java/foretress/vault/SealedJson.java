package foretress.vault;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.inject.Singleton;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** Records of our own as JSON, sealed under the client's own key. */
@Singleton
public class SealedJson {
    private final Vault vault;
    private final ObjectMapper json;

    SealedJson(Vault vault, ObjectMapper json) {
        this.vault = vault;
        this.json = json;
    }

    /** @param place the one column and row it is sealed for; it opens nowhere else */
    public String seal(UUID clientId, String place, Object body) {
        return vault.seal(clientId, place, bytes(place, body));
    }

    /** Seals this for whichever place a row gives. */
    public UnaryOperator<String> sealing(UUID clientId, Object body) {
        return place -> seal(clientId, place, body);
    }

    /** The same for what is the longer the more was found. */
    public String sealPaper(UUID clientId, String place, Object body) {
        return vault.sealPaper(clientId, place, bytes(place, body));
    }

    private byte[] bytes(String place, Object body) {
        try {
            return json.writeValueAsBytes(body);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("%s has no JSON form".formatted(place), e);
        }
    }

    public <T> T open(SealedRow row, Class<T> type) {
        return open(row.clientId(), row.place("body"), row.body(), type);
    }

    public <T> T open(UUID clientId, String place, String sealed, Class<T> type) {
        try {
            return json.readValue(new String(vault.open(clientId, place, sealed), StandardCharsets.UTF_8), type);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("%s cannot be read".formatted(place), e);
        }
    }
}
