package foretress.skintest;

import foretress.ledger.Ledger;
import foretress.running.Clockwork;
import foretress.visit.Task;
import foretress.visit.Tasks;
import foretress.visit.Visit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** When a test may be read and nobody has said a word: one reminder to the client, and the desk is told to ask after them. */
@ApplicationScoped
class Reminders {
    private final TestMails letters;
    private final Tasks tasks;
    private final Ledger ledger;
    private final Clock clock;
    private final Clockwork clockwork;

    Reminders(TestMails letters, Tasks tasks, Ledger ledger, Clock clock, Clockwork clockwork) {
        this.clockwork = clockwork;
        this.letters = letters;
        this.tasks = tasks;
        this.ledger = ledger;
        this.clock = clock;
    }

    @Scheduled(every = "${foretress.skin-test.every:60s}", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void onTheDot() {
        clockwork.run(this::remindDue);
    }

    /** How many were reminded. */
    @ActivateRequestContext
    int remindDue() {
        return (int) due().stream().filter(this::remind).count();
    }

    private List<UUID> due() {
        return QuarkusTransaction.requiringNew()
            .call(() -> TestApplied.<TestApplied>list("remindedAt is null and readableFrom <= ?1", clock.instant())
                .stream().map(test -> test.id()).toList());
    }

    /** Whoever sets the mark sends the mail, so that one goes out and no more. */
    private boolean remind(UUID id) {
        return QuarkusTransaction.requiringNew().call(() -> {
            if (TestApplied.update("remindedAt = ?1 where id = ?2 and remindedAt is null", clock.instant(), id) != 1) {
                return false;
            }
            TestApplied test = TestApplied.byId(id).orElseThrow();
            Visit visit = Visit.findById(test.visitId());
            if (!visit.state.isAhead() || SkinTestEntry.ofTest(id).stream().anyMatch(SkinTestEntry::counts)) {
                return false;
            }
            letters.page(id, true, "server");
            tasks.promise(visit, Task.Kind.ASK_AFTER, Optional.empty(), visit.startsAt);
            ledger.note("server", "reminder sent", id.toString());
            return true;
        });
    }
}
