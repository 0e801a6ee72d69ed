package foretress.visit;

import foretress.running.Asked;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernate.Session;
import org.hibernate.query.Query;

/** Books visits and finds them again. */
@ApplicationScoped
public class Visits {
    /** Visits with their clients and services in one read, however many there are; and the keys of these, which the session then holds. */
    private static final String WHOLE = "select v, k from Visit v join fetch v.client left join fetch v.services"
        + " left join ClientKey k on k.clientId = v.keyOf where ";

    private final Event<Made> made;
    private final Event<CalledOff> calledOff;
    private final Clock clock;

    Visits(Event<Made> made, Event<CalledOff> calledOff, Clock clock) {
        this.made = made;
        this.calledOff = calledOff;
        this.clock = clock;
    }

    /** Books once per submission: the same form sent again gives the visit it made the first time. */
    @Transactional
    public Visit book(Booking booking) {
        return bySubmission(booking.submission()).orElseGet(() -> create(booking));
    }

    /** Books even if the submission is known; then the store refuses it. */
    Visit create(Booking booking) {
        var visit = new Visit(booking, Client.findById(booking.clientId()), clock.instant());
        visit.persistAndFlush();
        made.fire(new Made(visit.id));
        return visit;
    }

    /** Told in the same transaction, to rooms above that know what is owed for what is booked. */
    public record Made(UUID visitId) {}

    /** Told in the same transaction, to rooms above that planned something around the visit. */
    public record CalledOff(UUID visitId) {}

    /** @throws IllegalStateException when the visit took place or was withdrawn from */
    @Transactional
    public void callOff(UUID id) {
        find(id).ifPresent(visit -> {
            visit.moveTo(State.CANCELLED);
            calledOff.fire(new CalledOff(id));
        });
    }

    /**
     * The client takes back what was agreed to: nothing happens at this visit any more, and what was planned around it ends too.
     *
     * @throws IllegalStateException when nothing was agreed to yet, or it is over already
     */
    @Transactional
    public void withdraw(UUID id) {
        find(id).ifPresent(visit -> {
            visit.moveTo(State.WITHDRAWN);
            calledOff.fire(new CalledOff(id));
        });
    }

    /** What was decided before something was known has to be decided again; a decision that is being made now is waited for. */
    @Transactional
    public void undecide(UUID clientId) {
        of(clientId).stream().filter(visit -> visit.state.isAhead()).sorted(Comparator.comparing(visit -> visit.id))
            .forEach(Visits::undecide);
    }

    private static void undecide(Visit visit) {
        Visit.getEntityManager().refresh(visit, LockModeType.PESSIMISTIC_WRITE);
        if (visit.state == State.DECIDED) {
            visit.moveTo(State.SIGNED);
        }
    }

    public Optional<Visit> bySubmission(String submission) {
        return Visit.find("submission", submission).firstResultOptional();
    }

    public Optional<Visit> find(UUID id) {
        return Asked.once(List.of(Visit.class, id), () -> withKeys("v.id = ?1", id).stream().findFirst());
    }

    /** With what opens each visit's standing and what it owes: one statement, however many there are. */
    private static List<Visit> withKeys(String which, Object... values) {
        Query<Object[]> asked =
            Visit.getEntityManager().unwrap(Session.class).createQuery(WHOLE + which, Object[].class);
        for (int i = 0; i < values.length; i++) {
            asked.setParameter(i + 1, values[i]);
        }
        return asked.getResultList().stream().map(row -> (Visit) row[0]).distinct().toList();
    }

    /** Visits starting from this day on that have not ended in any way, earliest first. */
    public List<Visit> comingFrom(LocalDate day, ZoneId zone) {
        return withKeys("v.startsAt >= ?1 and v.state not in ?2 order by v.startsAt, v.id",
            day.atStartOfDay(zone).toInstant(), List.of(State.CLOSED, State.CANCELLED, State.WITHDRAWN));
    }

    /** Ids of the same, for whoever locks them one by one. */
    public List<UUID> aheadFrom(LocalDate day, ZoneId zone) {
        return Visit.getEntityManager()
            .createQuery("select v.id from Visit v where v.startsAt >= ?1 and v.state not in ?2 order by v.id",
                UUID.class)
            .setParameter(1, day.atStartOfDay(zone).toInstant())
            .setParameter(2, List.of(State.CLOSED, State.CANCELLED, State.WITHDRAWN)).getResultList();
    }

    /** Of those, the ones for which something must be done before. What is owed is sealed, so the store cannot pick them out. */
    public List<Visit> owingFrom(LocalDate day, ZoneId zone) {
        return comingFrom(day, zone).stream().filter(visit -> visit.owed().isPresent()).toList();
    }

    /** These, in one read. */
    public List<Visit> byIds(Collection<UUID> ids) {
        return ids.isEmpty() ? List.of() : withKeys("v.id in ?1", ids);
    }

    /** Ids of everything on file under these people: their records, visits, and whatever was kept of them. */
    public Set<UUID> recordsOf(Collection<UUID> clients) {
        if (clients.isEmpty()) {
            return Set.of();
        }
        String people = "select id from client where id in (:people) or merged_into in (:people)";
        String all = people + " union select id from visit where client_id in (" + people + ")"
            + Stream.of("signed_consent", "decision", "closing", "skin_test", "bench_test", "noted", "assessment",
                "told_reaction", "complaint", "sent_photo")
                .map(table -> " union select id from " + table + " where client_id in (" + people + ")")
                .collect(Collectors.joining());
        @SuppressWarnings("unchecked") List<UUID> ids =
            Visit.getEntityManager().createNativeQuery(all, UUID.class).setParameter("people", clients).getResultList();
        return Set.copyOf(ids);
    }

    /** The client behind each visit and client record: id of either, name of the person. For naming what a list of ids is about. */
    public Map<UUID, String> peopleBehind() {
        Map<UUID, String> names = new HashMap<>();
        Visit.getEntityManager()
            .createQuery("select v.id, c.id, c.givenName, c.familyName from Client c left join Visit v on v.client = c",
                Object[].class)
            .getResultList().forEach(row -> {
                String name = (row[2] + " " + row[3]).strip();
                names.put((UUID) row[1], name);
                if (row[0] != null) {
                    names.put((UUID) row[0], name);
                }
            });
        return names;
    }

    /** From the first instant, up to but not at the second. */
    public List<Visit> between(Instant from, Instant until) {
        return withKeys("v.startsAt >= ?1 and v.startsAt < ?2 order by v.startsAt, v.id", from, until);
    }

    /**
     * Has at hand what opens each visit's standing and what it owes: one statement for a whole list. A list found elsewhere asks for
     * it too, or pays a statement a client.
     */
    public List<Visit> ready(List<Visit> list) {
        VaultAccess.vault().fetchKeys(list.stream().map(visit -> visit.keyOf).distinct().toList());
        return list;
    }

    /** Puts coming visits where their wall time is under the zone rules of this Java; those that moved. */
    @Transactional
    List<Visit> reread() {
        List<Visit> ahead = Visit.list("startsAt > ?1", clock.instant());
        return ahead.stream().filter(Visit::reread).toList();
    }

    /** All visits of one client, newest first; the id of a record that was merged into another finds the other's. */
    public List<Visit> of(UUID clientId) {
        return Asked.once(List.of(Visits.class, clientId), () -> withKeys(
            "v.client.id in " + Client.SAME_PERSON + " order by v.startsAt desc, v.id", clientId));
    }
}
