package foretress.bench;

import foretress.vault.SealedJson;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** What was measured, as JSON under the client's own key. */
@Singleton
public class BenchTestBodies {
    private final SealedJson json;

    BenchTestBodies(SealedJson json) {
        this.json = json;
    }

    UnaryOperator<String> sealing(UUID clientId, Object body) {
        return place -> json.seal(clientId, place, body);
    }

    <T> T open(BenchRecord test, Class<T> type) {
        return json.open(test.clientId(), test.place("body"), test.body(), type);
    }

    List<String> told(BenchRecord test) {
        return List.of(json.open(test.clientId(), test.place("told"), test.told(), String[].class));
    }

    Seen open(BenchTestSeen row) {
        return json.open(row.clientId(), row.place("body"), row.body(), Seen.class);
    }
}
