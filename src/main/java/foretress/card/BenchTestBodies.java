package foretress.card;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import foretress.bench.Seen;
import foretress.vault.Vault;
import jakarta.inject.Singleton;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;

/** What was measured, as JSON under the client's own key. */
@Singleton
class BenchTestBodies {
    private final Vault vault;
    private final ObjectMapper json;

    BenchTestBodies(Vault vault, ObjectMapper json) {
        this.vault = vault;
        this.json = json;
    }

    void keep(BenchTest test, Object body) {
        test.body = seal(test.clientId, test.place("body"), body);
    }

    <T> T open(BenchTest test, Class<T> type) {
        return open(test.clientId, test.place("body"), test.body, type);
    }

    void keepTold(BenchTest test, List<String> treatments) {
        test.told = seal(test.clientId, test.place("told"), treatments);
    }

    List<String> told(BenchTest test) {
        return List.of(open(test.clientId, test.place("told"), test.told, String[].class));
    }

    void keep(BenchTestSeen row, Seen seen) {
        row.body = seal(row.clientId, row.place("body"), seen);
    }

    Seen open(BenchTestSeen row) {
        return open(row.clientId, row.place("body"), row.body, Seen.class);
    }

    String seal(UUID clientId, String place, Object body) {
        try {
            return vault.seal(clientId, place, json.writeValueAsString(body).getBytes(StandardCharsets.UTF_8));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a test has no JSON form", e);
        }
    }

    <T> T open(UUID clientId, String place, String sealed, Class<T> type) {
        try {
            return json.readValue(new String(vault.open(clientId, place, sealed), StandardCharsets.UTF_8), type);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("%s cannot be read".formatted(place), e);
        }
    }
}
