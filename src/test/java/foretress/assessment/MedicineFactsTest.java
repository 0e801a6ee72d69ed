package foretress.assessment;

import static foretress.assessment.Told.aClient;
import static foretress.assessment.Told.computed;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer;
import foretress.questionnaire.Medicine;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What medicines come to, read by a lexicon of a few invented names")
class MedicineFactsTest {
    private static final Map<String, Set<String>> CLASSES = Map.of("thinna", Set.of("thinner"), "vitana",
        Set.of("retinoid"), "calma", Set.of("calcineurin", "immune"), "immuna", Set.of("immune"), "salva",
        Set.of("calcineurin"));
    private static final FactDef THINNER =
        computed("thinner", "medicine", List.of("thinner"), "none", "taken");
    private static final FactDef IMMUNE = computed("immune", "medicine", List.of("immune"), "none", "taken");
    private static final FactDef CREAM =
        computed("cream", "skin-steroid", List.of("calcineurin"), "none", "elsewhere", "masking");

    private static final Lexicon NAMES = new Lexicon() {
        @Override
        public List<String> names(String typed) {
            return Arrays.asList(typed.split(" and "));
        }

        @Override
        public Set<String> medicine(String typed) {
            return CLASSES.getOrDefault(typed, Set.of());
        }

        @Override
        public Label label(String text) {
            throw new UnsupportedOperationException();
        }
    };

    private static Medicine taking(String name, String route, String last) {
        return new Medicine(name, "not-asked", route, last);
    }

    private static Told client(Medicine... medicines) {
        return aClient().readBy(NAMES).said("medicines", new Answer.Medicines(List.of(medicines)));
    }

    private static FactDef within(String id, String as, int months, String... classes) {
        return new FactDef(id, List.of(classes), List.of(), Optional.of(new FactDef.Computation(ComputedAs.of(as),
            List.of(id), Optional.empty(), Optional.of(Figure.of(months)))));
    }

    @ParameterizedTest(name = "{0}, last taken {1}: {2}")
    @CsvSource({ "thinna, now, taken", "thinna, month, taken", "thinna, dont-know, taken",
        "thinna, longer, none..taken",
        "vitana, now, none", "mystery, now, none" })
    void whatWasLastTakenLongAgoMayStillCount(String name, String last, String means) {
        assertThat(client(taking(name, "mouth", last)).fact(THINNER)).hasToString("thinner = " + means);
    }

    /** "Longer than a month ago" can be within two months, and cannot be within one. */
    @ParameterizedTest(name = "counts for {0} months: {1}")
    @CsvSource({ "1, none", "2, none..taken" })
    void whatCountsForAMonthIsOverAfterIt(int months, String means) {
        Medicine longAgo = taking("thinna", "mouth", "longer");
        assertThat(client(longAgo).fact(within("thinner", "medicine", months, "none", "taken")))
            .hasToString("thinner = " + means);
        FactDef retinoid = within("retinoid", "retinoid", months, "none", "on-skin", "taken");
        assertThat(client(taking("vitana", "mouth", "longer")).fact(retinoid)).hasToString("retinoid = " + means);
        assertThat(client(taking("vitana", "skin", "longer")).fact(retinoid)).hasToString("retinoid = none");
        assertThat(client(taking("vitana", "mouth", "month")).fact(retinoid)).hasToString("retinoid = taken");
    }

    @ParameterizedTest(name = "{0}, {1}: through the body {2}, on the skin {3}")
    @CsvSource({ "calma, mouth, taken, none", "calma, skin, none, masking", "calma, skin-elsewhere, none, elsewhere",
        "calma, dont-know, taken, masking", "immuna, skin, taken, none", "salva, mouth, none, none" })
    void anOintmentCountsWhereItIsPutAndNotThroughTheBody(String name, String route, String body, String skin) {
        Told client = client(taking(name, route, "now"));
        assertThat(client.fact(IMMUNE, CREAM)).hasToString("immune = " + body);
        assertThat(client.fact(CREAM)).hasToString("cream = " + skin);
    }

    @Test
    void whatIsPutOnTheSkinCountsThereForAFactThatLooksForIt() {
        FactDef salves = computed("salves", "medicine", List.of("calcineurin"), "none", "taken");
        assertThat(client(taking("salva", "skin", "now")).fact(salves, CREAM)).hasToString("salves = taken");
    }

    @Test
    void ofSeveralTheHeavierCountsWhicheverStandsFirst() {
        Medicine longAgo = taking("thinna", "mouth", "longer");
        Medicine now = taking("thinna", "mouth", "now");
        Medicine other = taking("vitana", "mouth", "now");
        assertThat(client(longAgo, now).fact(THINNER)).hasToString("thinner = taken");
        assertThat(client(now, other, longAgo).fact(THINNER)).hasToString("thinner = taken");
        assertThat(client(other, longAgo).fact(THINNER)).hasToString("thinner = none..taken");
        assertThat(client(taking("vitana and thinna", "mouth", "now")).fact(THINNER)).hasToString("thinner = taken");
        assertThat(client().fact(THINNER)).hasToString("thinner = none");
    }

    @Test
    void theNamesThatMadeItSoStandBesideIt() {
        FactValue found = client(taking("vitana and thinna", "mouth", "now")).fact(THINNER);
        assertThat(found.read()).extracting(ReadAs::typed).containsExactly("thinna");
        assertThat(found.causes()).containsExactly("medicines");
        assertThat(client(taking("vitana", "mouth", "now")).fact(THINNER).read()).isEmpty();
    }

    @Test
    void aNameNobodyKnowsIsSaidAndWhoDoesNotSayMayTakeAnything() {
        FactDef unknown = computed("unknown", "unknown-medicine", List.of(), "none", "some");
        assertThat(client(taking("thinna", "mouth", "now")).fact(unknown)).hasToString("unknown = none");
        assertThat(client(taking("mystery", "mouth", "now")).fact(unknown)).hasToString("unknown = some");
        Told silent = aClient().readBy(NAMES).said("medicines", Answer.RATHER_NOT_SAY);
        assertThat(silent.fact(THINNER)).hasToString("thinner = none..taken");
        assertThat(silent.fact(unknown)).hasToString("unknown = none..some");
        assertThat(silent.fact(computed("looked-up", "looked-up-medicine", List.of(), "none", "some")))
            .as("no name, so none was looked up").hasToString("looked-up = none");
    }
}
