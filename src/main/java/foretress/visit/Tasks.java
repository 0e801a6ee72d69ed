package foretress.visit;

import foretress.ledger.Ledger;
import foretress.running.Asked;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** Promises to clients: made, listed, kept. */
@ApplicationScoped
public class Tasks {
    private final Ledger ledger;
    private final Clock clock;

    Tasks(Clock clock, Ledger ledger) {
        this.ledger = ledger;
        this.clock = clock;
    }

    /** Makes the promise unless the same one is already open for the visit; then that one is returned. */
    @Transactional
    public Task promise(Visit visit, Task.Kind kind, Optional<UUID> owner, Instant due) {
        return open(visit, kind).orElseGet(() -> {
            var task = new Task(visit, kind, owner, due, clock.instant());
            task.persist();
            return task;
        });
    }

    public Optional<Task> open(UUID visitId, Task.Kind kind) {
        return Visit.<Visit>findByIdOptional(visitId).flatMap(visit -> open(visit, kind));
    }

    /** Asked every time: what was acknowledged has to be written before the next one is promised. */
    private static Optional<Task> open(Visit visit, Task.Kind kind) {
        return Task.find("openAs", Task.openAs(visit, kind)).firstResultOptional();
    }

    /** What is remembered may have been acknowledged since, and that not yet be written. */
    private static boolean isStillOpen(Task task) {
        return task.acknowledged().isEmpty();
    }

    /** Every open promise, the most urgent first. */
    public List<Task> open() {
        return Asked.once(Tasks.class, () -> Task.getEntityManager().createQuery(
            "select t, k from Task t join fetch t.visit v join fetch v.client left join fetch v.services"
                + " left join ClientKey k on k.clientId = v.keyOf where t.acknowledgedAt is null order by t.dueAt, t.id",
            Object[].class).getResultList().stream().map(row -> (Task) row[0]).distinct().toList()).stream()
            .filter(Tasks::isStillOpen).toList();
    }

    /** Visits that are stopped until somebody has spoken to the client. */
    public Set<UUID> stopped() {
        return open().stream().filter(task -> task.kind() == Task.Kind.SPEAK_AT_ONCE).map(task -> task.visit.id)
            .collect(Collectors.toSet());
    }

    /** Marks the promise kept; false when there is none of that id. */
    @Transactional
    public boolean acknowledge(UUID id, UUID staffId) {
        Optional<Task> task = Task.findByIdOptional(id);
        task.ifPresent(found -> {
            found.acknowledge(staffId, clock.instant());
            ledger.note(staffId.toString(), "promise kept", found.visit.id.toString());
        });
        return task.isPresent();
    }

    /** Closes the promise of this kind on the visit, if one is open, because what it asked for was done elsewhere. */
    @Transactional
    public void kept(UUID visitId, Task.Kind kind, UUID staffId) {
        open(visitId, kind).ifPresent(task -> task.acknowledge(staffId, clock.instant()));
    }
}
