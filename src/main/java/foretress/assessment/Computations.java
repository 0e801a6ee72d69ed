package foretress.assessment;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The computations a fact can ask for, and what they tell apart, better to worse. The names of the classes are knowledge's
 * choice; their number and order are not.
 */
public final class Computations {
    private Computations() {}

    /** By name: what each class means. A last meaning in brackets may be left out. */
    public static final Map<String, List<String>> MEANINGS = Map.ofEntries(
        Map.entry("age", List.of("of age", "below the salon's age", "below the label's age")),
        Map.entry("hair-length", List.of("measured by staff", "said, drawn straight", "not known")),
        Map.entry("metal", List.of("never any", "below one per cent, surely", "suspected")),
        Map.entry("left", List.of("none", "some may be left", "(done within recent-weeks)")),
        Map.entry("left-by-age", List.of("none", "some may be left, done old-years ago or longer", "some may be left",
            "(done within recent-weeks)")),
        Map.entry("kind-left", List.of("none", "the first of the kinds", "the second", "(the third)")),
        Map.entry("medicine", List.of("none", "taken", "(a class that only rows give)")),
        Map.entry("steroid-tablets", List.of("none", "a low dose", "may mask a skin test")),
        Map.entry("skin-steroid", List.of("none", "not on the test site", "may mask a skin test")),
        Map.entry("chemotherapy", List.of("never", "over", "ended within the policy's months", "now")),
        Map.entry("unknown-medicine", List.of("none", "a name we do not know")),
        Map.entry("looked-up-medicine", List.of("none", "a name that staff looked up")),
        Map.entry("immune-medicine",
            List.of("none", "not known to mask a skin test, or the evidence is weak", "may mask a skin test")),
        Map.entry("retinoid", List.of("none", "used on the skin, away from the scalp", "taken, or on the scalp")),
        Map.entry("scalp-medicine", List.of("none", "used on the scalp, or nobody knows where")),
        Map.entry("label-metal", List.of("none", "traces, as in pigments", "a metal that stays in the hair")),
        Map.entry("label-dye-group", List.of("no dye", "another dye", "a dye of the PPD group")),
        Map.entry("label-unknown", List.of("none", "a word we do not know")),
        Map.entry("policy-allows", List.of("the policy's figure is 1 or more", "it is 0")),
        Map.entry("letter-or-test",
            List.of("a dermatologist's letter names this very product", "the test is negative and valid",
                "neither", "the test is positive")),
        Map.entry("medical-advice",
            List.of("a doctor said yes, with care", "nobody asked, or the answers are others since",
                "a doctor said no")),
        Map.entry("skin-test", List.of("negative and valid", "not done or not valid", "positive")),
        Map.entry("metal-test",
            List.of("slight lightening on every tuft", "not done, or not on every stretch", "nothing at all happened",
                "positive")),
        Map.entry("test-cutting", List.of("good", "not done", "poor")),
        Map.entry("elasticity", List.of("pass", "not done", "caution", "fail")),
        Map.entry("root-elasticity", List.of("pass", "not done", "caution", "fail")),
        Map.entry("porosity",
            List.of("no part worse than average", "not done, or not on every part", "porous", "over-porous")),
        Map.entry("root-porosity",
            List.of("no worse than average", "the roots were not felt", "porous", "over-porous")),
        Map.entry("resistant-hair", List.of("no", "not done", "all of it, or the roots")));

    /** What staff recorded or the policy sets has one class, never a range: a test that is not known to be done is not done. */
    public static final Set<String> ALWAYS_KNOWN =
        Set.of("skin-test", "letter-or-test", "medical-advice", "looked-up-medicine", "metal-test", "test-cutting",
            "elasticity",
            "root-elasticity",
            "porosity", "root-porosity", "resistant-hair",
            "policy-allows", "hair-length");

    /** Of what staff test or write down: the class that means nobody did, which a better one lifts. */
    private static final Map<String, Integer> NOT_DONE = Map.of("medical-advice", 1, "skin-test", 1, "metal-test", 1,
        "test-cutting", 1, "elasticity", 1, "letter-or-test", 2);

    /** The class that means nobody tested or wrote it down; the best for what is no such thing. */
    public static int notDone(String name) {
        return NOT_DONE.getOrDefault(name, 0);
    }

    /** Whether a fact with so many classes can hold what this computation tells apart. */
    public static boolean fits(String name, int classes) {
        List<String> meanings = MEANINGS.get(name);
        long optional = meanings.stream().filter(m -> m.startsWith("(")).count();
        return classes <= meanings.size() && classes >= meanings.size() - optional;
    }
}
