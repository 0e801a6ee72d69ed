package foretress.hair;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;

/** One treatment on today's hair: how likely any of it is left, where, and what ends it. */
public final class Lane {
    /** From this chance on metal is suspected. */
    public static final double SUSPECTED_FROM = 0.01;
    /** Chances are held every quarter of a centimetre. */
    static final double STEP_CM = 0.25;

    private static final int HAIRS = 10;
    private static final double[] NOT_YET = {};
    /** 300 cm halved so often are less than a tenth of a millimetre. */
    private static final int BISECTIONS = 16;

    private final Treatment treatment;
    private final boolean lengthKnown;
    private final double lengthCm;
    private final double nearCm;
    private final double farCm;
    private final double chanceLeft;
    private final SafeSide safe;
    private final boolean slowed;
    private final double measuredCmAMonth;
    private final LocalDate latest;
    private final LocalDate today;
    private final LocalDate grownOut;
    private final Reach reach;
    private final Optional<Range> starts;
    private final Optional<Range> reaches;
    /** Made when a picture first asks for it. */
    private volatile double[] chances = NOT_YET;

    Lane(Treatment treatment, LocalDate today, HairHistory history, double lengthCm, double touchUpMonths) {
        this.reach = Reach.of(treatment, today, history, lengthCm, touchUpMonths);
        LocalDate latest = treatment.latest().isAfter(today) ? today : treatment.latest();
        this.treatment = treatment;
        this.lengthKnown = history.length().cm().isPresent();
        this.lengthCm = lengthCm;
        this.nearCm = Growth.safeNearEdge(Growth.monthsBetween(latest, today));
        this.farCm = far(treatment, today, touchUpMonths);
        this.safe = SafeSide.of(treatment, history.length(), history.cuts(), today, history.slowed());
        this.slowed = history.slowed();
        this.measuredCmAMonth = history.growth().lowest();
        this.latest = latest;
        this.today = today;
        this.chanceLeft = lengthKnown ? Math.min(safe.chance(), reach.chanceAnyLeft()) : 1;
        this.grownOut = latest.plusDays((long) Math.ceil(Growth.lookBackMonths(lengthCm) * Growth.DAYS_A_MONTH));
        this.starts = chanceLeft > 0 || reach.chanceAt(lengthCm) > 0 ? Optional.of(startsIn()) : Optional.empty();
        this.reaches = starts.map(this::reachesIn);
    }

    private double far(Treatment t, LocalDate today, double touchUpMonths) {
        if (Cover.toTheTip(t)) {
            return lengthCm;
        }
        LocalDate first = t.series().map(Series::firstEarliest).orElse(t.earliest());
        double before = t.ofNewGrowth().map(Range::toCm).orElse(Growth.FAST * touchUpMonths);
        return Math.min(lengthCm, Growth.FAST * Growth.monthsBetween(first, today) + before);
    }

    private double[] chances() {
        double[] made = chances;
        if (made.length == 0) {
            made = made();
            chances = made;
        }
        return made;
    }

    private double[] made() {
        double[] found = new double[(int) Math.ceil(lengthCm / STEP_CM) + 1];
        for (int i = 0; i < found.length; i++) {
            found[i] = Math.min(1, reach.chanceAt(Math.min(lengthCm, i * STEP_CM)));
        }
        return found;
    }

    /** Near edge, given that it is still on the hair. */
    private Range startsIn() {
        double all = reach.chanceNearBy(lengthCm);
        return new Range(place(cm -> reach.isNearBy(cm, 0.1 * all)), place(cm -> reach.isNearBy(cm, 0.9 * all)));
    }

    private Range reachesIn(Range starts) {
        if (Cover.toTheTip(treatment)) {
            return new Range(lengthCm, lengthCm);
        }
        double from = place(cm -> reach.isFarBy(cm, 0.1));
        return new Range(Math.max(from, starts.fromCm()),
            Math.max(place(cm -> reach.isFarBy(cm, 0.9)), starts.toCm()));
    }

