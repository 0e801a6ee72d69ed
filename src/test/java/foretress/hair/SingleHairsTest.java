package foretress.hair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Clients drawn by lot, each with one rate and day, and their single hairs grown one by one, must show what the sums say. */
class SingleHairsTest {
    private static final int CLIENTS = 40_000;
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    private static final LocalDate FIRST = LocalDate.of(2022, 1, 1);
    private static final int SPAN_DAYS = 365;
    private static final double LENGTH_CM = 45;
    private static final double[][] GROUPS = { { 280, 50 }, { 367, 56 }, { 411, 53 }, { 256, 44 } };

    private final Random lot = new Random(20261124);

    /** A hair's treated stretch today. */
    private record Stretch(double near, double far) {
        boolean covers(double cm) {
            return near <= cm && cm <= far;
        }
    }

    @ParameterizedTest
    @EnumSource(Zone.class)
    void hairsGrownOneByOneLieWhereTheSumsSay(Zone zone) {
        Lane lane = lane(zone);
        int[] found = new int[(int) LENGTH_CM + 1];
        for (int i = 0; i < CLIENTS; i++) {
            Stretch hair = hair(rate(), monthsAgo(), zone);
            for (int cm = 0; cm <= LENGTH_CM; cm++) {
                found[cm] += hair.covers(cm) ? 1 : 0;
            }
        }
        for (int cm = 0; cm <= LENGTH_CM; cm++) {
            assertThat(lane.chanceAt(cm)).as("%s at %d cm", zone, cm).isCloseTo((double) found[cm] / CLIENTS,
                within(0.015));
        }
    }

    @ParameterizedTest
    @EnumSource(value = Zone.class, names = { "WHOLE", "STRANDS", "NOT_KNOWN" })
    void oneTreatedHairInTwoHundredMakesIt(Zone zone) {
        int clients = 2_000;
        int hairs = 4_000;
        int left = 0;
        for (int i = 0; i < clients; i++) {
            double rate = rate();
            double months = monthsAgo();
            int still = 0;
            for (int h = 0; h < hairs; h++) {
                still += hair(rate, months, zone).near < LENGTH_CM ? 1 : 0;
            }
            left += still * 200 >= hairs ? 1 : 0;
        }
        assertThat(lane(zone).chanceLeft()).isCloseTo((double) left / clients, within(0.03));
    }

    private static Lane lane(Zone zone) {
        Treatment treatment = Treatment.once(Residue.OXIDATIVE, FIRST, FIRST.plusDays(SPAN_DAYS - 1), zone, "Dye");
        return StrandMap.of(HairHistory.of(HairLength.measured(LENGTH_CM), java.util.List.of(treatment)), TODAY).lanes()
            .get(0);
    }

    private double monthsAgo() {
        return (TODAY.toEpochDay() - FIRST.plusDays(lot.nextInt(SPAN_DAYS)).toEpochDay()) / 30.4375;
    }

    private double rate() {
        while (true) {
            double[] group = GROUPS[lot.nextInt(GROUPS.length)];
            double rate = (group[0] + group[1] * lot.nextGaussian()) * 30.4375 / 10_000;
            if (rate >= 0.5 && rate <= 1.4) {
                return rate;
            }
        }
    }

    private Stretch hair(double rate, double monthsAgo, Zone zone) {
        double rested = lot.nextDouble() < 0.13 ? 4 * lot.nextDouble() : 0;
        double grew = Math.max(0, monthsAgo - rested);
        double near = rate * grew;
        return switch (zone) {
            case LENGTHS_ENDS -> new Stretch(near + 3 * lot.nextDouble(), LENGTH_CM);
            case ENDS -> new Stretch(near + lot.nextDouble() * (LENGTH_CM - near), near < LENGTH_CM ? LENGTH_CM : 0);
            case REGROWTH -> new Stretch(near, rate * (grew + 1 + 2 * lot.nextDouble()));
            default -> new Stretch(near, LENGTH_CM);
        };
    }
}
