package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.salon.OpenSalon;
import foretress.visit.VisitMaker;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** How long the conversation is, from the door to "signed": pages, taps and the words that stand on them without a tap. */
@QuarkusTest
class WalkLengthTest {
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;

    @BeforeEach
    void aSalon() {
        salon.open();
    }

    static Stream<Arguments> clients() {
        return Stream.of(
            Arguments.of("a first colour, nothing to tell", Map.of(), 17, 2_250),
            Arguments.of("box dye, henna and lotion, three times uncertain", boxDyeHennaAndLotion(), 20, 2_650),
            Arguments.of("a black henna reaction", blackHenna(), 21, 2_800));
    }

    private static Map<String, List<String>> boxDyeHennaAndLotion() {
        return Map.of("darkening-lotion", List.of("some-time-ago"), "home-colour", List.of("yes"), "henna",
            List.of("dont-know"), "henna-powder", List.of("dont-know"), "last-colour-by", List.of("self"),
            "treatments.what", List.of("restorer"), "treatments.when.precision", List.of("dont-know"),
            "treatments.zone", List.of("whole"));
    }

    private static Map<String, List<String>> blackHenna() {
        return Map.of("black-tattoo", List.of("yes"), "black-tattoo-reaction", List.of("yes"), "black-tattoo-what",
            List.of("blisters"), "black-tattoo-soon", List.of("two-days"), "medicines.name", List.of("cetirizine"),
            "medicines.route", List.of("mouth"), "medicines.last", List.of("now"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("clients")
    @DisplayName("R52: the conversation grows no longer: pages and words have a ceiling")
    void theConversationIsNoLonger(String client, Map<String, List<String>> told, int pages, int words) {
        WalkLength length = walked(told);
        assertThat(length.pages()).as("pages%n%s", length).isLessThanOrEqualTo(pages);
        assertThat(length.words()).as("words%n%s", length).isLessThanOrEqualTo(words);
    }

    private WalkLength walked(Map<String, List<String>> told) {
        Walker walker = new Walker().open(knocking.link(make.visit(LocalDate.of(1965, 3, 4))));
        var length = new WalkLength();
        length.read(walker);
        length.read(walker.send(Map.of("language", "en")));
        length.read(walker.send(Map.of("day", "4", "month", "3", "year", "1965")));
        Answering client = Answering.on(walker, told).agree();
        for (length.read(walker); !walker.at().equals("/answers/read-back"); length.read(walker)) {
            if (walker.at().equals("/answers/care")) {
                walker.open(walker.only("a.main").attr("href"));
            } else {
                client.page();
            }
        }
        client.readBack();
        length.read(walker);
        client.sign("Ottilie Brandt");
        length.read(walker);
        return length;
    }
}
