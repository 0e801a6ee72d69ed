package foretress.knowledge;

import foretress.assessment.Policy;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes docs/reference/policies.md from knowledge. */
final class PoliciesReference {
    /** What each figure does, and which way is stricter. */
    private static final Map<String, String> MEANINGS = Map.ofEntries(
        Map.entry("label-age", "years below which the label forbids colour and a skin test"),
        Map.entry("minimum-age", "years below which the salon takes nobody; more is stricter"),
        Map.entry("guardian-below-age",
            "years below which a parent or guardian agrees and signs too; more is stricter"),
        Map.entry("skin-test-wait-hours", "hours from applying a skin test to reading it; more is stricter"),
        Map.entry("skin-test-validity-months",
            "months a negative skin test stands, 0 for one application only; less is stricter"),
        Map.entry("incompatibility-test-hours", "hours from the metal test's start to its last look; more is stricter"),
        Map.entry("permed-hair-weeks", "weeks in which a perm weighs more; more is stricter"),
        Map.entry("relaxer-weeks", "weeks before new growth is relaxed again; more is stricter"),
        Map.entry("keratin-weeks", "weeks in which a keratin coat restricts; more is stricter"),
        Map.entry("perm-allergen-months",
            "months in which permed hair still carries what sensitises; more is stricter"),
        Map.entry("chemotherapy-months", "months after chemotherapy in which services are prevented; more is stricter"),
        Map.entry("chemotherapy-regrown-cm",
            "cm of new hair asked for after chemotherapy, 0 for none; more is stricter"),
        Map.entry("radiotherapy-weeks",
            "weeks after radiotherapy to the head in which services are prevented; more is stricter"),
        Map.entry("retinoid-months", "months a retinoid counts after its end; more is stricter"),
        Map.entry("steroid-low-dose-mg",
            "mg of prednisone a day under which a skin test is believed; below 10 every dose hides it"),
        Map.entry("sting-is-a-reaction", "1: a sting that rinsed away counts as a reaction"),
        Map.entry("letter-counts", "0: no dermatologist's letter opens a direct dye; 0 is stricter"),
        Map.entry("lash-tint-allowed", "0: the law of the place does not allow lash and brow tints"),
        Map.entry("retention-years", "years documents are kept"),
        Map.entry("minor-retention-age", "age to which a minor's documents are kept at least"));

    private final Knowledge knowledge;
    private final Words words;

    PoliciesReference(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.words = knowledge.words("en");
    }

    String write() {
        List<Policy> policies = List.copyOf(knowledge.policies().values());
        String heads = policies.stream().map(Policy::jurisdiction).collect(Collectors.joining(" | "));
        return """
            # Policies

            What holds in a place before a salon sets anything of its own, each figure with what kind of rule it is (law, maker, trade rule, house
            rule, health advice, research, teaching) and its source. A salon may be stricter, never laxer; of a product's leaflet and the policy the stricter holds. This page is
            made from `src/main/knowledge/policy`; a test fails when it is out of date and says how to make it anew.

            | figure | %s | what it does |
            |---|%s---|
            %s

            %s
            """.formatted(heads, "---|".repeat(policies.size()),
            PolicyReader.FIGURES.stream().map(figure -> row(figure, policies)).collect(Collectors.joining("\n")),
            policies.stream().map(this::warnings).collect(Collectors.joining("\n\n")));
    }

    private String cell(Policy policy, String figure) {
        String source = policy.source(figure);
        String kind =
            knowledge.ruleSet().sources().get(source).kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return "%d: %s, %s".formatted(policy.figure(figure), kind, link(source));
    }

    private String row(String figure, List<Policy> policies) {
        String meaning = java.util.Optional.ofNullable(MEANINGS.get(figure))
            .orElseThrow(() -> new IllegalStateException("say what " + figure + " does"));
        return "| `%s` | %s | %s |".formatted(figure,
            policies.stream().map(policy -> cell(policy, figure)).collect(Collectors.joining(" | ")), meaning);
    }

    private String warnings(Policy policy) {
        return "## %s\n\nEmergency number %s, paper %s. What the law has printed on labels, in our own words; the consent repeats it:\n\n%s"
            .formatted(
                policy.jurisdiction(), policy.emergencyNumber(), policy.paper(),
                policy.warnings().stream()
                    .map(w -> "- %s (%s)".formatted(words.text("policy.warnings." + w.id()), link(w.source())))
                    .collect(Collectors.joining("\n")));
    }

    private static String link(String key) {
        return "[%s](sources.md#%s)".formatted(key, key);
    }
}
