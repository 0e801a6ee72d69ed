package foretress.hair;

import java.time.LocalDate;

/** Between two moments, in months before today; 0 ≤ newest ≤ oldest. */
record Span(double newest, double oldest) {
    /** A span longer than this is a past without an end, not a date: days no hair of this length has seen do not count. */
    private static final double OPEN_PAST_MONTHS = 60;

    static Span of(LocalDate earliest, LocalDate latest, LocalDate today, double lengthCm) {
        double newest = Growth.monthsBetween(latest, today);
        double oldest = Math.max(newest, Growth.monthsBetween(earliest, today));
        boolean open = oldest - newest > OPEN_PAST_MONTHS;
        return new Span(newest, open ? Math.max(newest, Math.min(oldest, Growth.lookBackMonths(lengthCm))) : oldest);
    }

    /** The same, or so much longer ago that neither end lies after the other's. */
    Span before(Span other) {
        return new Span(Math.max(newest, other.newest), Math.max(oldest, other.oldest));
    }

    /** The middle of the i-th of so many equal parts, from the oldest on. */
    double part(int i, int parts) {
        return oldest - (i + 0.5) * (oldest - newest) / parts;
    }
}
