package foretress.assessment;

import foretress.questionnaire.Code;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The computations a fact can ask for, and what they tell apart, better to worse. The names of the classes are knowledge's
 * choice; their number and order are not. A last meaning in brackets may be left out.
 */
public enum ComputedAs {
    ANY_OF("none of them", "one of them is so heavy"),
    AGE("of age", "below the salon's age", "below the label's age"),
    METAL("never any", "below one per cent, surely", "suspected"),
    LEFT("none", "some may be left", "(done within recent-weeks)"),
    LEFT_BY_AGE("none", "some may be left, done old-years ago or longer", "some may be left",
        "(done within recent-weeks)"),
    KIND_LEFT("none", "the first of the kinds", "the second", "(the third)"),
    MEDICINE("none", "taken", "(a class that only rows give)"),
    STEROID_TABLETS("none", "a low dose", "may mask a skin test"),
    SKIN_STEROID("none", "not on the test site", "may mask a skin test"),
    CHEMOTHERAPY("never", "over", "ended within the policy's months", "now"),
    UNKNOWN_MEDICINE("none", "a name we do not know"),
    IMMUNE_MEDICINE("none", "not known to mask a skin test, or the evidence is weak", "may mask a skin test"),
    RETINOID("none", "used on the skin, away from the scalp", "taken, or on the scalp"),
    SCALP_MEDICINE("none", "used on the scalp, or nobody knows where"),
    LABEL_METAL("none", "traces, as in pigments", "a metal that stays in the hair"),
    LABEL_DYE_GROUP("no dye", "another dye", "a dye of the PPD group"),
    LABEL_UNKNOWN("none", "a word we do not know"),
    HAIR_LENGTH(0, "measured by staff", "said, drawn straight", "not known"),
    LOOKED_UP_MEDICINE(0, "none", "a name that staff looked up"),
    POLICY_ALLOWS(0, "the policy's figure is 1 or more", "it is 0"),
    LETTER_OR_TEST(2, "a dermatologist's letter names this very product", "the test is negative and valid", "neither",
        "the test is positive"),
    MEDICAL_ADVICE(1, "a doctor said yes, with care", "nobody asked, or the answers are others since",
        "a doctor said no"),
    SKIN_TEST(1, "negative and valid", "not done or not valid", "positive"),
    METAL_TEST(1, "slight lightening on every tuft", "not done, or not on every stretch", "nothing at all happened",
        "positive"),
    /** Which outcome is which class, and which class is "nobody tested", stands beside the fact. */
    CHAIR_TEST(1);

    private final Optional<Integer> notDone;
    private final List<String> meanings;

    ComputedAs(String... meanings) {
        this.notDone = Optional.empty();
        this.meanings = List.of(meanings);
    }

    /** @param notDone the class that means nobody tested or wrote it down, counted from the best; the best for what is no such thing */
    ComputedAs(int notDone, String... meanings) {
        this.notDone = Optional.of(notDone);
        this.meanings = List.of(meanings);
    }

    /** As knowledge writes it. */
    public String code() {
        return Code.of(this);
    }

    public static List<String> codes() {
        return Arrays.stream(values()).map(ComputedAs::code).toList();
    }

    /** @throws IllegalArgumentException for every other code */
    public static ComputedAs of(String code) {
        return Code.in(ComputedAs.class, code)
            .orElseThrow(() -> new IllegalArgumentException("there is no computation " + code));
    }

    /** What each class means; empty where knowledge says it. */
    public List<String> meanings() {
        return meanings;
    }

    /** What staff recorded or the policy sets has one class, never a range: a test that is not known to be done is not done. */
    public boolean isAlwaysKnown() {
        return notDone.isPresent();
    }

    int notDone() {
        return notDone.orElse(0);
    }

    /** Whether a fact with so many classes can hold what this computation tells apart. */
    public boolean fits(int classes) {
        long optional = meanings.stream().filter(m -> m.startsWith("(")).count();
        return meanings.isEmpty() || classes <= meanings.size() && classes >= meanings.size() - optional;
    }
}
