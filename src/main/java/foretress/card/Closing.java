package foretress.card;

import foretress.visit.Booked;
import java.util.List;

/**
 * What happened at a visit.
 *
 * @param done the services done, with the steps that were
 * @param strandTest code: good, stopped, poor, not-done
 * @param condition how the hair was at the end, in the stylist's words
 */
public record Closing(List<Booked> done, List<Used> used, String strandTest, String condition, String notes) {
    public static final List<String> STRAND_TESTS = List.of("good", "stopped", "poor", "not-done");

    public Closing {
        done = List.copyOf(done);
        used = List.copyOf(used);
    }

    /**
     * A product used; every field as it was written, blank when it was not.
     *
     * @param strength of the developer, as the bottle says it: "6 %", "20 vol"
     * @param minutes it was on the hair
     */
    public record Used(String product, String shade, String batch, String strength, String minutes) {
        public boolean blank() {
            return (product + shade + batch + strength + minutes).isBlank();
        }
    }
}
