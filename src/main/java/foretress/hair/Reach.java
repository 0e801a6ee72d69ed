package foretress.hair;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Where on a hair one treatment can lie today. Closed in the rate (its distribution is known), summed over the day it was
 * done (every day of the span equally likely) and over how long the hair has rested since (most not at all; the share at
 * rest now stopped at a moment of the last four months, each equally likely; a hair that rested earlier has fallen).
 *
 * <p>What a zone assumes. Whole, strands, not known: scalp to tip. Lengths and ends: the first 0 to 3 cm left out (common
 * practice, no source). Ends: from anywhere between the scalp and today's ends. New growth: what grew in 1 to 3 months
 * (touched up every four to twelve weeks; common practice, no source), or since the treatment before it when that is
 * longer ago; to the tip when done again and again. The chance that any is left leaves none of these first centimetres out.
 */
final class Reach {
    /** "Any left" means one treated hair in 200. */
    static final double ONE_HAIR_IN = 200;
    static final double USUAL_TOUCH_UP_MONTHS = 3;

    private static final int DAY_STEPS = 24;
    private static final int REST_STEPS = 4;
    private static final double LEFT_OUT_CM = 3;
    private static final int ZONE_STEPS = 8;
    /** A span longer than this is a past without an end, not a date: days no hair of this length has seen do not count. */
    private static final double OPEN_PAST_MONTHS = 60;

    /** A day it can have been: months ago, and what each later cut left of a hair that had grown so many months by then. */
    private record Moment(double monthsAgo, List<Limit> limits) {
        /** The fastest growth at which some residue has escaped every pair of scissors. */
        double fastestLeft(double rest) {
            double fastest = Double.POSITIVE_INFINITY;
            for (Limit limit : limits) {
                fastest = Math.min(fastest, limit.fastest(rest));
            }
            return fastest;
        }
    }

    private record Limit(double months, double lengthCm) {
        double fastest(double rest) {
            double grew = Math.max(0, months - rest);
            return grew == 0 ? (lengthCm > 0 ? Double.POSITIVE_INFINITY : 0) : lengthCm / grew;
        }
    }

    private record Rest(double months, double share) {}

    /** One way to have covered a zone: first centimetres left out, part of the length left out, months of growth covered. */
    private record Cover(double fromCm, double fromPart, double growthMonths) {}

    private final List<Moment> moments;
    private final List<Rest> rests = rests();
    private final List<Cover> covers;
    private final Growth growth;
    private final double lengthCm;

    Reach(Treatment treatment, LocalDate today, HairHistory history, double lengthCm, double touchUpMonths) {
        this.growth = history.growth();
        this.lengthCm = lengthCm;
        this.covers = covers(treatment, touchUpMonths);
        this.moments = days(treatment, today, lengthCm).stream()
            .map(day -> new Moment(Growth.monthsBetween(day, today), limits(day, today, history, lengthCm)))
            .toList();
    }

    private static List<LocalDate> days(Treatment t, LocalDate today, double lengthCm) {
        LocalDate last = t.latest().isAfter(today) ? today : t.latest();
        LocalDate first = t.earliest().isAfter(last) ? last : t.earliest();
        if (Growth.monthsBetween(first, last) > OPEN_PAST_MONTHS) {
            LocalDate reach = today.minusDays((long) Math.ceil(Growth.lookBackMonths(lengthCm) * Growth.DAYS_A_MONTH));
            first = reach.isAfter(last) ? last : reach.isAfter(first) ? reach : first;
        }
        return spread(first, last);
    }

    private static List<LocalDate> spread(LocalDate first, LocalDate last) {
        long days = ChronoUnit.DAYS.between(first, last) + 1;
        long steps = Math.min(days, DAY_STEPS);
        List<LocalDate> found = new ArrayList<>();
        for (long i = 0; i < steps; i++) {
            found.add(first.plusDays((long) ((i + 0.5) * days / steps)));
        }
        return found;
    }

