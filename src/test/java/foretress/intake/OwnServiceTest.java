package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.salon.Menu;
import foretress.salon.OpenSalon;
import foretress.salon.Salon;
import foretress.visit.Booked;
import foretress.visit.Booking;
import foretress.visit.Client;
import foretress.visit.Clients;
import foretress.visit.Visits;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("A service the salon made itself is asked about, judged, signed and offered like any other")
class OwnServiceTest {
    @Inject OpenSalon salon;
    @Inject Menu menu;
    @Inject Clients clients;
    @Inject Visits visits;
    @Inject Knocking knocking;
    @Inject Clock clock;
    private String own;

    @BeforeEach
    void made() {
        salon.open();
        own = menu.add(List.of("tone", "cut"), Map.of("en", "Moss gloss " + UUID.randomUUID(), "es", "Brillo de musgo"),
            "edda");
    }

    @AfterEach
    void gone() {
        menu.turn(own, true, "edda");
    }

    private UUID booked(String language, Booked what) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Client client = clients
                .add(new Clients.Person("Ottilie", "Brandt", Optional.of(LocalDate.of(1965, 3, 4)), Optional.empty(),
                    Optional.of("01632 960 333"), language));
            LocalDateTime wall = LocalDate.ofInstant(clock.instant(), Salon.the().zoneId()).plusDays(6).atTime(11, 0);
            return visits.book(new Booking(UUID.randomUUID().toString(), client.id, wall, Salon.the().zoneId(),
                wall.atZone(Salon.the().zoneId()).toInstant(),
                salon.stylist().id, List.of(what))).id;
        });
    }

    @Test
    void itsTonerOwesASkinTestAndTheConsentNamesItAsTheSalonDoes() {
        UUID visit = booked("en", new Booked(own, List.of("tone", "cut")));
        Answering client = knocking.come(visit, Map.of()).agree().all().readBack();
        assertThat(client.walker().text()).contains("Moss gloss", "skin test");
        client.sign("Ottilie Brandt");
        Walker petra = salon.as("petra").open("/visits/" + visit).expect(200);
        assertThat(petra.page().selectFirst(".standing").text()).contains("Test first", "Moss gloss");
    }

    @Test
    void itIsAmongWhatCouldBeDoneInsteadUntilItIsTakenOffTheList() {
        UUID visit = booked("en", new Booked("colour-whole", List.of("colour")));
        knocking.come(visit, Map.of()).agree().all().readBack().sign("Ottilie Brandt");
        assertThat(salon.as("petra").open("/visits/" + visit).page().select("table tbody th").eachText())
            .anyMatch(name -> name.startsWith("Moss gloss"));
        menu.turn(own, true, "edda");
        assertThat(salon.as("petra").open("/visits/" + visit).page().select("table tbody th").eachText())
            .noneMatch(name -> name.startsWith("Moss gloss"));
    }

    @Test
    void aBookedOneKeepsItsNameAfterItWasTakenOffTheList() {
        UUID visit = booked("en", new Booked(own, List.of("tone", "cut")));
        menu.turn(own, true, "edda");
        assertThat(salon.as("sanna").open("/desk/visits/" + visit).text()).contains("Moss gloss");
    }
}
