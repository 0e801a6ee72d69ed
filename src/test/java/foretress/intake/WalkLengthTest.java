package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import com.lowagie.text.pdf.PdfReader;
import foretress.MovedClock;
import foretress.salon.OpenSalon;
import foretress.visit.VisitMaker;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** How long the conversation is, from the door to "signed": pages, taps and the words that stand on them without a tap. */
@QuarkusTest
class WalkLengthTest {
    private static final String RETURNING = "returning after six weeks, nothing new";
    private static final double LONGER_THAN_ENGLISH = 1.25;
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject MovedClock clock;

    @BeforeEach
    void aSalon() {
        salon.open();
    }

    @AfterEach
    void theClock() {
        clock.reset();
    }

    /** Each with its most pages, taps and words. */
    static Stream<Arguments> clients() {
        return Stream.of(
            Arguments.of("a first colour, nothing to tell", Map.of(), 10, 30, 900),
            Arguments.of("box dye, henna and lotion, three times uncertain", boxDyeHennaAndLotion(), 14, 44, 1_400),
            Arguments.of("a black henna reaction, three medicines", blackHenna(), 14, 46, 1_400),
            Arguments.of(RETURNING, Map.of(), 4, 9, 345));
    }

    private static Map<String, List<String>> boxDyeHennaAndLotion() {
        return Map.of("darkening-lotion", List.of("some-time-ago"), "home-colour", List.of("yes"), "henna",
            List.of("dont-know"), "henna-powder", List.of("dont-know"), "last-colour-by", List.of("self"),
            "treatments.what", List.of("restorer"), "treatments.when.precision", List.of("dont-know"),
            "treatments.zone", List.of("whole"));
    }

    private static Map<String, List<String>> blackHenna() {
        return Map.of("black-tattoo", List.of("yes"), "black-tattoo-reaction", List.of("yes"), "black-tattoo-what",
            List.of("blisters"), "black-tattoo-soon", List.of("two-days"), "medicines.name",
            List.of("cetirizine", "ibuprofen", "levothyroxine"),
            "medicines.route", List.of("mouth"), "medicines.last", List.of("now"));
    }

    private Map<String, List<String>> nothingKnown() {
        Map<String, List<String>> all = new HashMap<>(knocking.knowsNothing());
        all.put("hair-length", List.of("dont-know"));
        return all;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("clients")
    @DisplayName("R52: the conversation grows no longer: pages, taps and words have a ceiling")
    void theConversationIsNoLonger(String client, Map<String, List<String>> told, int pages, int taps, int words)
        throws IOException {
        isNoLonger(told, client.equals(RETURNING), pages, taps, words);
    }

    @Test
    @DisplayName("R52: whoever knows nothing of all that is asked has a ceiling too, and a paper of at most so many pages")
    void notKnowingIsNoLonger() throws IOException {
        byte[] paper = isNoLonger(nothingKnown(), false, 12, 38, 1_320).open("/answers/copy").response().asByteArray();
        try (PdfReader read = new PdfReader(paper)) {
            assertThat(read.getNumberOfPages()).isLessThanOrEqualTo(4);
        }
    }

    @Test
    @DisplayName("R52: in every language a client with nothing to tell reads at most a quarter more than in English")
    void noLanguageIsMuchLonger() throws IOException {
        var english = new WalkLength();
        walked(english, Map.of(), "en", false);
        var softly = new SoftAssertions();
        for (String language : List.of("fr", "pl", "ar", "vi")) {
            var other = new WalkLength();
            walked(other, Map.of(), language, false);
            softly.assertThat(longer(other, english, language))
                .as("in %s%n%s%nin English%n%s", language, other, english)
                .isLessThanOrEqualTo(LONGER_THAN_ENGLISH);
        }
        softly.assertAll();
    }

    /** Vietnamese parts syllables with spaces, not words: there the letters are compared. */
    private static double longer(WalkLength other, WalkLength english, String language) {
        return language.equals("vi") ? (double) other.letters() / english.letters()
            : (double) other.words() / english.words();
    }

    private TappingWalker isNoLonger(Map<String, List<String>> told, boolean returning, int pages, int taps,
        int words) throws IOException {
        var english = new WalkLength();
        TappingWalker client = walked(english, told, "en", returning);
        assertThat(english.pages()).as("pages%n%s", english).isLessThanOrEqualTo(pages);
        assertThat(english.taps()).as("taps%n%s", english).isLessThanOrEqualTo(taps);
        assertThat(english.words()).as("words%n%s", english).isLessThanOrEqualTo(words);
        var spanish = new WalkLength();
        walked(spanish, told, "es", returning);
        assertThat((double) spanish.words()).as("words in Spanish%n%s%nin English%n%s", spanish, english)
            .isLessThanOrEqualTo(english.words() * LONGER_THAN_ENGLISH);
        return client;
    }

    private TappingWalker walked(WalkLength length, Map<String, List<String>> told, String language,
        boolean returning) throws IOException {
        UUID visit = make.visit(LocalDate.of(1965, 3, 4));
        var walker = new TappingWalker();
        if (returning) {
            walk(new WalkLength(), walker, visit, told, language);
            clock.move(Duration.ofDays(42));
            walker.with("language", language);
            visit = make.again(visit);
        }
        walk(length, walker, visit, told, language);
        Files.createDirectories(Path.of("target/walks"));
        Files.writeString(Path.of("target/walks/%d-%d-%s.txt".formatted(told.size(), returning ? 2 : 1, language)),
            length + "\n\n" + length.said());
        return walker;
    }

    @Test
    @DisplayName("R52: the minutes told at the door are counted, and are those a client with nothing to tell needs to read")
    void theDoorTellsHowLongItTakes() throws IOException {
        var length = new WalkLength();
        walked(length, Map.of(), "en", false);
        String door = new TappingWalker().with("language", "en")
            .open(knocking.link(make.visit(LocalDate.of(1965, 3, 4)))).text();
        Matcher told = Pattern.compile("About (\\d+) minutes").matcher(door);
        assertThat(told.find()).as(door).isTrue();
        assertThat(Integer.parseInt(told.group(1))).isBetween(length.words() / 200, length.words() / 200 + 6);
    }

    private void walk(WalkLength length, TappingWalker walker, UUID visit, Map<String, List<String>> told,
        String language) {
        walker.with("language", language).open(knocking.link(visit));
        length.read(walker);
        walker.send(Map.of("day", "4", "month", "3", "year", "1965"));
        Answering client = Answering.on(walker, told);
        for (length.read(walker); !walker.at().equals("/answers/sign"); length.read(walker)) {
            switch (walker.at()) {
                case "/answers/notice" -> client.agree();
                case "/answers/care" -> walker.press("a.main");
                case "/answers/last-time", "/answers/read-back" -> client.readBack();
                default -> client.page();
            }
        }
        client.sign("Ottilie Brandt");
        length.read(walker);
    }
}
