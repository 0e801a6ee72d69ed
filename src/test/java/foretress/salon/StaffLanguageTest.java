package foretress.salon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.web.StaffLanguage;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Staff read their screens in English or Spanish, each her own choice. */
@QuarkusTest
class StaffLanguageTest {
    private static final Path MESSAGES = Path.of("src/main/resources/messages");
    private static final Pattern PLACE = Pattern.compile("\\{[a-zA-Z.]+}");

    @Inject OpenSalon salon;

    @BeforeEach
    void open() {
        salon.open();
        reads("edda", "en");
    }

    @AfterEach
    void english() {
        reads("edda", "en");
    }

    private static void reads(String login, String tag) {
        QuarkusTransaction.requiringNew().run(() -> Staff.byLogin(login).orElseThrow().reads(tag));
    }

    @Test
    void whoChoosesSpanishReadsSpanishOnEveryPageAndInEveryMistakeAndNobodyElseDoes() {
        Walker edda = salon.as("edda").open("/password").send("#language", Map.of("language", "es")).expect(200);
        assertThat(edda.only("html").attr("lang")).isEqualTo("es");
        edda.send("form[action='/password']", Map.of("current", "wrong", "password", "x", "password-again", "x"))
            .expect(422);
        assertThat(edda.page().text()).contains("contraseña").doesNotContain("password");
        assertThat(edda.open("/services").page().text()).contains("Decoloración, todo el pelo")
            .doesNotContain("Lightening, whole");
        assertThat(salon.as("sanna").open("/desk").only("html").attr("lang")).isEqualTo("en");
    }

    @Test
    void aLanguageWithoutWordsForStaffChangesNothing() {
        Walker edda = salon.as("edda").open("/password").send("#language", Map.of("language", "xx")).expect(200);
        assertThat(edda.only("html").attr("lang")).isEqualTo("en");
    }

    static Stream<String> bundles() {
        try (Stream<Path> all = Files.list(MESSAGES)) {
            return all.map(file -> file.getFileName().toString().replace(".properties", ""))
                .filter(name -> !name.contains("_")).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("bundles")
    @DisplayName("every sentence of staff's and clients' screens has its Spanish, with the same places to fill")
    void everySentenceIsThere(String bundle) {
        for (String tag : StaffLanguage.TAGS.stream().skip(1).toList()) {
            Map<String, Set<String>> english = places(bundle), other = places(bundle + "_" + tag);
            assertThat(other).as(tag).isEqualTo(english);
        }
    }

    private static Map<String, Set<String>> places(String bundle) {
        return lines(bundle).stream().filter(line -> !line.startsWith("#") && line.contains("="))
            .collect(Collectors.toMap(line -> line.substring(0, line.indexOf('=')),
                line -> PLACE.matcher(line).results().map(found -> found.group().replace(".comma", ""))
                    .collect(Collectors.toSet())));
    }

    private static List<String> lines(String bundle) {
        try {
            return Files.readAllLines(MESSAGES.resolve(bundle + ".properties"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    @DisplayName("a bundle that code is handed speaks the language of the page, and not the default one alone")
    void whatCodeSaysIsInThePagesLanguageToo() throws IOException {
        Path main = Path.of("src/main/java/foretress");
        String standIns = Files.readString(main.resolve("start/StaffBundles.java"));
        try (Stream<Path> files = Files.walk(main)) {
            List<String> sources = files.filter(file -> file.toString().endsWith("Words.java"))
                .map(file -> read(file)).filter(text -> text.contains("@MessageBundle(")).toList();
            List<String> bundles = sources.stream().map(text -> text.replaceAll("(?s).*interface (\\w+) .*", "$1"))
                .toList();
            assertThat(bundles).hasSizeGreaterThan(15).contains("ToldWords", "InsteadWords");
            List<String> handed = bundles.stream().filter(StaffLanguageTest::isHandedToCode).toList();
            assertThat(handed).allSatisfy(bundle -> assertThat(standIns).contains("spoken(" + bundle + ".class"));
        }
    }

    private static boolean isHandedToCode(String bundle) {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/foretress"))) {
            return files.filter(file -> file.toString().endsWith(".java"))
                .anyMatch(file -> read(file).contains("private final " + bundle + " "));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
