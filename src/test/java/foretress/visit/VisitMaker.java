package foretress.visit;

import foretress.salon.OpenSalon;
import foretress.salon.Salon;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Makes visits for tests: Ottilie Brandt, permanent colour with Petra, in five days at 14:00. */
@Singleton
public class VisitMaker {
    private final Clients clients;
    private final Visits visits;
    private final OpenSalon salon;
    private final Tasks tasks;
    private final Clock clock;

    VisitMaker(Clients clients, Visits visits, OpenSalon salon, Tasks tasks, Clock clock) {
        this.clients = clients;
        this.visits = visits;
        this.salon = salon;
        this.tasks = tasks;
        this.clock = clock;
    }

    public UUID visit(LocalDate born) {
        return visit(Optional.of(born), Optional.of("ottilie@post.example"));
    }

    public UUID visitOfSomebodyWithoutBirthDate() {
        return visit(Optional.empty(), Optional.empty());
    }

    public UUID visit(Optional<LocalDate> born, Optional<String> email) {
        return QuarkusTransaction.requiringNew().call(() -> booked(
            clients.add(new Clients.Person("Ottilie", "Brandt", born, email, Optional.of("01632 960 333"), "en"))));
    }

    /** The same client comes again, in five days from now, for the same. */
    public UUID again(UUID visit) {
        return QuarkusTransaction.requiringNew().call(() -> booked(Visit.<Visit>findById(visit).client));
    }

    /** Of a client of its own, at 14:00 on that day. */
    public UUID on(LocalDate day) {
        return QuarkusTransaction.requiringNew().call(() -> booked(clients.add(new Clients.Person("Ottilie", "Brandt",
            Optional.of(LocalDate.of(1965, 3, 4)), Optional.empty(), Optional.of("01632 960 333"), "en")), day));
    }

    private UUID booked(Client client) {
        return booked(client, LocalDate.ofInstant(clock.instant(), Salon.the().zoneId()).plusDays(5));
    }

    private UUID booked(Client client, LocalDate day) {
        ZoneId zone = Salon.the().zoneId();
        LocalDateTime wall = day.atTime(LocalTime.of(14, 0));
        return visits
            .book(new Booking(UUID.randomUUID().toString(), client.id, wall, zone, wall.atZone(zone).toInstant(),
                salon.stylist().id, List.of(new Booked("colour-whole", List.of("colour"))))).id;
    }

    /** A day with a bit of everything on it, today, under the invented names of the demo salon. */
    public void busyDay() {
        UUID rezk = at("Amal", "Rezk", "colour-wash-out", 0, 9, 0, State.CLOSED, "");
        UUID abbot = at("Jon", "Abbot", "colour-whole", 0, 10, 15, State.SIGNED, "");
        UUID pellow = at("Ruth", "Pellow", "relaxer", 0, 15, 30, State.SIGNED, "");
        at("Wanda", "Kubik", "colour-whole", 0, 13, 0, State.INVITED, "");
        UUID brandt = at("Ottilie", "Brandt", "highlights", 0, 14, 0, State.SIGNED, "incompatibility-test");
        at("Linh", "Tran", "perm-alkaline", 0, 17, 0, State.ANSWERING, "");
        at("Marta", "Oyelaran", "colour-roots", 2, 14, 0, State.SIGNED, "skin-test");
        at("Teodor", "Wisk", "colour-demi", 5, 9, 30, State.BOOKED, "");
        QuarkusTransaction.requiringNew().run(() -> {
            Visit visit = Visit.findById(brandt);
            tasks.promise(Visit.findById(abbot), Task.Kind.SPEAK_AT_ONCE, Optional.of(salon.stylist().id),
                clock.instant().plusSeconds(4_680));
            Map.of(rezk, "nothing found", abbot, "restricts", brandt, "test first", pellow, "prevents")
                .forEach((id, standing) -> {
                    Visit signed = Visit.findById(id);
                    signed.signedAt = clock.instant().minusSeconds(300_000);
                    signed.stands(standing);
                });
            tasks.promise(visit, Task.Kind.CALL, Optional.of(salon.stylist().id), clock.instant().plusSeconds(70_000));
        });
    }

    private UUID at(String given, String family, String service, int days, int hour, int minute, State state,
        String owed) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Client client = clients.add(new Clients.Person(given, family, Optional.of(LocalDate.of(1984, 2, 17)),
                Optional.of(given.toLowerCase() + "@post.example"), Optional.of("01632 960 218"), "en"));
            ZoneId zone = Salon.the().zoneId();
            LocalDateTime wall = LocalDate.ofInstant(clock.instant(), zone).plusDays(days).atTime(hour, minute);
            Visit visit = visits
                .book(new Booking(UUID.randomUUID().toString(), client.id, wall, zone, wall.atZone(zone).toInstant(),
                    salon.stylist().id, List.of(new Booked(service, List.of("colour")))));
            visit.state = state;
            if (!owed.isEmpty()) {
                visit.owes(Optional.of(new Visit.Owed(owed, Optional.of(visit.startsAt.minusSeconds(48 * 3600)))));
            }
            return visit.id;
        });
    }

    /** Takes the visit straight to a state, as if the steps before had been gone. */
    public void is(UUID visit, State state) {
        QuarkusTransaction.requiringNew().run(() -> Visit.<Visit>findById(visit).state = state);
    }
}
