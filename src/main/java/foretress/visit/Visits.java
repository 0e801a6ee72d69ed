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
import org.hibernate.Session;
import org.hibernate.query.Query;

/** Books visits and finds them again. */
@ApplicationScoped
public class Visits {
    /** Tables of what is kept of a visit, and so of its client. */
    private static final List<String> RECORDS =
        List.of("signed_consent", "decision", "closing", "skin_test", "bench_test",
            "noted", "assessment", "told_reaction", "complaint", "sent_photo", "withdrawal", "rights_request",
            "stood_before");

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
        return ids(people + " union select id from visit where client_id in (" + people + ")"
            + " union select id from client_before where client_id in (" + people + ")"
            + union("select id from %s where client_id in (" + people + ")"), "people", clients);
    }

    /** Ids of everything on file that belongs to one visit, itself among them. */
    public Set<UUID> recordsOfVisit(UUID visit) {
        return ids("select id from visit where id = :visit" + union("select id from %s where visit_id = :visit"),
            "visit",
            visit);
    }

    private static String union(String select) {
        return RECORDS.stream().map(table -> " union " + select.formatted(table)).collect(Collectors.joining());
    }

    private static Set<UUID> ids(String select, String name, Object value) {
        @SuppressWarnings("unchecked") List<UUID> ids =
            Visit.getEntityManager().createNativeQuery(select, UUID.class).setParameter(name, value).getResultList();
        return Set.copyOf(ids);
    }

    /** Whom a record is about. */
    public record Behind(UUID id, String name) {}

    /** The client behind everything on file, by its id: client, visit, and whatever was kept of either. Two statements, however much there is. */
    public Map<UUID, Behind> clientsOfRecords() {
        Map<UUID, Behind> behind = new HashMap<>();
        Visit.getEntityManager().createQuery("select c.id, c.givenName, c.familyName from Client c", Object[].class)
            .getResultList()
            .forEach(row -> behind.put((UUID) row[0], new Behind((UUID) row[0], (row[1] + " " + row[2]).strip())));
        List<Object[]> records = Visit.getEntityManager().unwrap(Session.class)
            .createNativeQuery("select id, client_id from visit" + union("select id, client_id from %s"),
                Object[].class)
            .addScalar("id", UUID.class).addScalar("client_id", UUID.class).getResultList();
        records.stream().filter(row -> behind.containsKey(row[1]))
            .forEach(row -> behind.put((UUID) row[0], behind.get(row[1])));
        return behind;
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
