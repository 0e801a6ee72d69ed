package foretress.owner;

import foretress.ledger.AuditTrail;
import foretress.salon.Staff;
import foretress.visit.Visits;
import jakarta.enterprise.context.RequestScoped;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Who the people and records of the trail are: the chain knows them by ids and pseudonyms, their names are looked up from outside it. */
@RequestScoped
class TrailNames {
    /** @param id of a client or visit, to ask for it alone */
    record Record(String id, String name) {}

    private static final Record UNKNOWN = new Record("", "");

    private final AuditTrail trail;
    private final Visits visits;
    private final TrailWords say;
    private Map<UUID, String> staff;
    private Map<String, Record> records;

    TrailNames(AuditTrail trail, Visits visits, TrailWords say) {
        this.trail = trail;
        this.visits = visits;
        this.say = say;
    }

    Map<UUID, String> staff() {
        if (staff == null) {
            staff = Staff.names();
        }
        return staff;
    }

    String actor(String actor) {
        return switch (actor) {
            case "client" -> say.actor_client();
            case "server" -> say.actor_server();
            case "nobody" -> say.actor_nobody();
            default -> uuid(actor).map(staff()::get).orElse(actor);
        };
    }

    /** The client that a record on file is about; blank for what is not about one, or no longer on file. */
    Record record(String pseudonym) {
        if (records == null) {
            records = new HashMap<>();
            visits.clientsOfRecords().forEach((id, client) -> records.put(trail.pseudonym(id.toString()),
                new Record(client.id().toString(), client.name())));
        }
        return records.getOrDefault(pseudonym, UNKNOWN);
    }

    static Optional<UUID> uuid(String text) {
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException notOne) {
            return Optional.empty();
        }
    }
}
