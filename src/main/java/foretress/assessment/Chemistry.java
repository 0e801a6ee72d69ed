package foretress.assessment;

import java.util.Optional;

/**
 * A chemistry that touches the client.
 *
 * @param dry nothing is put on the hair
 * @param productLine a salon may have product lines of it
 * @param kindOf the chemistry that stands for it until the product is known; empty when it is no kind of another
 */
public record Chemistry(String id, SkinTest skinTest, boolean dry, boolean productLine, Optional<String> kindOf) {
    /** Whether a skin test comes before it, and whether a dermatologist's letter can stand for the test. */
    public enum SkinTest {
        NO, YES, OR_LETTER
    }

    /** One that is no kind of another. */
    public Chemistry(String id, SkinTest skinTest, boolean dry, boolean productLine) {
        this(id, skinTest, dry, productLine, Optional.empty());
    }
}
