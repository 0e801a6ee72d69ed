package foretress.salon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Fuzz;
import foretress.Listening;
import foretress.Walker;
import foretress.intake.Knocking;
import foretress.visit.VisitMaker;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every route of the table, which another test holds against the code. {@code -Dfuzz=100000} for a longer look, {@code -Dfuzz.seed=…} for another. */
@QuarkusTest
@DisplayName("R66: whatever is sent, the answer is never that the fault is ours")
class FuzzTest {
    private static final int REQUESTS = Integer.getInteger("fuzz", 2_000);
    private static final long SEED = Long.getLong("fuzz.seed", 20261129);
    private static final Pattern ERRORS = Pattern.compile("(?m)^(ERROR|WARN|FATAL) .*$");

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @TestHTTPResource("/") URI base;
    private UUID visit;

    @BeforeEach
    void somebodyIsThere() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
    }

    private Fuzz fuzz(Random random) {
        Walker owner = salon.as("edda").open("/password");
        Walker client = knocking.come(visit, Map.of()).walker();
        return new Fuzz(base.getPort(), random,
            List.of(sender(owner), sender(salon.as("petra").open("/password")), sender(client),
                new Fuzz.Sender(Map.of(), "")),
            List.of(visit.toString(), knocking.link(visit).replaceAll(".*/", "")));
    }

    private static Fuzz.Sender sender(Walker walker) {
        return new Fuzz.Sender(Map.copyOf(walker.cookies()), walker.page().selectFirst("[name=csrf-token]").val());
    }

    @Test
    void overEveryRoute() throws Exception {
        var random = new Random(SEED);
        Fuzz fuzz = fuzz(random);
        List<String> routes = Rights.table().stream().map(Right::route).toList();
        var faults = new ArrayList<String>();
        try (var listening = new Listening()) {
            for (int i = 0; i < REQUESTS; i++) {
                byte[] request = fuzz.request(routes.get(i % routes.size()));
                int status = fuzz.send(request);
                if (status >= 500) {
                    faults.add(status + " for " + Fuzz.shown(request));
                }
            }
            assertThat(faults).as("of %d requests, seed %d", REQUESTS, SEED).isEmpty();
            assertThat(ERRORS.matcher(listening.everything()).results().map(m -> m.group()).distinct().toList())
                .isEmpty();
        }
    }

    /** What once was answered with a stack trace. */
    @ParameterizedTest
    @ValueSource(strings = {
        "application/x-www-form-urlencoded; charset=klingon|a=b", "application/x-www-form-urlencoded; charset=|a=b",
        "application/x-www-form-urlencoded|%ZZ=%",
        "application/x-www-form-urlencoded|submission=SIXTYFIVE&csrf-token=GOOD",
        "application/x-www-form-urlencoded|csrf-token=%00%ff not base64 ~", "application/x-www-form-urlencoded|MANY",
        "multipart/form-data|a=b", "multipart/form-data; boundary=|a=b",
        "multipart/form-data; boundary=x; charset=klingon|--x\r\n",
        "multipart/form-data; boundary=x|--x\r\nContent-Disposition: form-data; name=\"a\"\r\n\r\ncut sho",
        "multipart/form-data; boundary=x|--x\r\nContent-Disposition: form-data\r\n\r\nb\r\n--x--\r\n",
        "multipart/form-data; boundary=x|--x\r\nContent-Disposition: form-data; name=\"a\"\r\nContent-Type: text/plain; charset=klingon\r\n\r\nb\r\n--x--\r\n",
        "multipart/form-data; boundary=x|--x\r\nno colon here\r\n\r\nb\r\n--x--\r\n",
        "multipart/form-data; boundary=x|", "/|a=b", "text|a=b" })
    void knownOnesAreTheSendersFaultInOneLine(String sent) throws Exception {
        Fuzz fuzz = fuzz(new Random(SEED));
        String[] parts = sent.split("\\|", 2);
        String body = parts[1].replace("SIXTYFIVE", "x".repeat(65)).replace("GOOD", fuzz.senders().get(1).token())
            .replace("MANY", "a=b&".repeat(2000));
        for (String path : List.of("/desk/new-visit", "/sign-in",
            "/visits/" + visit + "/bench/tests/" + visit + "/photo")) {
            try (var listening = new Listening()) {
                int status = fuzz.send(fuzz.plain("POST", path, parts[0], body, fuzz.senders().get(1)));
                assertThat(status).as(path).isBetween(400, 499);
                assertThat(ERRORS.matcher(listening.everything()).results().map(m -> m.group()).toList()).as(path)
                    .isEmpty();
                assertThat(listening.everything()).as(path).doesNotContain("\tat ");
            }
        }
    }
}
