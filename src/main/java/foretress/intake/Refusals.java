package foretress.intake;

import foretress.ledger.Ledger;
import foretress.vault.Vault;
import foretress.visit.State;
import foretress.visit.Visit;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;

/** The tests a client does not want. No test is made on somebody who refused it, and the service does not go ahead without it. */
@ApplicationScoped
public class Refusals {
    private final Vault vault;
    private final Ledger ledger;
    private final Event<Changed> changed;
    private final Clock clock;

    Refusals(Vault vault, Ledger ledger, Event<Changed> changed, Clock clock) {
        this.vault = vault;
        this.ledger = ledger;
        this.changed = changed;
        this.clock = clock;
    }

    /** Told in the same transaction: another mind about the tests of this visit. */
    record Changed(UUID visitId) {}

    /** Ids of the tests refused for this visit, as the client said last. */
    public Set<String> of(Visit visit) {
        return TestRefusal.newest(visit).map(this::open).stream().flatMap(ids -> List.of(ids.split(" ")).stream())
            .filter(id -> !id.isEmpty())
            .collect(Collectors.toSet());
    }

    /** Whether the client was of another mind about the tests after that moment: then what was signed no longer says it. */
    public boolean changedSince(Visit visit, Instant moment) {
        return TestRefusal.newest(visit).filter(said -> said.saidAt().isAfter(moment)).isPresent();
    }

    /** Keeps what the client said. */
    @Transactional
    public void say(UUID visitId, Set<String> tests) {
        become(Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE), tests, "client",
            tests.isEmpty() ? "tests wanted after all" : "test refused");
    }

    /**
     * Keeps that the client told a member of staff in person that they want these tests after all.
     *
     * @throws IllegalStateException when nothing can happen at this visit any more
     */
    @Transactional
    public void wantedAfterAll(UUID visitId, Set<String> tests, UUID staff) {
        Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
        if (!visit.state.isAhead()) {
            throw new IllegalStateException("a visit that is %s has no test to come".formatted(visit.state));
        }
        become(visit, of(visit).stream().filter(test -> !tests.contains(test)).collect(Collectors.toSet()),
            staff.toString(), "test wanted after all, as the client said in person");
    }

    /** What was signed before stays on file; with other tests it wants a signature of its own. */
    private void become(Visit visit, Set<String> tests, String actor, String what) {
        if (of(visit).equals(tests)) {
            return;
        }
        keep(visit, String.join(" ", new TreeSet<>(tests)));
        if (visit.state == State.DECIDED) {
            visit.moveTo(State.SIGNED);
        }
        if (visit.state == State.SIGNED) {
            visit.moveTo(State.ANSWERING);
            visit.unsign();
        }
        ledger.note(actor, what, visit.id.toString());
        changed.fire(new Changed(visit.id));
    }

    private void keep(Visit visit, String ids) {
        new TestRefusal(visit, clock.instant(),
            vault.sealing(visit.client.id, ids.getBytes(StandardCharsets.UTF_8))).persist();
    }

    private String open(TestRefusal said) {
        return new String(vault.open(said), StandardCharsets.UTF_8);
    }
}
