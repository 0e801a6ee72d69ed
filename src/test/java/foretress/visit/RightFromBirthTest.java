package foretress.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A client or a visit that could not be is refused where it is made. */
class RightFromBirthTest {
    private static final Instant NOW = Instant.parse("2026-06-06T09:00:00Z");
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final LocalDateTime WALL = LocalDateTime.parse("2026-06-11T14:00");
    private static final List<Booked> COLOUR = List.of(new Booked("colour-whole", List.of("colour")));

    private static Clients.Person person(String given, String family, String language) {
        return new Clients.Person(given, family, Optional.of(LocalDate.of(1965, 3, 4)), Optional.empty(),
            Optional.empty(), language);
    }

    private static Client ottilie() {
        return new Client(person("Ottilie", "Brandt", "en"), NOW);
    }

    private static Booking booking(UUID client) {
        return new Booking("form-1", client, WALL, LONDON, WALL.atZone(LONDON).toInstant(), UUID.randomUUID(), COLOUR);
    }

    @Test
    void aVisitIsWholeAndUnderItsClientsKeyFromTheStart() {
        Client ottilie = ottilie();
        var visit = new Visit(booking(ottilie.id), ottilie, NOW);
        assertThat(visit.state).isEqualTo(State.BOOKED);
        assertThat(visit.keyOf).isEqualTo(ottilie.id);
        assertThat(visit.startsThere().toLocalDateTime()).isEqualTo(WALL);
        assertThat(visit.services).extracting(one -> one.serviceId).containsExactly("colour-whole");
        assertThat(visit.signed()).isEmpty();
    }

    @Test
    void aVisitIsNobodysVisitNever() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Visit(booking(UUID.randomUUID()), null, NOW))
            .withMessageContaining("client");
    }

    @Test
    void aBookingOfSomebodyElseMakesNoVisit() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Visit(booking(UUID.randomUUID()), ottilie(), NOW))
            .withMessageContaining("not this client's");
    }

    @Test
    void aVisitHasAService() {
        assertThatIllegalArgumentException().isThrownBy(() -> Visit.foreseen(ottilie(), WALL, LONDON, NOW, List.of()))
            .withMessageContaining("service");
    }

    @Test
    void aClientHasANameAndReadsALanguage() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Client(person(" ", "", "en"), NOW))
            .withMessageContaining("name");
        assertThatIllegalArgumentException().isThrownBy(() -> new Client(person("Ottilie", "", ""), NOW))
            .withMessageContaining("language");
    }

    @Test
    void signingSetsBothMomentsAndUnsigningNeither() {
        Client ottilie = ottilie();
        var visit = new Visit(booking(ottilie.id), ottilie, NOW);
        visit.signed(NOW);
        assertThat(visit.answered()).contains(NOW).isEqualTo(visit.signed());
        visit.unsign();
        assertThat(visit.answered()).isEmpty();
        assertThat(visit.signed()).isEmpty();
    }
}
