package foretress.skintest;

import java.util.List;

/**
 * How a test was made; sealed in the store.
 *
 * @param shade as the label has it
 * @param mixing {@code MIXED} or {@code NEAT}, as the leaflet says
 * @param site {@code BEHIND_EAR}, {@code INNER_ELBOW} or {@code OTHER}
 * @param siteWords where exactly
 * @param masking facts of the answers that may hide a reaction, by their ids
 * @param medicines what the client said at the chair of medicines that hide one: none, taken or unknown
 */
public record Made(String shade, String batch, String mixing, String site, String siteWords, List<String> masking, String medicines) {
    public static final String NO_MEDICINES = "none";

    public Made {
        masking = List.copyOf(masking);
    }

    boolean masked() {
        return !masking.isEmpty() || !medicines.equals(NO_MEDICINES);
    }
}
