package foretress.bench;

import foretress.assessment.Weight;
import foretress.web.Mistakes;
import java.util.List;
import java.util.Optional;

/**
 * An incompatibility test as its page shows it.
 *
 * @param step 2 mix, 3 watch, 4 look again
 */
public record BenchMetalView(BenchHead head, Sheet form, int step, Glass glass, List<Tuft> tufts, List<Sight> sights,
    Watch watch, Reading reading, BenchAfter after, BenchNews news, Mistakes mistakes) {
    /** With the reason that somebody typed beside the thing seen that has a mistake. */
    BenchMetalView typed(String why) {
        List<Sight> kept = sights.stream().map(sight -> sight.isMeant(mistakes) ? sight.typed(why) : sight).toList();
        return new BenchMetalView(head, form, step, glass, tufts, kept, watch, reading, after, news, mistakes);
    }

    /** What covers a tuft in a small glass (common practice, no source). */
    public static final int GLASS_ML = 20;

    public int glassMl() {
        return GLASS_ML;
    }

    public String live() {
        return form.action() + "/live";
    }

    /**
     * Something seen, and how the reader may say that it was tapped in error.
     *
     * @param typed the reason, where the form needs a second look
     */
    public record Sight(String id, String words, String struck, BenchStrike strike, String typed) {
        boolean isMeant(Mistakes mistakes) {
            return mistakes.at(field()).or(() -> mistakes.at(proof())).isPresent();
        }

        Sight typed(String why) {
            return new Sight(id, words, struck, strike, why);
        }

        public String field() {
            return "why-" + id;
        }

        public String proof() {
            return "password-" + id;
        }
    }

    /**
     * Where its forms go.
     *
     * @param open something can still be written down
     */
    public record Sheet(String action, boolean open, String submission) {}

    /**
     * What goes into the glass.
     *
     * @param lines what to take, a line each; empty until it is worked out
     * @param note what the recipe leaves open
     * @param typed about the bottle
     */
    public record Glass(List<String> lines, String note, Mix typed) {}

    /**
     * The glass being watched.
     *
     * @param unwatched times in which the server was away, a sentence each
     * @param alarm what to do now that something reacted; empty while nothing did
     * @param canEnd it has run its time and every tuft is read, or something reacted
     */
    public record Watch(Optional<BenchTimer> clock, BenchStrand strand, List<String> unwatched, List<String> warmth,
        String alarm, String toRead, boolean canEnd) {}

    /** What it can come to, and what it came to. */
    public record Reading(List<BenchOutcome> outcomes, Result result, NextDay nextDay) {}

    /** What was typed about the bottle. */
    public record Mix(String recipe, String strength, String unit, String ml) {}

    /** @param said what its state is, in words; empty while unread */
    public record Tuft(String letter, String name, String place, boolean control, String said, List<Sign> signs) {
        public String lookField() {
            return "look-" + letter;
        }

        public String label() {
            return letter + " · " + name;
        }
    }

    /** @param at minutes and seconds after the start; empty while it was not seen */
    public record Sign(String value, String word, String at, boolean alarming) {}

    /** @param read the test says something */
    public record Result(boolean read, Weight weight, String word, List<String> gaps, String ended) {}

    /**
     * @param due the second look is still to come
     * @param from from when on it counts
     * @param done what it showed; empty while nobody looked
     */
    public record NextDay(boolean due, boolean early, String from, String done) {}
}
