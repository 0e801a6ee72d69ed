package foretress.web;

import io.quarkus.qute.TemplateExtension;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * The strand along the edge of a page: hair for what is done, dots for what lies ahead, one tick a topic.
 * Drawn in a box 40 wide and 1000 high that the page stretches to its own height; across, one unit is one px.
 *
 * @param tip where the hair ends, in thousandths of the page's height
 * @param ticks one for each topic
 */
public record StrandProgress(double tip, List<Tick> ticks) {
    /** Half the hair's thickness at the root and at the tip, px. */
    private static final double ROOT = 1.8, END = 0.35;
    private static final int FULL = 1000, STEP = 25;

    /** A mark at the edge of the strand; dark once the hair has passed it. */
    public record Tick(String path, boolean passed) {}

    /**
     * The strand on topic {@code at} of {@code topics}.
     *
     * @param at the number said beside the heading, 0 to {@code topics}
     */
    @TemplateExtension(namespace = "strand")
    public static StrandProgress grown(int at, int topics) {
        if (topics < 1 || at < 0 || at > topics) {
            throw new IllegalArgumentException("no strand has topic %d of %d".formatted(at, topics));
        }
        return share((double) at / topics, topics);
    }

    /** The strand grown to a share of the page, 0 to 1, with evenly spaced ticks. */
    @TemplateExtension(namespace = "strand")
    public static StrandProgress share(double share, int ticks) {
        double tip = Math.max(30, Math.min(share, 1) * FULL - 14); // the flick takes the last few px, a root always shows
        return new StrandProgress(tip, IntStream.rangeClosed(1, ticks)
            .mapToObj(i -> new Tick(tick((double) i / ticks * FULL), (double) i / ticks * FULL <= tip)).toList());
    }

    /** The outline of the hair: thick at the root, tapering to its end. */
    public String hair() {
        var near = new StringBuilder("M");
        var far = new StringBuilder();
        for (double y = 0; y < tip + STEP; y += STEP) {
            double at = Math.min(y, tip);
            double half = ROOT + (END - ROOT) * Math.pow(at / tip, 1.3);
            near.append(point(sway(at) - half, at));
            far.insert(0, point(sway(at) + half, at));
        }
        return near.append(far).append('Z').toString();
    }

    /** The line of dots ahead; nothing when the hair has reached the end. */
    public String ahead() {
        var path = new StringBuilder();
        for (double y = tip + STEP; y < FULL; y += STEP) {
            path.append(path.isEmpty() ? "M" : "").append(point(sway(y), y));
        }
        return path.toString();
    }

    /** The tip as a share of the height, for the flick that hangs there unstretched. */
    public String tipPercent() {
        return number(tip / FULL * 100) + "%";
    }

    /** The flick in px, from the hair's end. */
    public String flick() {
        double x = sway(tip);
        return "M%s 0c0 6 2.5 9 5.5 13l.6-.5c-2.9-4-5.4-7-5.4-12.5Z".formatted(number(x - END));
    }

    private static String tick(double y) {
        double x = sway(y) - 2;
        return "M" + number(x - 5) + " " + number(y) + "h5";
    }

    /** How far from its gutter's edge the hair hangs, px: 20, at most 5 to either side; it leaves the root straight. */
    private static double sway(double y) {
        double t = y / FULL;
        return 20 + Math.min(1, t * 6)
            * (3.2 * Math.sin(2 * Math.PI * 1.15 * t + 0.9) + 1.8 * Math.sin(2 * Math.PI * 2.3 * t + 0.4));
    }

    private static String point(double x, double y) {
        return number(x) + " " + number(y) + " ";
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
