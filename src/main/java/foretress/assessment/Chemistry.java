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
    /** Whether a skin test comes before it, whether a dermatologist's letter can stand for the test, and whether it is of the PPD group. */
    public enum SkinTest {
        NO, YES, OR_LETTER,
        /** A test of its own: it is no dye of the group, and the rules about the group do not weigh on it. */
        OF_ITS_OWN
    }

    /** One that is no kind of another. */
    public Chemistry(String id, SkinTest skinTest, boolean dry, boolean productLine) {
        this(id, skinTest, dry, productLine, Optional.empty());
    }
}
