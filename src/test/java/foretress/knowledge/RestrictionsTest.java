package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Finding;
import foretress.assessment.Placing;
import foretress.assessment.Rule;
import foretress.assessment.Service;
import foretress.assessment.Step;
import foretress.assessment.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A service that is restricted goes ahead with a change: which one, both the stylist and the client read, for every step. */
class RestrictionsTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;

    /** Words that tell a change. A question alone ("tell us if…", "ask about…") is none. */
    private static final Map<String, Pattern> FOR_THE_CLIENT = Map.of(
        "en",
        words(
            "we (also |then |first |only )*(keep|leave|use|work|go|test|try|check|look|read|wait|protect|compare|watch|wash|comb|treat|do this|count|put no|are gentle)"
                + "|comes? out( first| before)?|until then"),
        "es",
        words(
            "mantenemos|dejamos|usamos|trabajamos|vamos|probamos|miramos|leemos|esperamos|protegemos|comparamos|vigilamos|lavamos|peinamos|tratamos|"
                + "lo hacemos|contamos|no ponemos|no usaremos|no tocamos|seguimos|salen? antes|somos|se quitan|hasta entonces|controlamos|tenemos|ponemos|sale antes"));
    private static final Map<String, Pattern> FOR_THE_STYLIST = Map.of(
        "en",
        words(
            "no|not|off|without|only|until|mild(est)?|gently?|short(er|en)?|weaker|reduced|lowest|strand test|test cutting|gloved?|gloves|keep|dust-free|never|free of|"
                + "base|barrier|wait|low strength|means|compare|wash"),
        "es",
        words(
            "no|ni|nada|sin|solo|hasta|suaves?|breve|menos|lejos|mechón|mecha|guantes|mantener|nunca|proteger|crema|esperar|fuerza|significa|comparar|lavado|"
                + "ningún|ninguna|ninguno|poco|significan"));

    private static Pattern words(String alternatives) {
        return Pattern.compile("\\b(" + alternatives + ")\\b",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);
    }

    @Test
    @DisplayName("R19: whatever restricts names the change, to the stylist and to the client, known or not, on every step")
    void everyRestrictionNamesTheChange() {
        Set<String> silent = new TreeSet<>();
        for (Finding finding : restrictions()) {
            for (String language : FOR_THE_CLIENT.keySet()) {
                for (Words.FindingWords said : said(language, finding)) {
                    if (!FOR_THE_CLIENT.get(language).matcher(said.client()).find()) {
                        silent.add("%s %s%s, client: %s".formatted(language, finding.ruleId(),
                            finding.onlyIfUnknown() ? " (perhaps)" : "", said.client()));
                    }
                    if (!FOR_THE_STYLIST.get(language).matcher(said.do_()).find()) {
                        silent.add("%s %s%s, do: %s".formatted(language, finding.ruleId(),
                            finding.onlyIfUnknown() ? " (perhaps)" : "", said.do_()));
                    }
                }
            }
        }
        assertThat(silent).isEmpty();
    }

    @Test
    @DisplayName("R19: a colour client reads nothing of the next relaxer, a perm client nothing of hair colour")
    void wordsAreAboutWhatIsBooked() {
        assertThat(client("relaxed-lately", "colour")).doesNotContain("next relaxer");
        assertThat(client("relaxed-lately", "relax-regrowth")).contains("next relaxer");
        assertThat(client("pregnancy", "relax")).doesNotContain("hair colour").contains("Little is known");
        assertThat(client("after-birth", "relax")).doesNotContain("hair colour", "pregnan").contains("birth");
        assertThat(client("after-birth", "colour")).contains("hair colour", "birth").doesNotContain("pregnan");
        assertThat(client("rash-on-face", "perm-alkaline")).doesNotContain("colour has to wait");
        assertThat(client("permed-lately", "colour-direct")).contains("We keep the time short");
    }

    @Test
    void wordsForAChemistryOnWhichTheRuleDoesNotWeighAreAFault() {
        Set<String> kinds = new TreeSet<>();
        KNOWLEDGE.words("en").own().stream().filter(path -> path.matches("findings\\.[^.]+(\\.unsure)?\\.for\\..*"))
            .forEach(kinds::add);
        assertThat(kinds).isNotEmpty();
        assertThat(WordsCheck.missing(KNOWLEDGE)).isEmpty();
    }

    private static String client(String rule, String step) {
        Step on = KNOWLEDGE.ruleSet().step(step).orElseThrow();
        return said("en", finding(KNOWLEDGE.ruleSet().rule(rule).orElseThrow(), on,
            KNOWLEDGE.ruleSet().rule(rule).orElseThrow().weightOn(on), false)).get(0).client();
    }

    /** What is said of it on its step, in a service for nothing in particular and for each aim of a service that has the step. */
    private static List<Words.FindingWords> said(String language, Finding finding) {
        Step step = KNOWLEDGE.ruleSet().step(finding.byStep().keySet().iterator().next()).orElseThrow();
        Stream<List<String>> aims = KNOWLEDGE.ruleSet().services().stream()
            .filter(service -> service.steps().contains(step)).map(Service::aims);
        return Stream.concat(Stream.of(List.<String>of()), aims).distinct().map(some -> KNOWLEDGE.words(language)
            .finding(finding, List.of(new Service("one", List.of(step), Placing.ANYWHERE, some)))).toList();
    }

    private static List<Finding> restrictions() {
        List<Finding> all = new ArrayList<>();
        for (Rule rule : KNOWLEDGE.ruleSet().rules()) {
            for (Step step : KNOWLEDGE.ruleSet().steps()) {
                if (rule.weightOn(step) == Weight.RESTRICTS) {
                    all.add(finding(rule, step, Weight.RESTRICTS, false));
                }
                if (rule.unknownWeightOn(step) == Weight.RESTRICTS && couldBeUnknown(rule)) {
                    all.add(finding(rule, step, Weight.RESTRICTS, true));
                }
            }
        }
        return all;
    }

    /** What only staff test, measure or write down is always known. */
    private static boolean couldBeUnknown(Rule rule) {
        return KNOWLEDGE.words("en").find("findings." + rule.id() + ".unsure.title").isPresent();
    }

    private static Finding finding(Rule rule, Step step, Weight weight, boolean perhaps) {
        return new Finding(rule.id(), weight, Map.of(step.id(), weight), List.of(), List.of(), List.of(),
            rule.sources(), perhaps, List.of(), List.of());
    }
}
