package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.api.Inputs.Input;
import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.knowledge.Case;
import foretress.knowledge.Complaint;
import foretress.knowledge.Knowledge;
import foretress.knowledge.KnowledgeException;
import foretress.knowledge.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.cert.CertificateException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * The command line in the same jar. Its own commands need no server, no database, no network: they read files or standard input, compute and print.
 * It ends with 0; with 1 when a case does not come out as it says; with 2 when something cannot be read.
 */
@CommandLine.Command(name = "foretress", description = "Without a command the server starts.",
    synopsisSubcommandLabel = "COMMAND",
    footer = { "",
        "Ends with 0; with 1 when a case does not come out as it says; with 2 when something cannot be read." })
public final class Command {
    static final int FINE = 0;
    static final int FAILED = 1;
    static final int BAD_INPUT = 2;

    private final Inputs inputs;
    private final PrintStream out;
    private final PrintStream err;
    private final Supplier<Operations> operations;

    @Option(names = { "-h", "--help" }, usageHelp = true, description = "Shows this and ends.") boolean help;

    private Command(Inputs inputs, PrintStream out, PrintStream err, Supplier<Operations> operations) {
        this.inputs = inputs;
        this.out = out;
        this.err = err;
        this.operations = operations;
    }

    /**
     * @param more commands of other rooms
     * @return the status to end with
     */
    public static int run(String[] arguments, InputStream in, PrintStream out, PrintStream err, List<?> more) {
        return run(arguments, in, out, err, () -> new Operations(Knowledge.load()), more);
    }

    static int run(String[] arguments, InputStream in, PrintStream out, PrintStream err,
        Supplier<Operations> operations, List<?> more) {
        var line = new CommandLine(new Command(new Inputs(in), out, err, once(operations)));
        more.forEach(line::addSubcommand);
        line.setOut(new java.io.PrintWriter(out, true)).setErr(new java.io.PrintWriter(err, true))
            .setUsageHelpWidth(100);
        line.setUnmatchedOptionsArePositionalParams(false);
        line.setParameterExceptionHandler((fault, given) -> misunderstood(fault, err));
        int status = line.execute(arguments);
        out.flush();
        err.flush();
        return status;
    }

    /** Reading the knowledge takes longer than everything else. */
    private static <T> Supplier<T> once(Supplier<T> make) {
        AtomicReference<T> made = new AtomicReference<>();
        return () -> made.updateAndGet(before -> before == null ? make.get() : before);
    }

    private static int misunderstood(CommandLine.ParameterException fault, PrintStream err) {
        CommandLine asked = fault.getCommandLine();
        boolean noCommand = fault instanceof UnmatchedArgumentException && asked.getParent() == null;
        err.println(noCommand ? "There is no command '%s'; there are %s, and without one the server starts.".formatted(
            ((UnmatchedArgumentException) fault).getUnmatched().get(0),
            String.join(", ", asked.getSubcommands().keySet())) : fault.getMessage());
        return BAD_INPUT;
    }

    @CommandLine.Command(name = "assess", sortOptions = false,
        description = { "Assesses cases (YAML, as in src/test/cases) and coded answers (JSON, as POST /api/v1/assess "
            + "takes them), and says what was found.",
            "A case that does not come out as it expects is named, and the command ends with 1." })
    int assess(
        @Option(names = { "-h", "--help" }, usageHelp = true, description = "Shows this and ends.") boolean asked,
        @Option(names = "--json", description = "Prints one JSON line a case or request instead of text.") boolean json,
        @Option(names = "--language", paramLabel = "TAG", defaultValue = "en",
            description = "The language of a case's findings: en, es.") String language,
        @Parameters(paramLabel = "FILE|FOLDER", arity = "0..*",
            description = "What to read; standard input, as JSON, when there is none or '-'.") List<Path> paths) {
        return withInputs(paths, true, files -> {
            Words words = words(language);
            var tried = new Tried(0, 0);
            int status = FINE;
            for (Map.Entry<String, Input> file : files.entrySet()) {
                boolean cases = Inputs.isCases(file.getKey());
                Tried of = cases ? tried(file, json, words) : Tried.NONE;
                tried = tried.plus(of);
                status = Math.max(status, cases ? of.status() : one(file, body -> answer("assess", body),
                    answer -> json ? answer.toString() : text(answer)));
            }
            if (!json && tried.cases > 0) {
                out.println("%d cases, %d failed".formatted(tried.cases, tried.failed));
            }
            return status;
        });
    }

