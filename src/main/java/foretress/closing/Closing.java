package foretress.closing;

import foretress.visit.Booked;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What happened at a visit, as a person said it.
 *
 * @param done the services of which anything was done, with their steps
 * @param courses by service: how it went, one of {@link #COURSES}; empty in closings of versions that did not ask
 * @param strandTest code: good, stopped, poor, not-done; blank when nothing was done
 * @param condition how the hair was at the end, in the stylist's words
 * @param correction why an earlier version was put right; blank in the first
 */
public record Closing(List<Booked> done, Map<String, String> courses, List<Used> used, String strandTest, Wrong wrong,
    String condition, String notes,
    String correction) {
    public static final List<String> STRAND_TESTS = List.of("good", "stopped", "poor", "not-done");
    public static final String NOT_DONE = "not-done";
    public static final List<String> COURSES = List.of("as-planned", "changed", "stopped", NOT_DONE);

    public Closing {
        done = List.copyOf(done);
        courses = courses == null ? Map.of() : Map.copyOf(courses);
        used = List.copyOf(used);
        wrong = wrong == null ? Wrong.NOT_ASKED : wrong;
        correction = written(correction);
    }

    /** Closings of earlier versions lack what was not asked then. */
    private static String written(String kept) {
        return kept == null ? "" : kept;
    }

    /**
     * A product used; every field as it was written, blank when it was not.
     *
     * @param zone where, one of {@link Zones#CODES}
     * @param ratio product to developer, as mixed: "1 : 2"
     * @param grams of the mix
     * @param strength of the developer, as the bottle says it: "6 %", "20 vol"
     * @param minutes it was on the hair
     */
    public record Used(String zone, String product, String batch, String shade, String ratio, String grams,
        String strength, String minutes, Planned planned) {
        public Used {
            zone = written(zone);
            ratio = written(ratio);
            grams = written(grams);
            planned = planned == null ? Planned.NOTHING : planned;
        }

        public static Used blankLine() {
            return new Used("", "", "", "", "", "", "", "", Planned.NOTHING);
        }

        public boolean blank() {
            return (product + shade + batch + ratio + grams + strength + minutes).isBlank();
        }
    }

    /** What the plan had for this line; blank where it said nothing. */
    public record Planned(String product, String shade, String strength, String minutes) {
        public static final Planned NOTHING = new Planned("", "", "", "");
    }

    /** Where a product went. */
    public static final class Zones {
        public static final List<String> CODES =
            List.of("regrowth", "lengths-ends", "ends", "whole", "strands", "brows-lashes");

        private Zones() {}
    }

    /**
     * What went wrong during the service.
     *
     * @param said yes or no; blank where nobody asked
     * @param kinds of {@link #KINDS}
     * @param when it showed, of {@link #WHEN}
     * @param helped what was done about it
     */
    public record Wrong(String said, List<String> kinds, String when, String words, String helped) {
        public static final Wrong NOT_ASKED = new Wrong("", List.of(), "", "", "");
        public static final Wrong NOTHING = new Wrong("no", List.of(), "", "", "");
        public static final List<String> KINDS = Mishap.codes();
        public static final List<String> WHEN = List.of("while-on", "two-hours", "two-days", "later");

        public Wrong {
            kinds = List.copyOf(kinds);
        }

        public boolean happened() {
            return said.equals("yes");
        }

        Stream<Mishap> mishaps() {
            return kinds.stream().flatMap(kind -> Mishap.of(kind).stream());
        }
    }
}
