package foretress.retention;

import java.time.LocalDate;
import java.util.Optional;

/**
 * How long the notice promises that a client's answers are kept.
 *
 * @param years after the last visit
 * @param minorAge the age in years to which those of a minor are kept at least
 */
record PromisedYears(int years, int minorAge) {
    private static final int OF_AGE = 18;

    /**
     * The first day on which they are kept no longer. Who was under 18 at the last visit gets the later of the two days; where no birth
     * date is known, the years alone count.
     *
     * @param last the day of the last visit, or that of coming on file where there was none
     */
    LocalDate until(LocalDate last, Optional<LocalDate> born) {
        LocalDate end = later(last, years);
        return born.filter(day -> last.isBefore(later(day, OF_AGE))).map(day -> later(day, minorAge))
            .filter(end::isBefore).orElse(end);
    }

    /** Of 29 February a common year's 1 March: never a day too early. */
    private static LocalDate later(LocalDate day, int years) {
        LocalDate end = day.plusYears(years);
        return end.getDayOfMonth() < day.getDayOfMonth() ? end.plusDays(1) : end;
    }
}