    /** @param failed more than {@code cases} where a file could not be read */
    private record Tried(int cases, int failed) {
        static final Tried NONE = new Tried(0, 0);
        static final Tried UNREADABLE = new Tried(0, 1);

        Tried plus(Tried other) {
            return new Tried(cases + other.cases, failed + (other.equals(UNREADABLE) ? 0 : other.failed));
        }

        int status() {
            return equals(UNREADABLE) ? BAD_INPUT : failed == 0 ? FINE : FAILED;
        }
    }

    /** The cases of one file; one that cannot be read does not keep the next from being tried. */
    private Tried tried(Map.Entry<String, Input> file, boolean json, Words words) {
        try {
            return tried(Map.of(file.getKey(), Inputs.text(file.getValue().bytes())), json, words);
        } catch (KnowledgeException wrong) {
            wrong.complaints().stream().map(Complaint::toString).forEach(err::println);
        } catch (Refused refused) {
            say(file.getKey(), refused);
        }
        return Tried.UNREADABLE;
    }

    private Words words(String language) {
        if (!operations.get().knowledge().languages().contains(language)) {
            throw new Refused(400, "There are no words in '%s'; there are %s.".formatted(language,
                operations.get().knowledge().languages()), List.of());
        }
        return operations.get().knowledge().words(language);
    }

    private Tried tried(Map<String, String> file, boolean json, Words words) {
        int failed = 0;
        List<Case> cases = Case.read(operations.get().knowledge(), file);
        for (Case one : cases) {
            Assessment assessment = one.assess(operations.get().knowledge());
            List<String> faults = one.faults(assessment);
            failed += faults.isEmpty() ? 0 : 1;
            out.println(json ? line(one, assessment, faults, words) : text(one, assessment, faults, words));
        }
        return new Tried(cases.size(), failed);
    }

    private ObjectNode line(Case one, Assessment assessment, List<String> faults, Words words) {
        ObjectNode line = JsonNodeFactory.instance.objectNode().put("file", one.file()).put("case", one.name())
            .put("holds", faults.isEmpty());
        faults.forEach(line.putArray("faults")::add);
        List<Service> offered = new ArrayList<>(List.of(one.service()));
        operations.get().knowledge().ruleSet().services().stream().filter(s -> !s.id().equals(one.service().id()))
            .forEach(offered::add);
        return line.setAll(RecordShape.write(
            operations.get().assess().judged(assessment, offered, List.of(one.service().id()), words)));
    }

    private static String text(Case one, Assessment assessment, List<String> faults, Words words) {
        var text =
            new StringBuilder("%s  %s: %s%n".formatted(faults.isEmpty() ? "ok    " : "FAILED", one.file(), one.name()));
        text.append("        %s: %s%n".formatted(one.service().id(),
            assessment.standing(one.service().id()).orElseThrow().weight().code()));
        for (Finding finding : assessment.spokenOn(one.service())) {
            text.append("        %s: %s (%s)%n".formatted(finding.on(one.service()).code(),
                words.finding(finding, List.of(one.service())).title(), finding.ruleId()));
        }
        faults.forEach(fault -> text.append("        but %s%n".formatted(fault)));
        return text.toString().stripTrailing();
    }

    /** An answer in text: standings of what is booked, findings, what is owed. */
    private static String text(JsonNode answer) {
        StringBuilder text = new StringBuilder(answer.path("file").asText()).append('\n');
        answer.path("standings").forEach(s -> {
            if (s.path("booked").asBoolean()) {
                text.append("        %s: %s%s%n".formatted(s.path("service").asText(), s.path("weight").asText(),
                    s.path("unanswered").asInt() > 0
                        ? ", %d required questions not answered".formatted(s.path("unanswered").asInt()) : ""));
            }
        });
        answer.path("findings").forEach(f -> text.append("        %s: %s (%s)%n".formatted(f.path("weight").asText(),
            f.path("title").asText(), f.path("rule").asText())));
        answer.path("plan").path("owed")
            .forEach(o -> text.append("        owed: %s, %s%n".formatted(o.path("name").asText(),
                o.has("conflict") ? "no time left: " + o.path("conflict").path("reason").asText()
                    : "start by " + o.path("lastOpenStart").asText())));
        return text.append("        ").append(answer.path("caution").asText()).toString();
    }

    @CommandLine.Command(name = "read-label",
        description = "Reads ingredient lists, one a file; prints one JSON line each.")
    int readLabel(
        @Option(names = { "-h", "--help" }, usageHelp = true, description = "Shows this and ends.") boolean asked,
        @Parameters(paramLabel = "FILE", arity = "0..*",
            description = "Text; standard input when there is none or '-'.") List<Path> paths) {
        return each(paths, bytes -> answer("read-label", typed(bytes, CodedAnswers.LONGEST_TEXT)), JsonNode::toString);
    }

