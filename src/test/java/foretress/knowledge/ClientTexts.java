package foretress.knowledge;

import foretress.assessment.Finding;
import foretress.assessment.Rule;
import foretress.assessment.Service;
import foretress.assessment.Step;
import foretress.assessment.Weight;
import foretress.consent.ConsentWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Every text that a client who booked a service may be shown of it: of each finding, known or not, and of the tests they ask for. */
final class ClientTexts {
    private static final List<String> OF_EVERY_CONSENT =
        List.of("statements.", "found.", "limits.other", "cautions.instructions", "cautions.risk", "cautions.medicines",
            "cautions.doctor", "take-back.", "urgent.");

    private final Knowledge knowledge;
    private final String language;

    ClientTexts(Knowledge knowledge, String language) {
        this.knowledge = knowledge;
        this.language = language;
    }

    /** A text and where it comes from. */
    record Text(Service service, String from, String said) {}

    /** Every service as it is offered, and without the step that can be taken out. */
    List<Service> services() {
        return knowledge.ruleSet().services().stream().flatMap(service -> Stream.of(service, service.plain()))
            .distinct()
            .toList();
    }

    List<Text> of(Service service) {
        List<Text> texts = new ArrayList<>();
        Set<String> tests = new LinkedHashSet<>();
        for (Rule rule : knowledge.ruleSet().rules()) {
            List<Finding> findings = Stream.of(false, true).filter(unsure -> !unsure || mayBeUnknown(rule))
                .map(unsure -> finding(rule, service, unsure)).filter(finding -> !finding.byStep().isEmpty()).toList();
            findings.forEach(finding -> texts.add(new Text(service, rule.id() + (finding.onlyIfUnknown() ? "?" : ""),
                knowledge.words(language).finding(finding, List.of(service)).client())));
            tests.addAll(findings.isEmpty() ? List.of() : rule.demands());
        }
        tests.forEach(test -> texts.add(
            new Text(service, "test " + test, knowledge.words(language).text("tests." + test + ".client"))));
        tests.stream().filter(test -> ConsentWords.in(language).has("limits." + test)).forEach(test -> texts.add(
            new Text(service, "limits " + test, knowledge.words(language).text("consent.limits." + test))));
        return texts;
    }

    /** What stands in every consent, whatever was booked. */
    List<String> ofEveryConsent() {
        return knowledge.words("en").own().stream().filter(path -> path.startsWith("consent."))
            .filter(path -> OF_EVERY_CONSENT.stream().anyMatch(path.substring("consent.".length())::startsWith))
            .map(knowledge.words(language)::text).toList();
    }

    /** What only staff test, measure or write down is always known. */
    private boolean mayBeUnknown(Rule rule) {
        return knowledge.words("en").find("findings." + rule.id() + ".unsure.title").isPresent();
    }

    private static Finding finding(Rule rule, Service service, boolean unsure) {
        Map<String, Weight> byStep = new LinkedHashMap<>();
        for (Step step : service.steps()) {
            Weight weight = unsure ? rule.unknownWeightOn(step) : rule.weightOn(step);
            if (weight != Weight.NOTHING_FOUND) {
                byStep.put(step.id(), weight);
            }
        }
        return new Finding(rule.id(), Weight.heaviest(byStep.values()), byStep, List.of(), List.of(), rule.demands(),
            rule.sources(), unsure, List.of(), List.of());
    }
}
