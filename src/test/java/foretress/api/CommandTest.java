package foretress.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command line, in this process. */
@Execution(ExecutionMode.CONCURRENT)
class CommandTest {
    private static final String EXAMPLES = "src/main/resources/foretress/api/examples/";
    private static final String HOLDS = """
        - name: lotion two summers ago
          given: { service: highlights, treatments: [{ what: restorer, when: summer 2024 }] }
          expect: { standing: test first, findings: [metal-meets-peroxide] }
        """;

    @TempDir Path folder;

    private record Ended(int status, List<String> out, List<String> err) {}

    private static Ended run(String typed, String... arguments) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        int status = Command.run(arguments, new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8), () -> OperationsTest.OPERATIONS, List.of());
        return new Ended(status, out.toString(StandardCharsets.UTF_8).lines().toList(),
            err.toString(StandardCharsets.UTF_8).lines().toList());
    }

    private static JsonNode json(String line) {
        try {
            return JsonBodies.JSON.readTree(line);
        } catch (JsonProcessingException e) {
            throw new AssertionError(line, e);
        }
    }

    private String file(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text).toString();
    }

    @Test
    void everyCaseBesideTheRulesHoldsOnTheCommandLineToo() {
        Ended ended = run("", "assess", "src/test/cases");
        assertThat(ended.status()).isZero();
        assertThat(ended.out().get(ended.out().size() - 1)).matches("\\d{3,} cases, 0 failed");
    }

    @Test
    void aCaseThatDoesNotHoldIsNamedAndEndsWithOne() throws IOException {
        String wrong = file("wrong.yaml", HOLDS.replace("test first", "nothing found"));
        Ended ended = run("", "assess", wrong);
        assertThat(ended.status()).isEqualTo(Command.FAILED);
        assertThat(String.join("\n", ended.out())).contains("FAILED", "lotion two summers ago",
            "highlights must be 'nothing found' and is 'test first'", "1 cases, 1 failed");
    }

    @Test
    void aFolderIsReadToItsBottomAndPrintedALineACase() throws IOException {
        file("a.yaml", HOLDS);
        file("deeper/b.yml", HOLDS.replace("test first", "prevents"));
        file("deeper/c.json", OpenApi.example("restorer-before-highlights").toString());
        file("notes.txt", "not ours");
        Ended ended = run("", "assess", "--json", folder.toString());
        assertThat(ended.status()).isEqualTo(Command.FAILED);
        assertThat(ended.out()).hasSize(3);
        assertThat(json(ended.out().get(0)).get("holds").asBoolean()).isTrue();
        assertThat(json(ended.out().get(1)).get("faults").toString()).contains("must be 'prevents'");
        assertThat(json(ended.out().get(2)).at("/plan/owed").size()).isPositive();
    }

    @Test
    void aRequestIsAnsweredAsOverTheNetwork() {
        Ended ended = run(OpenApi.example("restorer-before-highlights").toString(), "assess", "--json");
        JsonNode expected =
            OperationsTest.OPERATIONS.operation("assess").answer(OpenApi.example("restorer-before-highlights"));
        JsonNode found = json(ended.out().get(0));
        assertThat(ended.status()).isZero();
        assertThat(found.get("file").asText()).isEqualTo("-");
        assertThat(found.get("findings").equals(json(expected.toString()).get("findings"))).isTrue();
        assertThat(run(OpenApi.example("nothing-to-report").toString(), "assess").out())
            .anyMatch(l -> l.contains("cut-and-dry: nothing found")).last().asString()
            .contains("never replaces it");
    }

    @Test
    void whatCannotBeReadEndsWithTwoAndSaysWhere() throws IOException {
        Ended yaml = run("", "assess", file("bad.yaml", HOLDS.replace("restorer", "restorrer")));
        assertThat(yaml.status()).isEqualTo(Command.BAD_INPUT);
        assertThat(yaml.err().get(0)).contains("bad.yaml:2:", "did you mean 'restorer'?");
        Ended json = run("", "assess", file("bad.json", "{\"now\": 1}"));
        assertThat(json.status()).isEqualTo(Command.BAD_INPUT);
        assertThat(json.err()).anyMatch(line -> line.contains("/now:"))
            .anyMatch(line -> line.contains("/answers: this field is missing"));
        assertThat(run("", "assess", folder.resolve("none.yaml").toString()).err()).singleElement().asString()
            .contains("There is no file");
        assertThat(run("", "assess", Files.createDirectory(folder.resolve("empty")).toString()).status())
            .isEqualTo(Command.BAD_INPUT);
        assertThat(run("not json", "strand-map").status()).isEqualTo(Command.BAD_INPUT);
        assertThat(run("", "read-label").status()).isEqualTo(Command.BAD_INPUT);
        assertThat(run("", "assess", "--language", "xx", file("fine.yaml", HOLDS)).err()).singleElement().asString()
            .contains("'xx'");
    }

    @Test
    void aBadFileDoesNotKeepTheNextFromBeingRead() throws IOException {
        Ended ended = run("", "read-label", file("empty.txt", " "), file("lotion.txt", "Aqua, Lead Acetate"));
        assertThat(ended.status()).isEqualTo(Command.BAD_INPUT);
        assertThat(json(ended.out().get(0)).get("found").findValuesAsText("risk")).contains("metal-residue");
    }

    @Test
    void labelsAndMedicinesComeFromStandardInputOrFilesALineEach() throws IOException {
        assertThat(json(run("Aqua, Lead Acetate\n", "read-label").out().get(0)).get("found").findValuesAsText("cas"))
            .contains("301-04-2");
        Ended two = run("", "read-medicines", file("a.txt", "prednisolone 20 mg"), file("b.txt", "zorbelon"));
        assertThat(two.out()).hasSize(2);
        assertThat(json(two.out().get(1)).at("/names/0/sureness").asText()).isEqualTo("not-recognised");
    }

    @Test
    void aStrandMapIsToldOrDrawn() {
        assertThat(json(run("", "strand-map", EXAMPLES + "restorer-two-summers-ago.json").out().get(0))
            .get("metalSuspected").asBoolean()).isTrue();
        assertThat(run("", "strand-map", "--svg", EXAMPLES + "restorer-two-summers-ago.json").out().get(0))
            .startsWith("<svg");
    }

    @Test
    void wordsComeInTheLanguageAskedFor() throws IOException {
        String spanish = String.join("\n", run("", "assess", "--language", "es", file("a.yaml", HOLDS)).out());
        assertThat(spanish).contains("metal-meets-peroxide").doesNotContain("Metal residue suspected");
    }

    @ParameterizedTest
    @ValueSource(strings = { "serve", "asses", "--frob", "-x" })
    void whatIsNoCommandIsOneClearSentence(String argument) {
        Ended ended = run("", argument);
        assertThat(ended.status()).isEqualTo(Command.BAD_INPUT);
        assertThat(ended.err()).singleElement().asString().contains(argument, "assess", "the server starts");
        assertThat(ended.out()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = { "--help", "assess --help", "read-label -h", "read-medicines --help", "strand-map --help" })
    void helpIsThereForEveryCommand(String line) {
        Ended ended = run("", line.split(" "));
        assertThat(ended.status()).isZero();
        assertThat(ended.out().get(0)).startsWith("Usage: foretress");
        assertThat(ended.err()).isEmpty();
    }

    @Test
    @DisplayName("R50: an empty file, one too long, a folder and one that is not there are each told truly, and the rest is read")
    void oneBadFileDoesNotStopABatch() throws IOException {
        String good = file("good.txt", "Aqua, Resorcinol");
        Ended ended = run("", "read-label", file("empty.txt", " \n"), file("long.txt", "a, ".repeat(4_000)),
            folder.toString(), folder.resolve("none.txt").toString(), good);
        assertThat(ended.status()).isEqualTo(Command.BAD_INPUT);
        assertThat(ended.out()).singleElement().satisfies(line -> assertThat(line).contains("RESORCINOL"));
        assertThat(ended.err()).hasSize(4);
        assertThat(ended.err().get(0)).endsWith("empty.txt: There is nothing in it to read.");
        assertThat(ended.err().get(1)).contains("long.txt: It holds 11999 letters, and at most 10000 are read at once");
        assertThat(ended.err().get(2)).endsWith("It is a folder; this command reads files.");
        assertThat(ended.err().get(3)).contains("none.txt: There is no file ");
    }

    @Test
    @DisplayName("R50: a file of cases that cannot be read does not keep the next from being tried")
    void badCasesDoNotStopABatch() throws IOException {
        Ended ended = run("", "assess", file("bad.yaml", "- name: [\n"), file("good.yaml", HOLDS));
        assertThat(ended.status()).isEqualTo(Command.BAD_INPUT);
        assertThat(String.join("\n", ended.out())).contains("lotion two summers ago", "1 cases, 0 failed");
        assertThat(String.join("\n", ended.err())).contains("bad.yaml");
    }
}
