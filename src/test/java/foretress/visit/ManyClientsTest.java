package foretress.visit;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.salon.OpenSalon;
import foretress.salon.Salon;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.function.IntConsumer;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** Twenty thousand clients, found and opened; prints figures for docs/benchmarks.md and asserts what is found, never how fast. */
@QuarkusTest
@EnabledIfSystemProperty(named = "clients", matches = "[1-9]\\d*",
    disabledReason = "takes long: run it with -Dclients=20000")
@TestProfile(ManyClientsTest.OwnStore.class)
class ManyClientsTest {
    /** An encrypted file of its own, as a salon has it; memory would flatter. */
    public static class OwnStore implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of("quarkus.datasource.jdbc.url",
                "jdbc:h2:file:./target/many-clients/" + UUID.randomUUID()
                    + ";CIPHER=AES;WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE;LOCK_TIMEOUT=10000",
                "quarkus.datasource.password", "file-key user-key");
        }
    }

    private static final int CLIENTS = Integer.getInteger("clients", 20_000);
    private static final int ROUNDS = 100;
    private static final List<String> GIVEN = List.of("Amal", "Ines", "Ottilie", "Ruth", "Wanda", "Linh", "Marta",
        "Teodor", "Hana", "Bea", "Jon", "Pia", "Lucía", "Carmen");
    private static final List<String> SYLLABLES = List.of("bran", "dor", "fel", "gar", "hol", "kim", "lund", "mor",
        "nor", "pel", "quin", "ros", "sel", "tor", "var", "wis");

    @Inject OpenSalon salon;
    @Inject Clients clients;
    @Inject Visits visits;
    @Inject Clock clock;
    private final Random random = new Random(20261125);

    private String family() {
        return SYLLABLES.get(random.nextInt(16)) + SYLLABLES.get(random.nextInt(16))
            + SYLLABLES.get(random.nextInt(16));
    }

    private String phone(int number) {
        return "01632 9%05d".formatted(number % 100_000);
    }

    private void fill() {
        for (int from = 0; from < CLIENTS; from += 500) {
            int start = from;
            QuarkusTransaction.requiringNew().run(() -> {
                for (int i = start; i < start + 500; i++) {
                    String family = family();
                    clients.add(new Clients.Person(GIVEN.get(random.nextInt(GIVEN.size())), family,
                        Optional.of(LocalDate.of(1950 + i % 55, 1 + i % 12, 1 + i % 28)),
                        Optional.of(family + i + "@post.example"), Optional.of(phone(i)), "en"));
                }
            });
        }
    }

    private void measured(String what, IntConsumer act) {
        for (int i = 0; i < 20; i++) {
            act.accept(i);
        }
        long[] took = new long[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            long begun = System.nanoTime();
            act.accept(i);
            took[i] = System.nanoTime() - begun;
        }
        Arrays.sort(took);
        System.out.printf("| %s | %.2f | %.2f | %.2f |%n", what, took[ROUNDS / 2] / 1e6, took[ROUNDS * 95 / 100] / 1e6,
            took[ROUNDS * 99 / 100] / 1e6);
    }

    private int found(String query) {
        return QuarkusTransaction.requiringNew().call(() -> clients.search(query, 0).clients().size());
    }

    @Test
    @DisplayName("G11: twenty thousand clients are searched and their cards opened; the figures are printed")
    void manyClients() {
        salon.open();
        long begun = System.nanoTime();
        fill();
        System.out.printf("%d clients put on file in %.1f s%n| what | p50 ms | p95 ms | p99 ms |%n|---|---|---|---|%n",
            CLIENTS, (System.nanoTime() - begun) / 1e9);
        assertThat(QuarkusTransaction.requiringNew().call(clients::count)).isGreaterThanOrEqualTo(CLIENTS);
        assertThat(found(phone(CLIENTS / 2))).isOne();
        measured("family name, six letters", i -> found(SYLLABLES.get(i % 16) + SYLLABLES.get(i / 16 % 16)));
        measured("family name, three letters", i -> found(SYLLABLES.get(i % 16).substring(0, 3)));
        measured("one letter", i -> found(SYLLABLES.get(i % 16).substring(0, 1)));
        measured("given and family name", i -> found(GIVEN.get(i % 14) + " " + SYLLABLES.get(i % 16)));
        measured("whole telephone number", i -> found(phone(i * 61)));
        measured("last four digits", i -> found(phone(i * 61).substring(7)));
        measured("e-mail, to the letter", i -> found(SYLLABLES.get(i % 16) + "norvar" + i + "@post.example"));
        measured("nobody of that name", i -> found("zzz" + i));
        pages();
    }

    private void pages() {
        Walker petra = salon.as("petra");
        UUID client = QuarkusTransaction.requiringNew().call(() -> {
            UUID id = clients.search("brandor", 0).clients().get(0).id;
            ZoneId zone = Salon.the().zoneId();
            for (int i = 1; i <= 12; i++) {
                LocalDateTime wall = LocalDate.ofInstant(clock.instant(), zone).plusDays(i).atTime(14, 0);
                visits.book(new Booking(UUID.randomUUID().toString(), id, wall, zone, wall.atZone(zone).toInstant(),
                    salon.stylist().id,
                    List.of(new Booked("colour-whole", List.of("colour")))));
            }
            return id;
        });
        measured("search page over HTTP, three letters",
            i -> petra.open("/desk/clients?q=" + SYLLABLES.get(i % 16).substring(0, 3)).expect(200));
        measured("record card of 12 visits over HTTP", i -> petra.open("/clients/" + client + "/card").expect(200));
    }
}
