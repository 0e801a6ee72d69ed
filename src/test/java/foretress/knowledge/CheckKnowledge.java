package foretress.knowledge;

import java.nio.file.Path;

/** Checks a knowledge folder from the command line, faster than a test run: prints every fault and every missing sentence. */
public final class CheckKnowledge {
    private CheckKnowledge() {}

    public static void main(String[] args) {
        Path folder = Path.of(args.length > 0 ? args[0] : "src/main/knowledge");
        var reader = new KnowledgeReader(KnowledgeFiles.ofFolder(folder));
        Knowledge knowledge = reader.read();
        reader.complaints().all().forEach(System.out::println);
        WordsCheck.missing(knowledge).forEach(System.out::println);
        System.out.printf("%d questions, %d facts, %d rules, %d faults%n", knowledge.questionnaire().questions().size(),
            knowledge.ruleSet().facts().size(), knowledge.ruleSet().rules().size(), reader.complaints().all().size());
    }
}
