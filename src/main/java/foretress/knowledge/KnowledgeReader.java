package foretress.knowledge;

import foretress.assessment.KnownTreatments;
import foretress.assessment.Policy;
import foretress.assessment.RuleSet;
import foretress.assessment.Source;
import foretress.assessment.Ways;
import foretress.questionnaire.Questionnaire;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;

/** Reads all knowledge files, each kind on the ground of the kinds before it, and gathers what is wrong with them. */
final class KnowledgeReader {
    private final KnowledgeFiles files;
    private final Complaints complaints = new Complaints();

    KnowledgeReader(KnowledgeFiles files) {
        this.files = files;
    }

    Complaints complaints() {
        return complaints;
    }

    Knowledge read() {
        var services = new ServicesReader();
        one("services.yaml").ifPresent(file -> file.trying(services::read));
        var questions = new QuestionnaireReader(services);
        Questionnaire questionnaire = questions.read(all("questionnaire"));
        var treatments = new TreatmentsReader(questionnaire, questions);
        one("treatments.yaml").ifPresent(file -> file.trying(treatments::read));
        treatments.checkAllAreThere();
        services.checkAfterwards(questionnaire);
        var contradictions = new ContradictionsReader(questionnaire);
        all("contradictions.yaml").forEach(file -> file.trying(contradictions::read));
        Map<String, Source> sources = new LinkedHashMap<>();
        one("sources.yaml").ifPresent(file -> file.trying(f -> sources.putAll(SourcesReader.read(f))));
        var facts = new FactsReader(questionnaire);
        one("facts.yaml").ifPresent(file -> file.trying(facts::read));
        one("cues.yaml").ifPresent(file -> file.trying(facts::readCues));
        facts.unread().forEach(
            id -> questions.complain(id, "no fact reads '%s'; read it, or mark it 'record: yes'".formatted(id)));
        var rules = new RulesReader(facts.facts().values(), services, sources.keySet());
        all("rules").forEach(file -> file.trying(rules::read));
        rules.checkVoices();
        services.checkSkinTests(rules.rules());
        var ruleSet =
            new RuleSet(List.copyOf(facts.facts().values()),
                new KnownTreatments(treatments.kinds(), facts.cues(), facts.slowing()),
                rules.rules(), List.copyOf(services.steps().values()),
                services.services(), List.copyOf(services.tests()), sources, files.hash());
        AtomicReference<Ways> ways = new AtomicReference<>(Ways.NONE);
        all("ways.yaml").forEach(file -> file.trying(
            f -> ways.set(new WaysReader(services, facts.facts().values(), sources.keySet()).read(f))));
        return new Knowledge(questionnaire, contradictions.contradictions(), ruleSet, services.all(), services.aims(),
            ways.get(), policies(sources, services), words(),
            new LexiconReader(files, complaints).read());
    }

    private Map<String, Policy> policies(Map<String, Source> sources, ServicesReader services) {
        Map<String, Policy> policies = new LinkedHashMap<>();
        var reader = new PolicyReader(sources.keySet(), services.chemistries());
        all("policy").forEach(file -> file.trying(f -> {
            Policy policy = reader.read(f);
            if (policies.putIfAbsent(policy.jurisdiction(), policy) != null) {
                f.at("jurisdiction").complain("two policies are for '%s'".formatted(policy.jurisdiction()));
            }
        }));
        return policies;
    }

    private Map<String, Words> words() {
        Map<String, WordsReader> readers = new TreeMap<>();
        files.under("words").forEach((path, text) -> {
            String[] parts = path.split("/");
            WordsReader reader = readers.computeIfAbsent(parts[1], language -> new WordsReader());
            String stem = parts[parts.length - 1].replaceFirst("\\.yaml$", "");
            Yaml.read(path, text, complaints).ifPresent(file -> file.trying(f -> reader.read(stem, f)));
        });
        Map<String, String> english = readers.containsKey("en") ? readers.get("en").sentences() : Map.of();
        Map<String, Words> words = new LinkedHashMap<>();
        readers.forEach((language, reader) -> {
            Map<String, String> filled = new LinkedHashMap<>(english);
            filled.putAll(reader.sentences());
            words.put(language, new Words(language, filled, reader.sentences().keySet()));
        });
        return words;
    }

    private Optional<Yaml> one(String path) {
        if (files.under(path).isEmpty()) {
            complaints.add(new Complaint(path, 1, 1, 1, "this file is missing", ""));
        }
        return all(path).stream().findFirst();
    }

    private List<Yaml> all(String path) {
        return files.under(path).entrySet().stream()
            .flatMap(file -> Yaml.read(file.getKey(), file.getValue(), complaints).stream()).toList();
    }
}
