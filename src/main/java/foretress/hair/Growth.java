package foretress.hair;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * How fast one client's hair grows, in cm a month: one unknown rate for the whole head and for all its treatments, somewhere
 * between {@code lowest} and {@code highest}, both within the published range {@value #SLOW} to {@value #FAST}.
 *
 * <p>Nobody is asked their origin, so the rate is drawn from the published groups in equal shares, each a normal
 * distribution, cut off at the two bounds: Loussouarn 2005 (280 ± 50, 367 ± 56 and 411 ± 53 µm a day) and, so that the slowest
 * group counts twice, Loussouarn 2001 (256 ± 44). Their mean is 1.00 cm a month, the figure of the forensic hair-testing
 * sheet (1.0, range 0.6 to 1.4), whose upper end is our fast bound; cut off at the bounds it is 0.97. The slow bound 0.5 lies below its 0.6, because 5 to 9 %
 * of the slowest group grow more slowly than that.
 *
 * <p>Safety figures never use this distribution: they hold at the slow bound, for everybody.
 */
public record Growth(double lowest, double highest) {
    public static final double SLOW = 0.5;
    public static final double CENTRAL = 1.0;
    public static final double FAST = 1.4;
    /** A month is a twelfth of 365.25 days. */
    public static final double DAYS_A_MONTH = 30.4375;
    /** A resting hair stands still for up to four months (Wolfram 2003: rest of 2 to 4 months) before it falls. */
    public static final double REST_MONTHS = 4;
    /** Share of hairs at rest at any one time: Loussouarn 2005, 12 to 14 %. */
    public static final double RESTING_SHARE = 0.13;
    public static final Growth PUBLISHED = new Growth(SLOW, FAST);

    private static final double RULER_ERROR_CM = 0.3;
    private static final long SHORTEST_MEASURE_DAYS = 56;

    private record Group(double mean, double deviation) {
        static Group ofMicrometresADay(double mean, double deviation) {
            return new Group(cmAMonth(mean), cmAMonth(deviation));
        }
    }

    private static final List<Group> GROUPS = List.of(
        Group.ofMicrometresADay(280, 50), Group.ofMicrometresADay(367, 56), Group.ofMicrometresADay(411, 53),
        Group.ofMicrometresADay(256, 44));

    public Growth {
        if (!(SLOW <= lowest && lowest <= highest && highest <= FAST)) {
            throw new IllegalArgumentException("growth of %s to %s cm a month is outside %s to %s"
                .formatted(lowest, highest, SLOW, FAST));
        }
    }

    /**
     * Growth narrowed by the band of new growth under a dated colour, read to ± 0.3 cm and at least eight weeks old; a
     * shorter wait narrows nothing. Never beyond the published range.
     */
    public static Growth measured(double newGrowthCm, LocalDate coloured, LocalDate read) {
        long days = ChronoUnit.DAYS.between(coloured, read);
        if (days < SHORTEST_MEASURE_DAYS) {
            return PUBLISHED;
        }
        double months = days / DAYS_A_MONTH;
        return new Growth(within((newGrowthCm - RULER_ERROR_CM) / months),
            within((newGrowthCm + RULER_ERROR_CM) / months));
    }

    /** Whether a band read so, to ± 0.3 cm, can be hair of a published rate; otherwise the ruler or the date is wrong. */
    public static boolean plausible(double newGrowthCm, LocalDate coloured, LocalDate read) {
        double months = ChronoUnit.DAYS.between(coloured, read) / DAYS_A_MONTH;
        return newGrowthCm + RULER_ERROR_CM >= SLOW * months && newGrowthCm - RULER_ERROR_CM <= FAST * months;
    }

    private static double within(double rate) {
        return Math.max(SLOW, Math.min(FAST, rate));
    }

    public static double cmAMonth(double micrometresADay) {
        return micrometresADay * DAYS_A_MONTH / 10_000;
    }

    public static double micrometresADay(double cmAMonth) {
        return cmAMonth * 10_000 / DAYS_A_MONTH;
    }

    /** New growth in cm at this rate after so many months without a rest. */
    public static double newGrowth(double rate, double months) {
        return rate * Math.max(0, months);
    }

    /** Age in months of the tip of a hair of this length that grew at this rate without a rest. */
    public static double tipAge(double rate, double lengthCm) {
        return lengthCm / rate;
    }

    /** Near edge in cm of what was put on so many months ago, on the safe side: slow growth, four months of rest. */
    public static double safeNearEdge(double months) {
        return newGrowth(SLOW, months - REST_MONTHS);
    }

    /** How many months back a treatment can still be on hair of this length, on the safe side; no cap. */
    public static double lookBackMonths(double lengthCm) {
        return tipAge(SLOW, lengthCm) + REST_MONTHS;
    }

    static double monthsBetween(LocalDate from, LocalDate to) {
        return Math.max(0, ChronoUnit.DAYS.between(from, to) / DAYS_A_MONTH);
    }

    /** Chance that the rate is at most this many cm a month. */
    public double chanceAtMost(double rate) {
        return rate >= highest ? 1 : rate <= lowest ? 0 : Rates.of(this).g(1 / rate);
    }

    /** The published distribution, cut off at its two bounds. */
    static double published(double rate) {
        double below = mixture(SLOW);
        return Math.max(0, Math.min(1, (mixture(rate) - below) / (mixture(FAST) - below)));
    }

    private static double mixture(double rate) {
        return GROUPS.stream().mapToDouble(g -> Normal.below((rate - g.mean) / g.deviation)).average().orElseThrow();
    }
}
