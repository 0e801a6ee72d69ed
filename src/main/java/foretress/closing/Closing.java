package foretress.closing;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonValue;
import foretress.told.Showed;
import foretress.visit.Booked;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What happened at a visit, as a person said it.
 *
 * @param done the services of which anything was done, with their steps
 * @param courses by service: how it went; empty in closings of versions that did not ask
 * @param strandTest empty when nothing was done
 * @param condition how the hair was at the end, in the stylist's words
 * @param correction why an earlier version was put right; blank in the first
 */
public record Closing(List<Booked> done, Map<String, Course> courses, List<Used> used, Optional<StrandTrial> strandTest,
    Wrong wrong, String condition, String notes, String correction) {
    public Closing {
        done = List.copyOf(done);
        courses = Map.copyOf(courses);
        used = List.copyOf(used);
    }

    /** As the store has it: earlier versions lack what was not asked then, and have an empty text for no strand test. */
    @JsonCreator
    static Closing kept(@JsonProperty("done") List<Booked> done, @JsonProperty("courses") Map<String, Course> courses,
        @JsonProperty("used") List<Used> used, @JsonProperty("strandTest") String strandTest,
        @JsonProperty("wrong") Wrong wrong, @JsonProperty("condition") String condition,
        @JsonProperty("notes") String notes, @JsonProperty("correction") String correction) {
        return new Closing(done, courses == null ? Map.of() : courses, used, StrandTrial.of(strandTest),
            wrong == null ? Wrong.NOT_ASKED : wrong, condition, notes, written(correction));
    }

    private static String written(String kept) {
        return kept == null ? "" : kept;
    }

    /**
     * A product used; every field as it was written, blank when it was not.
     *
     * @param zone where; empty in closings of versions that did not ask
     * @param ratio product to developer, as mixed: "1 : 2"
     * @param grams of the mix
     * @param strength of the developer, as the bottle says it: "6 %", "20 vol"
     * @param minutes it was on the hair
     */
    public record Used(Optional<AppliedTo> zone, String product, String batch, String shade, String ratio, String grams,
        String strength, String minutes, Planned planned) {

        /** As the store has it: earlier versions lack what was not asked then. */
        @JsonCreator
        static Used kept(@JsonProperty("zone") String zone, @JsonProperty("product") String product,
            @JsonProperty("batch") String batch, @JsonProperty("shade") String shade,
            @JsonProperty("ratio") String ratio, @JsonProperty("grams") String grams,
            @JsonProperty("strength") String strength, @JsonProperty("minutes") String minutes,
            @JsonProperty("planned") Planned planned) {
            return new Used(AppliedTo.of(zone), product, batch, shade, written(ratio), written(grams), strength,
                minutes, planned == null ? Planned.NOTHING : planned);
        }

        public static Used blankLine() {
            return new Used(Optional.empty(), "", "", "", "", "", "", "", Planned.NOTHING);
        }

        public boolean blank() {
            return (product + shade + batch + ratio + grams + strength + minutes).isBlank();
        }
    }

    /** What the plan had for this line; blank where it said nothing. */
    public record Planned(String product, String shade, String strength, String minutes) {
        public static final Planned NOTHING = new Planned("", "", "", "");
    }

    /**
     * What went wrong during the service.
     *
     * @param when it showed; empty where nothing did
     * @param helped what was done about it
     */
    public record Wrong(Said said, List<Mishap> kinds, Optional<Showed> when, String words, String helped) {
        public static final Wrong NOT_ASKED = new Wrong(Said.NOT_ASKED, List.of(), Optional.empty(), "", "");
        public static final Wrong NOTHING = new Wrong(Said.NO, List.of(), Optional.empty(), "", "");

        public enum Said {
            NOT_ASKED, NO, YES;

            /** As posted and stored: nothing where nobody asked. */
            @JsonValue
            public String code() {
                return this == NOT_ASKED ? "" : name().toLowerCase(Locale.ROOT);
            }

            static Said of(String code) {
                return Arrays.stream(values()).filter(said -> said.code().equals(code)).findFirst().orElse(NOT_ASKED);
            }
        }

        public Wrong {
            kinds = List.copyOf(kinds);
        }

        /** As the store has it: no time is nothing there, or an empty text in what was kept before 2026-11-30. */
        @JsonCreator
        static Wrong kept(@JsonProperty("said") Said said, @JsonProperty("kinds") List<Mishap> kinds,
            @JsonProperty("when") String when, @JsonProperty("words") String words,
            @JsonProperty("helped") String helped) {
            return new Wrong(said, kinds, Showed.of(when), words, helped);
        }

        public boolean happened() {
            return said == Said.YES;
        }
    }
}