    private interface Reached {
        boolean by(double cm);
    }

    private double place(Reached reached) {
        double low = 0;
        double high = lengthCm;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (low + high) / 2;
            if (reached.by(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    public Treatment treatment() {
        return treatment;
    }

    /**
     * Chance, 0 to 1, that at least one treated hair in 200 still carries some, over growth rate, day and hairs at rest.
     * Without a known length it is 1: counted as still there.
     */
    public double chanceLeft() {
        return chanceLeft;
    }

    /**
     * The same on the safe side, never less than {@link #chanceLeft()}: the slowest growth, four months of rest, the last day it
     * can have been. What decides. Without a known length it is 1.
     */
    public double safetyChance() {
        return safe.chance();
    }

    /** Metal possible here and not ruled out: for that the client must be sure of the last use and staff have measured. */
    public boolean metalSuspected() {
        return safe.metalSuspected();
    }

    /** Nearest place, in cm from the scalp, where any of it can lie: the slow rate after the last day, less four months. */
    public double nearCm() {
        return nearCm;
    }

    /** Furthest place where any of it can lie: the tip, or for new growth what the fast rate has carried it to. */
    public double farCm() {
        return farCm;
    }

    /**
     * Cut to this length, in cm, and none is left, with more than 95 % confidence; empty where no hair would be left, and for metal
     * in hair whose growth has no bound.
     */
    public Optional<Integer> cutToCm() {
        int whole = (int) Math.floor(nearCm);
        boolean bound = !slowed || !metalSuspected();
        return bound && whole >= 1 && nearCm < lengthCm ? Optional.of(whole) : Optional.empty();
    }

    /** Nothing but a test or the scissors tells of metal here: the hair may grow more slowly than anybody measured. */
    boolean slowed() {
        return slowed;
    }

    /** Cut to this length by the slowest growth measured on this client; empty where none was, or where it says no more. */
    public Optional<Integer> measuredCutToCm() {
        double near = measuredCmAMonth * Math.max(0, Growth.monthsBetween(latest, today) - Growth.REST_MONTHS);
        int whole = (int) Math.floor(near);
        return near < lengthCm && whole > (int) Math.floor(nearCm) ? Optional.of(whole) : Optional.empty();
    }

    /** The month by which it has grown out by the slowest growth measured on this client; empty where none was. */
    public Optional<YearMonth> measuredGrownOut() {
        double months = Growth.tipAge(measuredCmAMonth, lengthCm) + Growth.REST_MONTHS;
        return measuredCmAMonth > Growth.SLOW
            ? Optional.of(YearMonth.from(latest.plusDays((long) Math.ceil(months * Growth.DAYS_A_MONTH))))
            : Optional.empty();
    }

    /** The month by which it has grown out, at the slow rate, if the hair is kept at today's length. */
    public YearMonth grownOut() {
        return YearMonth.from(grownOut);
    }

    /** Where its near edge lies, if any is left. */
    public Optional<Range> starts() {
        return starts;
    }

    /** Where its far edge lies, if any is left. */
    public Optional<Range> reaches() {
        return reaches;
    }

    /** Chance, 0 to 1, that a treated hair carries it at this place; read between quarters of a centimetre. */
    public double chanceAt(double cm) {
        if (cm < 0 || cm > lengthCm) {
            return 0;
        }
        double[] at = chances();
        double step = cm / STEP_CM;
        int below = Math.min((int) step, at.length - 1);
        int above = Math.min(below + 1, at.length - 1);
        return at[below] + (step - below) * (at[above] - at[below]);
    }

    /** Of ten treated hairs, how many carry it at this place: at least one wherever there is any chance. */
    public int hairsAt(double cm) {
        double chance = chanceAt(cm);
        boolean possible = chance > 0 || chanceLeft > 0 && cm >= nearCm && cm <= Math.min(farCm, lengthCm);
        return (int) Math.max(possible ? 1 : 0, Math.round(HAIRS * chance));
    }
}
