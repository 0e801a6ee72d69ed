package foretress.knowledge;

import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Step;
import foretress.assessment.Weight;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The words of one language for everything that has an id in knowledge. What a language lacks is said in English; what
 * English lacks is a mistake in the program or the knowledge.
 */
public final class Words {
    private static final Pattern FOR_STAFF = Pattern.compile("findings\\..*\\.(title|do)|facts\\..*|steps\\..*"
        + "|tests\\.[^.]+(\\.name)?|services\\.chemistries\\..*|ways\\.(can|cannot)\\..*");

    private final String language;
    private final Map<String, String> sentences;
    private final Set<String> own;

    /**
     * @param sentences by path, already filled up from English
     * @param own the paths this language has words of its own for
     */
    Words(String language, Map<String, String> sentences, Set<String> own) {
        this.language = language;
        this.own = Set.copyOf(own);
        this.sentences = Collections.unmodifiableMap(new LinkedHashMap<>(sentences));
    }

    /**
     * @param row what it is called under the page's own question; where there is no such name, the question itself
     */
    public record QuestionWords(String ask, String hint, String why, String short_, String row) {}

    /**
     * @param title what it is, for the stylist
     * @param do_ what to do, for the stylist
     * @param client what the client reads
     */
    public record FindingWords(String title, String do_, String client) {}

    public String language() {
        return language;
    }

    public String topic(String id) {
        return text("topics." + id + ".title");
    }

    /** A question without a hint has an empty one. */
    public QuestionWords question(String id) {
        String at = "questions." + id + ".";
        return new QuestionWords(text(at + "ask"), find(at + "hint").orElse(""), text(at + "why"), text(at + "short"),
            find(at + "row").orElseGet(() -> text(at + "ask")));
    }

    /** The one question over several of a topic's; its title where it has none. */
    public String opening(String topic) {
        return find("topics." + topic + ".ask").orElseGet(() -> topic(topic));
    }

    /** How several questions of a topic are meant; empty where nobody would mistake them. */
    public String openingHint(String topic) {
        return find("topics." + topic + ".hint").orElse("");
    }

    /** The one question over a topic's list to tick. */
    public String list(String topic) {
        return text("topics." + topic + ".list");
    }

    /** What the rows of a question have in common where they stand in a list with others; empty where each speaks for itself. */
    public String group(String question) {
        return find("questions." + question + ".row").orElse("");
    }

    /** A code as a row of a list to tick, where "yes" alone would not say what to. */
    public String tick(String question, String code) {
        return find("questions." + question + ".ticks." + code).orElseGet(() -> option(question, code));
    }

    /** The words of a code, "don't know" and "rather not say" included. */
    public String option(String question, String code) {
        return find("questions." + question + ".options." + code).orElseGet(() -> text("answers." + code));
    }

    public FindingWords finding(String rule) {
        return finding(rule, false);
    }

    /** @param onlyIfUnknown the rule fires only because something is not known: then its {@code unsure} words come first */
    public FindingWords finding(String rule, boolean onlyIfUnknown) {
        return new FindingWords(said(rule, "title", onlyIfUnknown), said(rule, "do", onlyIfUnknown),
            said(rule, "client", onlyIfUnknown));
    }

    /**
     * What a finding says where these services are looked at: words for the step on which it weighs most, for what a client comes to
     * that service for, or for a chemistry of the step, where there are such; else its general words.
     */
    public FindingWords finding(Finding finding, List<Service> services) {
        List<String> kinds = kinds(finding, services);
        return new FindingWords(said(finding, "title", kinds), said(finding, "do", kinds),
            said(finding, "client", kinds));
    }

    private static List<String> kinds(Finding finding, List<Service> services) {
        return services.stream().flatMap(service -> service.steps().stream().map(step -> new Touched(service, step)))
            .filter(touched -> finding.speaksOn(touched.step()))
            .reduce((one, other) -> other.weight(finding).compareTo(one.weight(finding)) > 0 ? other : one)
            .map(Touched::kinds).orElse(List.of());
    }

    /** A step of a service that was looked at. */
    private record Touched(Service service, Step step) {
        Weight weight(Finding finding) {
            return finding.byStep().get(step.id());
        }

        List<String> kinds() {
            return Stream.of(Stream.of(step.id()), service.aims().stream(), step.uses().stream().sorted())
                .flatMap(some -> some).toList();
        }
    }

    private String said(Finding finding, String part, List<String> kinds) {
        String at = "findings." + finding.ruleId() + (finding.onlyIfUnknown() ? ".unsure.for." : ".for.");
        return kinds.stream().flatMap(kind -> find(at + kind + "." + part).stream()).findFirst()
            .orElseGet(() -> said(finding.ruleId(), part, finding.onlyIfUnknown()));
    }

    private String said(String rule, String part, boolean onlyIfUnknown) {
        String at = "findings." + rule + ".";
        Optional<String> unsure = onlyIfUnknown ? find(at + "unsure." + part) : Optional.empty();
        return unsure.orElseGet(() -> text(at + part));
    }

    public String service(String id) {
        return name("services." + id);
    }

    /** What a client comes for. */
    public String aim(String id) {
        return name("aims." + id);
    }

    public String step(String id) {
        return name("steps." + id);
    }

    public String fact(String id) {
        return name("facts." + id);
    }

    /** The trade's own name of a test, for staff. */
    public String test(String id) {
        return name("tests." + id);
    }

    /** The name under which a client reads of a test. */
    public String plainTest(String id) {
        return find("tests." + id + ".plain").orElseGet(() -> test(id));
    }

    /** The sentence at a path, for example {@code consent.statements.heading}. */
    public String text(String path) {
        return find(path)
            .orElseThrow(() -> new IllegalArgumentException("no words in '%s' for %s".formatted(language, path)));
    }

    public Optional<String> find(String path) {
        return Optional.ofNullable(sentences.get(path));
    }

    /** What a client may read in this language, by path: all but what the findings, services and tests say to staff alone. */
    public Map<String, String> forClients() {
        return sentences.entrySet().stream().filter(one -> own.contains(one.getKey()) && isForClients(one.getKey()))
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (one, same) -> one, TreeMap::new));
    }

    static boolean isForClients(String path) {
        return !FOR_STAFF.matcher(path).matches();
    }

    /** The paths this language has words of its own for. */
    Set<String> own() {
        return own;
    }

    private String name(String path) {
        return find(path).orElseGet(() -> text(path + ".name"));
    }
}
