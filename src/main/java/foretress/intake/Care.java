package foretress.intake;

import foretress.assessment.Assessment;
import foretress.assessment.Rule;
import foretress.knowledge.Knowledge;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.visit.Task;
import foretress.visit.Tasks;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;

/** When an answer needs a person at once: the page is shown, and a call is promised by name until somebody says it was made. */
@Singleton
class Care {
    static final String PAGE = "care";

    private final Knowledge knowledge;
    private final Tasks tasks;
    private final PageViews shown;
    private final Clock clock;

    Care(Knowledge knowledge, Tasks tasks, PageViews shown, Clock clock) {
        this.shown = shown;
        this.knowledge = knowledge;
        this.tasks = tasks;
        this.clock = clock;
    }

    /** Who calls, and by when; the name is empty where the whole desk promised. */
    record Promise(String name, Instant until) {}

    /** Promises the call as soon as an answer asks for one; the promise stays until somebody says it was kept. */
    void watch(Visit visit, Assessment assessment) {
        if (calls(assessment) && tasks.open(visit.id, Task.Kind.CALL).isEmpty() && !told(visit)) {
            Instant until = NextClosing.after(clock.instant(), Salon.the());
            tasks.promise(visit, Task.Kind.CALL, Staff.byId(visit.stylistId).filter(s -> s.active).map(s -> s.id),
                until);
        }
    }

    /** A call is promised and the client has not been told yet. */
    boolean untold(Visit visit) {
        return tasks.open(visit.id, Task.Kind.CALL).isPresent() && !told(visit);
    }

    private boolean told(Visit visit) {
        return shown.ever(visit, PAGE);
    }

    Optional<Promise> promise(Visit visit) {
        return tasks.open(visit.id, Task.Kind.CALL)
            .map(t -> new Promise(t.owner().flatMap(Staff::byId).map(s -> s.name).orElse(""), t.dueAt));
    }

    private boolean calls(Assessment assessment) {
        return assessment.findings().stream().filter(f -> !f.onlyIfUnknown())
            .anyMatch(f -> knowledge.ruleSet().rule(f.ruleId()).filter(Rule::calls).isPresent());
    }
}