    private static List<Limit> limits(LocalDate day, LocalDate today, HairHistory history, double lengthCm) {
        List<Limit> limits = new ArrayList<>();
        limits.add(new Limit(Growth.monthsBetween(day, today), lengthCm));
        for (Cut cut : history.cuts()) {
            if (cut.day().isAfter(day) && !cut.day().isAfter(today)) {
                limits.add(new Limit(Growth.monthsBetween(day, cut.day()), cut.toCm()));
            }
        }
        return limits;
    }

    private static List<Rest> rests() {
        List<Rest> rests = new ArrayList<>(List.of(new Rest(0, 1 - Growth.RESTING_SHARE)));
        for (int i = 0; i < REST_STEPS; i++) {
            rests.add(new Rest((i + 0.5) * Growth.REST_MONTHS / REST_STEPS, Growth.RESTING_SHARE / REST_STEPS));
        }
        return rests;
    }

    private static List<Cover> covers(Treatment t, double touchUpMonths) {
        double endless = Double.POSITIVE_INFINITY;
        return switch (t.zone()) {
            case LENGTHS_ENDS -> steps(0, LEFT_OUT_CM).stream().map(cm -> new Cover(cm, 0, endless)).toList();
            case ENDS -> steps(0, 1).stream().map(part -> new Cover(0, part, endless)).toList();
            case REGROWTH -> t.repeated() ? List.of(new Cover(0, 0, endless))
                : steps(1, touchUpMonths).stream().map(months -> new Cover(0, 0, months)).toList();
            default -> List.of(new Cover(0, 0, endless));
        };
    }

    private static List<Double> steps(double from, double to) {
        List<Double> steps = new ArrayList<>();
        for (int i = 0; i < ZONE_STEPS; i++) {
            steps.add(from + (i + 0.5) * (to - from) / ZONE_STEPS);
        }
        return steps;
    }

    /** Chance that the residue lies on a treated hair at this place. */
    double chanceAt(double cm) {
        return cm > lengthCm ? 0 : sum((moment, rest, cover) -> {
            double grew = Math.max(0, moment.monthsAgo - rest);
            double fastest = Math.min(fastestNear(cm, grew, cover), moment.fastestLeft(rest));
            return Math.max(0, growth.chanceAtMost(fastest) - slowerThan(cm / (grew + cover.growthMonths)));
        });
    }

    /** Chance that the near edge lies no further out than this, cuts apart. */
    double chanceNearBy(double cm) {
        return sum((moment, rest, cover) ->
            growth.chanceAtMost(fastestNear(cm, Math.max(0, moment.monthsAgo - rest), cover)));
    }

    /** Chance that the far edge lies no further out than this; 0 before the tip where the treatment went to the tip. */
    double chanceFarBy(double cm) {
        return cm >= lengthCm ? 1 : sum((moment, rest, cover) -> {
            double grew = Math.max(0, moment.monthsAgo - rest) + cover.growthMonths;
            return Double.isInfinite(grew) ? 0 : growth.chanceAtMost(cm / grew);
        });
    }

    /** Chance, over rate and day, that at least one treated hair in 200 still carries some. */
    double chanceAnyLeft() {
        double rest = Growth.REST_MONTHS * (1 - 1 / (ONE_HAIR_IN * Growth.RESTING_SHARE));
        return moments.stream().mapToDouble(m -> slowerThan(m.fastestLeft(rest))).average().orElseThrow();
    }

    private double slowerThan(double rate) {
        return rate <= growth.lowest() ? 0 : growth.chanceAtMost(rate);
    }

    private double fastestNear(double cm, double grew, Cover cover) {
        double place = (cm - cover.fromPart * lengthCm) / (1 - cover.fromPart) - cover.fromCm;
        if (grew == 0) {
            return place >= 0 ? Double.POSITIVE_INFINITY : -1;
        }
        return place / grew;
    }

    private interface Part {
        double chance(Moment moment, double rest, Cover cover);
    }

    private double sum(Part part) {
        double sum = 0;
        for (Moment moment : moments) {
            for (Rest rest : rests) {
                for (Cover cover : covers) {
                    sum += rest.share * part.chance(moment, rest.months, cover);
                }
            }
        }
        return sum / (moments.size() * covers.size());
    }
}
