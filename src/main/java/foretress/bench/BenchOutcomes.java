package foretress.bench;

import foretress.assessment.TestFact;
import foretress.visit.Visit;
import jakarta.enterprise.context.RequestScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;

/** Says of a test what each of its results would mean for what is booked. */
@RequestScoped
class BenchOutcomes {
    private final BenchChanges changes;
    private final BenchSay words;
    private final BenchWords say;
    private final Clock clock;

    BenchOutcomes(BenchChanges changes, BenchSay words, BenchWords say, Clock clock) {
        this.changes = changes;
        this.words = words;
        this.say = say;
        this.clock = clock;
    }

    /** Every result of a test that has not begun, the best first; none of a test that is judged by eye alone. */
    List<BenchOutcome> ahead(Visit visit, BenchKind kind) {
        return TestFact.OUTCOMES.getOrDefault(kind.code(), List.of()).stream()
            .map(code -> of(visit, kind, code, "", false, false)).toList();
    }

    /**
     * With where the booked service would stand, the look on the next day included.
     *
     * @param said the test says something; of a result that did not come about nothing is said then
     */
    BenchOutcome of(Visit visit, BenchKind kind, String code, String text, boolean said, boolean holds) {
        LocalDate today = clock.instant().atZone(visit.zone()).toLocalDate();
        String then = said && !holds ? "" : changes.booked(visit, TestFact.sound(kind.code(), code, today, today))
            .map(say::outcome_then).orElse("");
        return new BenchOutcome(BenchSay.weight(code), words.outcome(code), text, then, holds);
    }
}
