package foretress.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The minutes gone as a hair, with what was seen on it: 1000 units for the whole time, lying along the reading direction.
 *
 * @param hair outline of what is gone
 * @param ahead dots of what is left
 */
public record BenchStrand(String hair, String ahead, List<Mark> marks, List<Tick> ticks) {
    private static final double FULL = 1000, STEP = 20, MIDDLE = 34, ROOT = 3.2, END = 0.6;

    /** Something seen: the tuft's letter over a ring. */
    public record Mark(String x, String letter) {}

    /** Every five minutes. */
    public record Tick(String x, String minutes, String anchor) {}

    /** One thing seen. */
    record Seen(long second, String letter) {}

    static BenchStrand of(long gone, long whole, List<Seen> seen) {
        double tip = Math.max(30, FULL * Math.min(1.0, (double) gone / whole));
        var near = new StringBuilder("M");
        var far = new StringBuilder();
        for (double x = 0; x < tip + STEP; x += STEP) {
            double at = Math.min(x, tip);
            double half = ROOT + (END - ROOT) * Math.pow(at / tip, 1.3);
            near.append(point(at, sway(at) - half));
            far.insert(0, point(at, sway(at) + half));
        }
        var ahead = new StringBuilder();
        for (double x = tip + STEP; x < FULL; x += STEP) {
            ahead.append(ahead.isEmpty() ? "M" : "").append(point(x, MIDDLE));
        }
        List<Mark> marks =
            seen.stream().map(s -> new Mark(number(Math.min(FULL, FULL * s.second() / whole)), s.letter())).toList();
        return new BenchStrand(near.append(far).append('Z').toString(), ahead.toString(), marks, ticks(whole));
    }

    private static List<Tick> ticks(long whole) {
        List<Tick> ticks = new ArrayList<>();
        long step = whole > 3600 ? 1800 : 300;
        for (long second = 0; second <= whole; second += step) {
            ticks.add(new Tick(number(FULL * second / whole), Long.toString(second / 60),
                second == 0 ? "start" : second + step > whole ? "end" : "middle"));
        }
        return ticks;
    }

    private static double sway(double x) {
        return MIDDLE + 1.6 * Math.sin(x / 140) * Math.min(1, x / 100);
    }

    private static String point(double x, double y) {
        return number(x) + " " + number(y) + " ";
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
