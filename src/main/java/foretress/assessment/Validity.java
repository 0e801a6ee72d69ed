package foretress.assessment;

import java.time.LocalDate;
import java.util.Optional;

/** How long a negative skin test stands, as a leaflet or a policy says it. */
public sealed interface Validity {
    /** It counts for the one application it was made for. */
    record EachApplication() implements Validity {}

    /** @param count 1 or more, from the day it was begun */
    record Months(int count) implements Validity {
        public Months {
            atLeastOne(count);
        }
    }

    /** @param count 1 or more, from the day it was begun */
    record Days(int count) implements Validity {
        public Days {
            atLeastOne(count);
        }
    }

    /** Nobody said how long; then it limits nothing of itself. */
    record Unsaid() implements Validity {}

    /** @param months 0 when a test counts for one application, as a policy writes it */
    static Validity ofPolicy(int months) {
        return months == 0 ? new EachApplication() : new Months(months);
    }

    /** The last day on which a test begun then still stands; empty where no day ends it. */
    default Optional<LocalDate> lastDay(LocalDate begun) {
        if (this instanceof Months months) {
            return Optional.of(begun.plusMonths(months.count()));
        }
        if (this instanceof Days days) {
            return Optional.of(begun.plusDays(days.count()));
        }
        return Optional.empty();
    }

    private static void atLeastOne(int count) {
        if (count < 1) {
            throw new IllegalArgumentException("a test that stands for %d days or months is none".formatted(count));
        }
    }
}
