package foretress.hair;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * With known cuts: some is left only if its near edge had not passed any pair of scissors that came after it. Closed in the
 * rate, summed over the days in {@value #DAYS} parts, over the rest in {@value #RESTS}, over the ways to have covered the zone.
 * The first and the last day of a series go together: an early first with an early last.
 */
final class CutReach extends Reach {
    private static final int DAYS = 24;
    private static final int RESTS = 4;

    /** All hair was cut to a length, so many months ago. */
    record Limit(double monthsAgo, double toCm) {
        /** The fastest growth at which what was done so many months ago has escaped these scissors. */
        double fastest(double doneMonthsAgo, double rest) {
            double grew = Math.max(0, doneMonthsAgo - rest) - Math.max(0, monthsAgo - rest);
            boolean before = doneMonthsAgo > monthsAgo;
            return !before || grew == 0 && toCm > 0 ? Double.POSITIVE_INFINITY : grew == 0 ? 0 : toCm / grew;
        }
    }

    private record Rest(double months, double share) {}

    private record Day(double last, double first) {}

    private final Growth growth;
    private final List<Day> days = new ArrayList<>();
    private final List<Limit> limits;
    private final List<Rest> rests = new ArrayList<>(List.of(new Rest(0, 1 - Growth.RESTING_SHARE)));

    CutReach(Growth growth, Span last, Span first, List<Limit> limits, List<Cover> covers, double lengthCm) {
        super(covers, lengthCm);
        this.growth = growth;
        this.limits = limits;
        for (int i = 0; i < DAYS; i++) {
            days.add(new Day(last.part(i, DAYS), first.part(i, DAYS)));
        }
        for (int i = 0; i < RESTS; i++) {
            rests.add(new Rest((i + 0.5) * Growth.REST_MONTHS / RESTS, Growth.RESTING_SHARE / RESTS));
        }
    }

    static List<Limit> limits(List<Cut> cuts, LocalDate today) {
        return cuts.stream().map(cut -> new Limit(Growth.monthsBetween(cut.day(), today), cut.toCm())).toList();
    }

    @Override
    double chanceAt(double cm) {
        return cm > lengthCm ? 0 : sum((day, rest, cover) -> {
            double fastest = Math.min(fastestNear(cm, day, rest, cover), fastestLeft(day, rest));
            return Math.max(0, cover.endsBegun(cm, lengthCm) * growth.chanceAtMost(fastest)
                - growth.chanceAtMost(fastestFar(cm, day, rest, cover)));
        });
    }

    @Override
    double chanceNearBy(double cm) {
        return sum((day, rest, cover) -> cover.endsBegun(cm, lengthCm)
            * growth.chanceAtMost(fastestNear(cm, day, rest, cover)));
    }

    @Override
    double chanceFarBy(double cm) {
        return cm >= lengthCm ? 1 : sum((day, rest, cover) -> growth.chanceAtMost(fastestFar(cm, day, rest, cover)));
    }

    @Override
    double chanceAnyLeft() {
        return days.stream().mapToDouble(day -> {
            double grew = Math.max(0, day.last - LONG_REST_MONTHS);
            return growth.chanceAtMost(
                Math.min(fastestLeft(day, LONG_REST_MONTHS), grew == 0 ? Double.POSITIVE_INFINITY : lengthCm / grew));
        }).average().orElseThrow();
    }

    private double fastestLeft(Day day, double rest) {
        double fastest = Double.POSITIVE_INFINITY;
        for (Limit limit : limits) {
            fastest = Math.min(fastest, limit.fastest(day.last, rest));
        }
        return fastest;
    }

    private double fastestNear(double cm, Day day, double rest, Cover cover) {
        return fastest(cover.scalpAt(cm, lengthCm), Math.max(0, day.last - rest));
    }

    private static double fastestFar(double cm, Day day, double rest, Cover cover) {
        return cover.ends() ? fastest(cm - cover.growthCm(), Math.max(0, day.first - rest) + cover.growthMonths()) : -1;
    }

    private static double fastest(double place, double months) {
        return months > 0 ? place / months : place >= 0 ? Double.POSITIVE_INFINITY : -1;
    }

    private interface Part {
        double chance(Day day, double rest, Cover cover);
    }

    private double sum(Part part) {
        double sum = 0;
        for (Day day : days) {
            for (Rest rest : rests) {
                for (Cover cover : covers) {
                    sum += rest.share * part.chance(day, rest.months, cover);
                }
            }
        }
        return sum / (days.size() * covers.size());
    }
}
