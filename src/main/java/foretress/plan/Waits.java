package foretress.plan;

import foretress.assessment.Policy;
import foretress.assessment.Stricter;
import foretress.assessment.TestFact;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How long each test takes from its start to its readings, for one visit.
 *
 * @param skin what leaflet and policy ask of a skin test
 * @param readAgainDays days after the start on which findings ask for another reading; 0 when none does
 * @param oldEnough the first day on which the client has the label's age: on none before is a skin test put on; empty without a birth date
 */
public record Waits(Policy policy, Stricter skin, int readAgainDays, Optional<LocalDate> oldEnough) {
    public static final String INCOMPATIBILITY_TEST = "incompatibility-test";

    public Waits {
        if (readAgainDays < 0) {
            throw new IllegalArgumentException("a reading %d days after".formatted(readAgainDays));
        }
    }

    /** Of somebody who is old enough. */
    Waits(Policy policy, Stricter skin, int readAgainDays) {
        this(policy, skin, readAgainDays, Optional.empty());
    }

    /** The first day on which a test may be put on this client; empty where any day would do. */
    Optional<LocalDate> notBefore(String test) {
        return test.equals(TestFact.SKIN_TEST) ? oldEnough : Optional.empty();
    }

    /** Every reading in time since the start, in order; empty for a test that is made at the visit itself. */
    public List<Duration> readings(String test) {
        Map<String, List<Duration>> all = Map.of(TestFact.SKIN_TEST, skinReadings(), INCOMPATIBILITY_TEST,
            List.of(Duration.ofHours(policy.incompatibilityTestHours())));
        return all.getOrDefault(test, List.of());
    }

    /** A day is 24 hours on the physical clock; a later reading never comes before the one that the wait asks for. */
    private List<Duration> skinReadings() {
        Duration wait = Duration.ofHours(skin.waitHours());
        return Stream.of(wait, Duration.ofDays(readAgainDays)).filter(one -> one.compareTo(wait) >= 0).distinct()
            .toList();
    }

    /** The first day on which a test may begin so as not to be too old on the day of the visit; empty where it never is. */
    Optional<LocalDate> firstDay(String test, LocalDate visit) {
        return test.equals(TestFact.SKIN_TEST) ? skin.firstDay(visit) : Optional.empty();
    }
}