    @CommandLine.Command(name = "read-medicines",
        description = "Reads typed medicines, one list a file; prints one JSON line each.")
    int readMedicines(
        @Option(names = { "-h", "--help" }, usageHelp = true, description = "Shows this and ends.") boolean asked,
        @Parameters(paramLabel = "FILE", arity = "0..*",
            description = "Text; standard input when there is none or '-'.") List<Path> paths) {
        return each(paths, bytes -> answer("read-medicines", typed(bytes, ReadMedicines.LONGEST)), JsonNode::toString);
    }

    @CommandLine.Command(name = "strand-map",
        description = "Computes strand maps from coded answers (JSON, as POST /api/v1/strand-map takes them); prints one line each.")
    int strandMap(
        @Option(names = { "-h", "--help" }, usageHelp = true, description = "Shows this and ends.") boolean asked,
        @Option(names = "--svg", description = "Draws them: SVG instead of JSON.") boolean svg,
        @Parameters(paramLabel = "FILE", arity = "0..*",
            description = "JSON; standard input when there is none or '-'.") List<Path> paths) {
        return each(paths,
            bytes -> svg
                ? JsonNodeFactory.instance.objectNode().put("svg",
                    operations.get().strandMapSvg(JsonBodies.read(bytes)))
                : answer("strand-map", bytes),
            answer -> svg ? answer.get("svg").textValue() : answer.toString());
    }

    @CommandLine.Command(name = "verify-paper", sortOptions = false,
        description = { "Says of signed papers (PDF) whether a salon sealed them and whether anything changed since.",
            "A paper that is not as it was sealed ends the command with 1." })
    int verifyPaper(
        @Option(names = { "-h", "--help" }, usageHelp = true, description = "Shows this and ends.") boolean asked,
        @Option(names = "--certificate", paramLabel = "FILE", required = true,
            description = "The salon's certificates, as it gives them out under /seal.pem.") Path certificate,
        @Parameters(paramLabel = "FILE", arity = "1..*", description = "The papers.") List<Path> papers) {
        try (InputStream certificates = Files.newInputStream(certificate)) {
            return new PaperCheck(certificates, out, err).of(papers);
        } catch (IOException | CertificateException e) {
            err.println("%s holds no certificates that can be read: %s".formatted(certificate, e.getMessage()));
            return BAD_INPUT;
        }
    }

    private static byte[] typed(byte[] bytes, int most) {
        String text = Inputs.text(bytes, most);
        return JsonNodeFactory.instance.objectNode().put("text", text).toString()
            .getBytes(java.nio.charset.StandardCharsets.UTF_8);
    }

    private JsonNode answer(String operation, byte[] body) {
        return operations.get().operation(operation).answer(JsonBodies.read(body));
    }

    private int each(List<Path> paths, Function<byte[], JsonNode> work, Function<JsonNode, String> print) {
        return withInputs(paths, false,
            files -> files.entrySet().stream().mapToInt(file -> one(file, work, print)).max().orElse(FINE));
    }

    /** One input; a bad one does not keep the next from being read. */
    private int one(Map.Entry<String, Input> file, Function<byte[], JsonNode> work, Function<JsonNode, String> print) {
        try {
            ObjectNode named = JsonNodeFactory.instance.objectNode().put("file", file.getKey());
            out.println(print.apply(named.setAll((ObjectNode) work.apply(file.getValue().bytes()))));
            return FINE;
        } catch (Refused refused) {
            say(file.getKey(), refused);
            return BAD_INPUT;
        }
    }

    private interface Work {
        int on(Map<String, Input> files);
    }

    private int withInputs(List<Path> paths, boolean folders, Work work) {
        try {
            Map<String, Input> files = inputs.named(paths == null ? List.of() : paths, folders);
            if (files.isEmpty()) {
                err.println(
                    "There is nothing to read in %s: a folder holds .yaml, .yml or .json files.".formatted(paths));
                return BAD_INPUT;
            }
            return work.on(files);
        } catch (Refused refused) {
            err.println(refused.getMessage());
        } catch (IOException e) {
            err.println("%s cannot be read: %s".formatted(paths, e.getMessage()));
        }
        return BAD_INPUT;
    }

    private void say(String name, Refused refused) {
        err.println(name + ": " + refused.getMessage());
        refused.faults.forEach(fault -> err.println("  %s: %s".formatted(fault.pointer(), fault.detail())));
    }
}
