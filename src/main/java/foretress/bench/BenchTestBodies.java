package foretress.bench;

import foretress.vault.SealedJson;
import jakarta.inject.Singleton;
import java.util.List;

/** What was measured, as JSON under the client's own key. */
@Singleton
public class BenchTestBodies {
    private final SealedJson json;

    BenchTestBodies(SealedJson json) {
        this.json = json;
    }

    void keep(BenchRecord test, Object body) {
        test.measured(place -> json.seal(test.clientId(), place, body));
    }

    <T> T open(BenchRecord test, Class<T> type) {
        return json.open(test.clientId(), test.place("body"), test.body(), type);
    }

    void keepTold(BenchRecord test, List<String> treatments) {
        test.toldBy(place -> json.seal(test.clientId(), place, treatments));
    }

    List<String> told(BenchRecord test) {
        return List.of(json.open(test.clientId(), test.place("told"), test.told(), String[].class));
    }

    Seen open(BenchTestSeen row) {
        return json.open(row.clientId(), row.place("body"), row.body(), Seen.class);
    }
}
