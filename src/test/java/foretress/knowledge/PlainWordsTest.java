package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a client reads is in plain words; the words of the trade that are replaced stand, with their plain ones, in a list a language. */
@DisplayName("R60: a client reads no word of the trade")
class PlainWordsTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final Path MESSAGES = Path.of("src/main/resources/messages");
    /** Names of services are what the salon sells, and the law's own sentences stay as they are; both are left out. */
    private static final Pattern FOR_CLIENTS =
        Pattern.compile("topics\\..*|questions\\..*|answers\\..*|consent\\..*|strand\\..*"
            + "|findings\\..*\\.client|tests\\..*\\.(client|plain)|ways\\.(client|lasts|grey)\\..*");

    static List<String> languages() {
        return List.copyOf(KNOWLEDGE.languages());
    }

    @ParameterizedTest
    @MethodSource("languages")
    @DisplayName("questions, answers, findings, consent, mails and pages for clients")
    void noTextForClientsHasATradeWord(String language) throws IOException {
        List<String> found = new ArrayList<>();
        for (String line : tradeWords(language)) {
            String[] said = line.split(" \\| ", 2);
            Pattern trade = Pattern.compile(said[0].strip(), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
            forClients(language).forEach((from, text) -> {
                if (trade.matcher(text).find()) {
                    found.add("%s: %s, plainly '%s'".formatted(from, text, said[1]));
                }
            });
        }
        assertThat(found).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("languages")
    @DisplayName("a test has a name of the trade for staff and a plain one for the client")
    void everyTestHasItsPlainName(String language) throws IOException {
        Words words = KNOWLEDGE.words(language);
        assertThat(KNOWLEDGE.ruleSet().tests())
            .allSatisfy(test -> assertThat(words.find("tests." + test + ".plain")).isPresent());
        assertThat(words.plainTest("incompatibility-test")).isNotEqualTo(words.test("incompatibility-test"));
        assertThat(words.plainTest("test-cutting")).isNotEqualTo(words.test("test-cutting"));
    }

    @Test
    @DisplayName("R60: who has said no, and takes a medicine nobody knows, is not told that she need not say")
    void whoHasSaidNoIsNotToldThatSheNeedNotSay() {
        for (String rule : List.of("chemotherapy-now-or-lately", "radiotherapy-now-or-lately")) {
            String unsure = "findings." + rule + ".unsure.client";
            assertThat(KNOWLEDGE.words("en").text(unsure)).doesNotContain("need not");
            assertThat(KNOWLEDGE.words("es").text(unsure)).doesNotContain("No tiene que");
        }
    }

    @Test
    void theStylistKeepsTheTermsOfTheTrade() {
        assertThat(KNOWLEDGE.words("en").test("incompatibility-test")).isEqualTo("Incompatibility test");
        assertThat(KNOWLEDGE.words("en").test("test-cutting")).isEqualTo("Test cutting");
    }

    private static List<String> tradeWords(String language) throws IOException {
        return Files.readAllLines(Path.of("src/test/reviewed/trade-words-" + language + ".txt")).stream()
            .filter(line -> !line.startsWith("#") && !line.isBlank()).toList();
    }

    private static Map<String, String> forClients(String language) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        Words words = KNOWLEDGE.words(language);
        words.own().stream().filter(path -> FOR_CLIENTS.matcher(path).matches())
            .forEach(path -> texts.put(path, words.text(path)));
        for (String bundle : List.of("say", "aftercare", "picture", "instead")) {
            read(bundle + (language.equals("en") ? "" : "_" + language) + ".properties").forEach((key, text) -> {
                if (!bundle.equals("instead") || key.toString().startsWith("client_")) {
                    texts.put(bundle + " " + key, text.toString());
                }
            });
        }
        return texts;
    }

    private static Properties read(String bundle) throws IOException {
        Properties read = new Properties();
        try (Reader from = Files.newBufferedReader(MESSAGES.resolve(bundle))) {
            read.load(from);
        }
        return read;
    }
}
