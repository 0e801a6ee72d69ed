package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.FactValue;
import foretress.assessment.Leaflet;
import foretress.assessment.Situation;
import foretress.assessment.SkinTestDoubts;
import foretress.assessment.TestFact;
import foretress.assessment.TestStanding;
import foretress.assessment.TestStanding.Reason;
import foretress.assessment.Validity;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.SaidDate;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What makes a negative skin test worthless, and that every reason is named. Days of a fixed June. */
class SkinTestDoubtsTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    private static final LocalDate STARTED = LocalDate.of(2026, 6, 7);
    private static final Set<String> COLOUR = Set.of("oxidative-dye", "peroxide", "alkali");
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final SkinTestDoubts DOUBTS = KNOWLEDGE.skinTestDoubts();
    private static final Answers WELL = new BaseClient(KNOWLEDGE).complete(Answers.NONE, COLOUR, Set.of());

    @Test
    void whatIsReadAfterTheWaitWithNothingAgainstItStands() {
        assertThat(DOUBTS.standing(negative(), situation(WELL)).stands()).isTrue();
        assertThat(DOUBTS.masking(situation(WELL))).isEmpty();
        assertThat(DOUBTS.since(STARTED, WELL, situation(WELL))).isEmpty();
    }

    /** Levian 2021: above 10 mg of prednisone a day; clinics' instructions: a cream on the site within seven days. */
    @ParameterizedTest
    @CsvSource({ "prednisone, high, mouth, now, steroid-tablets", "prednisone, dont-know, mouth, now, steroid-tablets",
        "prednisone, low, mouth, now, ''", "clobetasol, not-asked, skin, week, skin-steroid",
        "clobetasol, not-asked, skin, month, ''",
        "methotrexate, not-asked, mouth, now, immune-medicine", "cetirizine, not-asked, mouth, now, ''" })
    void aMedicineThatHidesReactionsIsNamed(String name, String dose, String route, String last, String expected) {
        Answers taking = WELL.with("medicines", new Answer.Medicines(List.of(new Medicine(name, dose, route, last))));
        assertThat(DOUBTS.masking(situation(taking))).isEqualTo(expected.isEmpty() ? List.of() : List.of(expected));
        assertThat(DOUBTS.standing(negative(), situation(taking)).by(Reason.MASKED_NOW))
            .isEqualTo(expected.isEmpty() ? List.of() : List.of(expected));
    }

    @Test
    void medicinesNobodyWasAskedAboutMayHideOne() {
        assertThat(DOUBTS.masking(situation(Answers.NONE))).containsExactlyInAnyOrder("steroid-tablets", "skin-steroid",
            "immune-medicine");
        assertThat(DOUBTS.masking(situation(WELL.with("medicines", Answer.RATHER_NOT_SAY)))).hasSize(3);
    }

    /** Label of the EU's dye entries: a temporary black tattoo may raise the risk; one of unknown kind counts. */
    @ParameterizedTest
    @CsvSource({ "yes, 2026-06-08, true", "kind-unknown, 2026-06-08, true", "kind-unknown, 2026-06-07, true",
        "yes, 2026-06-06, false",
        "brown-only, 2026-06-08, false", "no, 2026-06-08, false" })
    void aTattooSinceTheTestOvertakesIt(String kind, String when, boolean overtaken) {
        Answers then = WELL.with("black-tattoo", Answer.Chosen.of(kind));
        Answers now = then.with("black-tattoo-when", new Answer.Said(new SaidDate.OnDay(LocalDate.parse(when))));
        assertThat(DOUBTS.since(STARTED, then, situation(now)))
            .isEqualTo(overtaken ? List.of("black-tattoo") : List.of());
        assertThat(DOUBTS.standing(negative(), situation(now)).by(Reason.OVERTAKEN))
            .isEqualTo(overtaken ? List.of("black-tattoo") : List.of());
    }

    @Test
    void aDateNobodyKnowsMayBeSince() {
        Answers unknown =
            WELL.with("black-tattoo", Answer.Chosen.of("yes")).with("black-tattoo-when", Answer.DONT_KNOW);
        assertThat(DOUBTS.since(STARTED, unknown, situation(unknown))).containsExactly("black-tattoo");
    }

    @ParameterizedTest
    @CsvSource({ "clothing-dye", "rubber", "sunscreen", "numbing-cream", "numbing-injection", "sulfa-antibiotic" })
    void aReactionElsewhereSinceOvertakesIt(String to) {
        Answers now = WELL.with("elsewhere-reaction", Answer.Chosen.of(to)).with("elsewhere-reaction-when",
            new Answer.Said(new SaidDate.OnDay(TODAY)));
        assertThat(DOUBTS.since(STARTED, now, situation(now))).containsExactly("elsewhere-reaction");
    }

    /** Repeated after a long illness or a pregnancy: common practice, no source. Only what is new since the test counts. */
    @ParameterizedTest
    @CsvSource({ "pregnancy, no, yes, true", "pregnancy, yes, yes, false", "pregnancy, no, dont-know, true",
        "illness-lately, none, long-illness, true", "illness-lately, long-illness, long-illness, false" })
    void whatTheClientSaysOnlySinceTheTestOvertakesIt(String question, String before, String after, boolean overtaken) {
        Answers then = WELL.with(question, answer(before));
        Answers now = WELL.with(question, answer(after));
        assertThat(DOUBTS.since(STARTED, then, situation(now))).isEqualTo(overtaken ? List.of(question) : List.of());
    }

    /** Every set of reasons: each that holds is named, no other, and only the empty set stands. */
    @Test
    void everyReasonIsNamedAndAnyOneOfThemVoidsTheTest() {
        List<Reason> ofTheTest = List.of(Reason.NOT_NEGATIVE, Reason.NOT_READ, Reason.READ_TOO_EARLY,
            Reason.OTHER_PRODUCT, Reason.OUT_OF_DATE,
            Reason.MASKED, Reason.OVERTAKEN);
        for (int set = 0; set < 1 << ofTheTest.size(); set++) {
            Set<Reason> wanted = EnumSet.noneOf(Reason.class);
            for (int bit = 0; bit < ofTheTest.size(); bit++) {
                if ((set & 1 << bit) != 0) {
                    wanted.add(ofTheTest.get(bit));
                }
            }
            TestFact test = spoiled(wanted);
            TestStanding standing = DOUBTS.standing(test, situation(WELL));
            assertThat(standing.reasons()).containsExactlyInAnyOrderElementsOf(wanted);
            assertThat(standing.stands()).isEqualTo(wanted.isEmpty());
            assertThat(skinTest(test).worstClass()).isEqualTo(
                wanted.contains(Reason.NOT_NEGATIVE) ? "positive" : wanted.isEmpty() ? "negative" : "not-done");
        }
    }

    @ParameterizedTest
    @EnumSource(Reason.class)
    void everyReasonCanBeMet(Reason reason) {
        Situation here = reason == Reason.OTHER_VISIT ? situation(WELL, "us")
            : reason == Reason.MASKED_NOW ? situation(Answers.NONE) : situation(WELL);
        TestFact test = reason == Reason.OTHER_VISIT ? made("negative", STARTED, true, true, true, false, false, false)
            : spoiled(EnumSet.of(reason));
        assertThat(DOUBTS.standing(test, here).reasons()).contains(reason);
    }

    /** Half a year here, but not past the maker's own days. */
    @ParameterizedTest
    @CsvSource({ "2025-12-10, 365, true", "2025-12-09, 365, false", "2026-06-07, 3, true", "2026-06-07, 2, false" })
    void theStricterOfPolicyAndLeafletEndsATest(String started, int leafletDays, boolean stands) {
        var leaflet = new Leaflet(48, new Validity.Days(leafletDays));
        var test = new TestFact("skin-test", "negative", LocalDate.parse(started),
            Optional.of(LocalDate.parse(started).plusDays(2)), true, true, true,
            false, false, Optional.of(leaflet));
        assertThat(DOUBTS.standing(test, situation(WELL)).stands()).isEqualTo(stands);
        assertThat(skinTest(test).worstClass()).isEqualTo(stands ? "negative" : "not-done");
    }

    private static Answer answer(String code) {
        return code.equals("dont-know") ? Answer.DONT_KNOW : Answer.Chosen.of(code);
    }

    private static TestFact negative() {
        return spoiled(EnumSet.noneOf(Reason.class));
    }

    private static TestFact spoiled(Set<Reason> by) {
        LocalDate started = by.contains(Reason.OUT_OF_DATE) ? TODAY.minusMonths(7) : STARTED;
        return made(by.contains(Reason.NOT_NEGATIVE) ? "positive" : "negative", started, !by.contains(Reason.NOT_READ),
            !by.contains(Reason.READ_TOO_EARLY),
            !by.contains(Reason.OTHER_PRODUCT), true, by.contains(Reason.MASKED), by.contains(Reason.OVERTAKEN));
    }

    private static TestFact made(String outcome, LocalDate started, boolean read, boolean waitKept, boolean thisProduct,
        boolean thisVisit,
        boolean masked, boolean overtaken) {
        return new TestFact("skin-test", outcome, started, read ? Optional.of(started.plusDays(2)) : Optional.empty(),
            waitKept, thisProduct, thisVisit,
            masked, overtaken);
    }

    private static FactValue skinTest(TestFact test) {
        Situation s = situation(WELL);
        return KNOWLEDGE.factFinder()
            .find(new Situation(s.today(), s.serviceDay(), s.birthDate(), COLOUR, s.questionnaire(), WELL, s.policy(),
                List.of(test), Optional.of(40)))
            .get("skin-test");
    }

    private static Situation situation(Answers answers) {
        return situation(answers, "uk");
    }

    private static Situation situation(Answers answers, String jurisdiction) {
        return new Situation(TODAY, TODAY, Optional.of(LocalDate.of(1990, 1, 1)), COLOUR, KNOWLEDGE.questionnaire(),
            answers,
            KNOWLEDGE.policy(jurisdiction), List.of(), Optional.of(40));
    }
}
