package foretress.visit;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A visit as it is before anything of it is stored, for tests that need no store. */
public final class Unstored {
    private static final LocalDateTime WALL = LocalDateTime.parse("2026-06-11T14:00");
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    private Unstored() {}

    /** An invented client's, booked for a colour. */
    public static Visit visit(Instant bookedAt) {
        var client = new Client(new Clients.Person("Ottilie", "Brandt", Optional.empty(), Optional.empty(),
            Optional.empty(), "en"), bookedAt);
        var booking = new Booking("form-1", client.id, WALL, LONDON, WALL.atZone(LONDON).toInstant(),
            UUID.randomUUID(), List.of(new Booked("colour-whole", List.of("colour"))));
        return new Visit(booking, client, bookedAt);
    }
}
