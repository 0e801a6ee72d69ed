package foretress.visit;

import foretress.running.Stored;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;

/**
 * Everything needed to book: the form's own name, who, when (wall time and the instant it means), by whom, what.
 * Already checked: mistakes are told where the form is read.
 */
public record Booking(String submission, UUID clientId, LocalDateTime wallTime, ZoneId zone, Instant startsAt,
    UUID stylistId, List<Booked> services) {
    public Booking {
        Stored.needed(submission, clientId, wallTime, zone, startsAt, stylistId);
        services = List.copyOf(services);
        if (services.isEmpty()) {
            throw new IllegalArgumentException("A visit needs a service");
        }
    }
}
