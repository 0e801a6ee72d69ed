package foretress.knowledge;

import foretress.assessment.FactDef;
import foretress.assessment.Rule;
import foretress.assessment.Service;
import foretress.assessment.Step;
import foretress.assessment.Ways;
import foretress.assessment.Weight;
import foretress.questionnaire.Question;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Finds what still lacks words: ids in English; every English sentence in the other languages, or all that a client reads where they
 * have none for staff. */
final class WordsCheck {
    private WordsCheck() {}

    /** One line for each missing or superfluous sentence. */
    static List<String> missing(Knowledge knowledge) {
        List<String> missing = new ArrayList<>();
        Set<String> english = new TreeSet<>(knowledge.words("en").own());
        paths(knowledge).stream().filter(path -> !said(english, path)).forEach(path -> missing.add("en lacks " + path));
        missing.addAll(forNothing(knowledge));
        for (String language : knowledge.languages()) {
            Set<String> own = knowledge.words(language).own();
            boolean forStaff = own.stream().anyMatch(path -> !Words.isForClients(path));
            english.stream().filter(path -> !own.contains(path) && (forStaff || Words.isForClients(path)))
                .forEach(path -> missing.add(language + " lacks " + path));
            own.stream().filter(path -> !english.contains(path))
                .forEach(path -> missing.add(language + " has " + path + ", which en has not"));
        }
        return missing;
    }

    /** Words of a finding for a step, a chemistry or an aim on which its rule does not weigh: nobody would ever read them. */
    private static List<String> forNothing(Knowledge knowledge) {
        return knowledge.ruleSet().rules().stream().flatMap(rule -> knowledge.words("en").own().stream()
            .filter(path -> path.startsWith("findings." + rule.id() + ".for.")
                || path.startsWith("findings." + rule.id() + ".unsure.for."))
            .filter(path -> !weighs(knowledge, rule, path.replaceFirst("^.*\\.for\\.([^.]+)\\..*$", "$1")))
            .map(path -> "en has " + path + ", on which the rule does not weigh")).toList();
    }

    private static boolean weighs(Knowledge knowledge, Rule rule, String kind) {
        Stream<Step> forAim = knowledge.ruleSet().services().stream().filter(service -> service.aims().contains(kind))
            .flatMap(service -> service.steps().stream());
        Stream<Step> steps = knowledge.ruleSet().steps().stream()
            .filter(step -> step.id().equals(kind) || step.uses().contains(kind));
        return Stream.concat(forAim, steps).anyMatch(step -> rule.weightOn(step) != Weight.NOTHING_FOUND);
    }

    /** A name may be the value itself, or stand under {@code name}. */
    private static boolean said(Set<String> english, String path) {
        return english.contains(path) || english.contains(path + ".name");
    }

    private static Set<String> paths(Knowledge knowledge) {
        Set<String> paths = new LinkedHashSet<>();
        knowledge.questionnaire().topics().forEach(topic -> paths.add("topics." + topic.id() + ".title"));
        knowledge.questionnaire().topics().stream().filter(topic -> !topic.list().isEmpty())
            .forEach(topic -> paths.add("topics." + topic.id() + ".list"));
        knowledge.questionnaire().questions().forEach(question -> question(question, paths));
        for (Rule rule : knowledge.ruleSet().rules()) {
            List.of("title", "do", "client").forEach(part -> paths.add("findings." + rule.id() + "." + part));
        }
        knowledge.ruleSet().services().stream().map(Service::id).forEach(id -> paths.add("services." + id));
        knowledge.aims().forEach(id -> paths.add("aims." + id));
        knowledge.ruleSet().steps().stream().map(Step::id).forEach(id -> paths.add("steps." + id));
        ways(knowledge.ways(), paths);
        knowledge.chemistries().ofProductLines().forEach(id -> paths.add("services.chemistries." + id));
        knowledge.ruleSet().tests().forEach(id -> paths.add("tests." + id));
        knowledge.ruleSet().facts().stream().map(FactDef::id).forEach(id -> paths.add("facts." + id));
        return paths;
    }

    private static void ways(Ways ways, Set<String> paths) {
        ways.does().forEach((service, does) -> {
            List.of("can.", "cannot.", "client.").forEach(part -> paths.add("ways." + part + service));
            does.grey().ifPresent(grey -> paths.add("ways.grey." + grey));
            paths.add("ways.lasts." + does.lasts());
        });
        ways.holdsBack().forEach(held -> paths.add("ways.held-back." + held.id()));
    }

    private static void question(Question question, Set<String> paths) {
        String at = "questions." + question.id() + ".";
        List.of("ask", "why", "short").forEach(part -> paths.add(at + part));
        question.options().forEach(code -> paths.add(at + "options." + code));
    }
}
