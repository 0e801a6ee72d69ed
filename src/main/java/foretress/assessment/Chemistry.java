package foretress.assessment;

/**
 * A chemistry that touches the client.
 *
 * @param dry nothing is put on the hair
 * @param productLine a salon may have product lines of it
 */
public record Chemistry(String id, SkinTest skinTest, boolean dry, boolean productLine) {
    /** Whether a skin test comes before it, and whether a dermatologist's letter can stand for the test. */
    public enum SkinTest {
        NO, YES, OR_LETTER
    }
}
