package foretress.visit;

import foretress.salon.OpenSalon;
import foretress.salon.Salon;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Makes visits for tests: Ottilie Brandt, permanent colour with Petra, in five days at 14:00. */
@Singleton
public class VisitMaker {
    private final Clients clients;
    private final Visits visits;
    private final OpenSalon salon;
    private final Clock clock;

    VisitMaker(Clients clients, Visits visits, OpenSalon salon, Clock clock) {
        this.clients = clients;
        this.visits = visits;
        this.salon = salon;
        this.clock = clock;
    }

    public UUID visit(LocalDate born) {
        return visit(Optional.of(born), Optional.of("ottilie@post.example"));
    }

    public UUID visitOfSomebodyWithoutBirthDate() {
        return visit(Optional.empty(), Optional.empty());
    }

    public UUID visit(Optional<LocalDate> born, Optional<String> email) {
        return QuarkusTransaction.requiringNew().call(() -> {
            var client = clients.add(new Clients.Person("Ottilie", "Brandt", born, email, Optional.of("01632 960 333"), "en"));
            var zone = Salon.the().zoneId();
            var wall = LocalDate.ofInstant(clock.instant(), zone).plusDays(5).atTime(LocalTime.of(14, 0));
            return visits.book(new Booking(UUID.randomUUID().toString(), client.id, wall, zone, wall.atZone(zone).toInstant(),
                salon.stylist().id, List.of(new Booked("colour-whole", List.of("colour"))))).id;
        });
    }

    /** Takes the visit straight to a state, as if the steps before had been gone. */
    public void is(UUID visit, State state) {
        QuarkusTransaction.requiringNew().run(() -> Visit.<Visit>findById(visit).state = state);
    }
}
