package foretress.assessment;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A test that was made, as the facts need it. Whether it stands is asked field by field, so that each reason it may not is
 * somebody's to give.
 *
 * @param test id: {@code skin-test}, {@code incompatibility-test}, {@code test-cutting}, {@code elasticity-test}, {@code elasticity-of-roots},
 *     {@code porosity-test}, {@code porosity-of-roots}, {@code dermatologist-letter}, {@code medical-advice}
 * @param outcome skin-test: negative, doubtful, positive; incompatibility-test: slight-lightening, not-whole (a stretch without
 *     its own tuft, or a control that cannot be read), nothing-happened, positive; test-cutting: good, poor;
 *     elasticity-test: pass, caution, fail; porosity-test: average, resistant, porous, over-porous; the two of the roots alike;
 *     dermatologist-letter: names-product (a dye without peroxide and without any of the group), advises-against;
 *     medical-advice: with-care, advised-against
 * @param started the day it was begun
 * @param read the day a member of staff read it; empty while nobody has
 * @param waitKept it was read after the wait that policy and leaflet ask
 * @param thisProduct it was made with the product now planned
 * @param thisVisit it was made for the visit now planned
 * @param masked it was begun or read under something that hides reactions, or that may
 * @param overtaken something since may have changed what it says: a sensitising event, another treatment of the hair
 * @param leaflet what the maker of the product asks of a skin test; of leaflet and policy the stricter holds
 * @param about what a doctor's word is about, by the fact it names; empty for everything else
 */
public record TestFact(String test, String outcome, LocalDate started, Optional<LocalDate> read, boolean waitKept,
    boolean thisProduct,
    boolean thisVisit, boolean masked, boolean overtaken, Optional<Leaflet> leaflet, Optional<String> about) {
    public static final String SKIN_TEST = "skin-test";
    /** No test of the salon's own: the word of the client's doctor or pharmacist. */
    public static final String ADVICE = "medical-advice";

    /** What each test can come to, from better to worse. */
    public static final Map<String, List<String>> OUTCOMES = Map.of(
        SKIN_TEST, SkinTestOutcome.codes(),
        "incompatibility-test", List.of("slight-lightening", "not-whole", "nothing-happened", "positive"),
        "test-cutting", List.of("good", "poor"),
        "elasticity-test", List.of("pass", "caution", "fail"),
        "elasticity-of-roots", List.of("pass", "caution", "fail"),
        "porosity-test", List.of("average", "resistant", "porous", "over-porous"),
        "porosity-of-roots", List.of("average", "resistant", "porous", "over-porous"),
        "dermatologist-letter", List.of("names-product", "advises-against"),
        ADVICE, List.of("with-care", "advised-against"));

    /** It is about the test itself, not about something else. */
    public TestFact(String test, String outcome, LocalDate started, Optional<LocalDate> read, boolean waitKept,
        boolean thisProduct,
        boolean thisVisit, boolean masked, boolean overtaken, Optional<Leaflet> leaflet) {
        this(test, outcome, started, read, waitKept, thisProduct, thisVisit, masked, overtaken, leaflet,
            Optional.empty());
    }

    /** No leaflet of the product is on file. */
    public TestFact(String test, String outcome, LocalDate started, Optional<LocalDate> read, boolean waitKept,
        boolean thisProduct,
        boolean thisVisit, boolean masked, boolean overtaken) {
        this(test, outcome, started, read, waitKept, thisProduct, thisVisit, masked, overtaken, Optional.empty());
    }

    /**
     * A doctor's word as staff recorded it.
     *
     * @param overtaken the answers it is about are no longer those of the day it was given
     */
    public static TestFact advice(String about, String outcome, LocalDate said, boolean thisVisit, boolean overtaken) {
        return new TestFact(ADVICE, outcome, said, Optional.of(said), true, true, thisVisit, false, overtaken,
            Optional.empty(), Optional.of(about));
    }

    /** Read by staff after the wait, of this product, for this visit, with nothing against it. */
    public static TestFact sound(String test, String outcome, LocalDate started, LocalDate read) {
        return new TestFact(test, outcome, started, Optional.of(read), true, true, true, false, false);
    }
}
