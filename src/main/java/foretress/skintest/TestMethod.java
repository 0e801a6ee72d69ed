package foretress.skintest;

import com.fasterxml.jackson.annotation.JsonValue;
import foretress.salon.ProductLine;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * How a test was made; sealed in the store.
 *
 * @param shade as the label has it
 * @param mixing as the leaflet says
 * @param siteWords where exactly; said for every site but the two that have a name
 * @param masking facts of the answers that may hide a reaction, by their ids
 * @param medicines what the client said at the chair of medicines that hide one
 */
public record TestMethod(String shade, String batch, ProductLine.Mixing mixing, ProductLine.Site site, String siteWords,
    List<String> masking, Medicines medicines) {
    /** Of medicines that hide a reaction. */
    public enum Medicines {
        NONE, TAKEN, UNKNOWN;

        /** As posted and stored. */
        static Optional<Medicines> of(String code) {
            return Arrays.stream(values()).filter(one -> one.code().equals(code)).findFirst();
        }

        @JsonValue
        String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public TestMethod {
        Objects.requireNonNull(mixing, "mixed or neat");
        Objects.requireNonNull(site, "where it was put on");
        Objects.requireNonNull(medicines, "what was said of medicines");
        masking = List.copyOf(masking);
    }

    boolean masked() {
        return !masking.isEmpty() || medicines != Medicines.NONE;
    }
}
