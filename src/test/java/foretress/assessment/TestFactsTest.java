package foretress.assessment;

import static foretress.assessment.Told.aClient;
import static foretress.assessment.Told.computed;
import static foretress.assessment.Told.tested;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.SaidDate.Hemisphere;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TestFactsTest {
    private static final FactDef SKIN =
        computed("skin-test", "skin-test", List.of("steroid"), "negative", "not-done", "positive");
    private static final FactDef STEROID =
        computed("steroid", "steroid-tablets", List.of("systemic-corticosteroid"), "none", "low", "masking");
    private static final FactDef METAL =
        computed("metal-test", "metal-test", List.of(), "negative", "not-done", "nothing", "positive");
    private static final FactDef CUTTING =
        tested("test-cutting", "test-cutting", "good", "poor");
    private static final FactDef ELASTICITY =
        tested("elasticity", "elasticity-test", "pass", "caution", "fail");
    private static final FactDef AGE =
        computed("age", "age", List.of(), "of-age", "below-salon-age", "below-label-age");

    private static final Lexicon STEROIDS = new Lexicon() {
        @Override
        public Set<String> medicine(String typed) {
            return typed.equals("prednisolone") ? Set.of("systemic-corticosteroid") : Set.of();
        }

        @Override
        public Label label(String text) {
            throw new UnsupportedOperationException();
        }
    };

    private static Told noMedicines() {
        return aClient().readBy(STEROIDS).said("medicines", new Answer.Medicines(List.of()));
    }

    private static TestFact skin(String outcome, boolean waitKept, boolean thisProduct, boolean thisVisit,
        boolean masked, boolean overtaken) {
        LocalDate started = LocalDate.of(2026, 6, 1);
        return new TestFact("skin-test", outcome, started, Optional.of(started.plusDays(2)), waitKept, thisProduct,
            thisVisit, masked, overtaken);
    }

    private static final FactDef ADVICE =
        computed("wound-advice", "medical-advice", List.of("scalp-wound"), "with-care", "not-asked", "advised-against");

    private static String advised(TestFact... words) {
        return noMedicines().tested(words).fact(ADVICE).worstClass();
    }

    private static TestFact word(String outcome, int day, boolean thisVisit, boolean overtaken) {
        return TestFact.advice("scalp-wound", outcome, LocalDate.of(2026, 5, day), thisVisit, overtaken);
    }

    @Test
    void aDoctorsYesCountsForItsVisitWhileTheAnswersAreTheSame() {
        assertThat(advised()).isEqualTo("not-asked");
        assertThat(advised(word("with-care", 1, true, false))).isEqualTo("with-care");
        assertThat(advised(word("with-care", 1, true, true))).isEqualTo("not-asked");
        assertThat(advised(word("with-care", 1, true, true), word("with-care", 2, true, false))).isEqualTo("with-care");
        assertThat(advised(word("with-care", 1, false, false))).isEqualTo("not-asked");
        assertThat(advised(TestFact.advice("g6pd", "with-care", LocalDate.of(2026, 5, 1), true, false)))
            .isEqualTo("not-asked");
    }

    @Test
    void aDoctorsNoStandsUntilANewerVisitsWord() {
        assertThat(advised(word("advised-against", 1, true, true))).isEqualTo("advised-against");
        assertThat(advised(word("advised-against", 1, true, false), word("with-care", 9, true, false)))
            .isEqualTo("advised-against");
        assertThat(advised(word("advised-against", 1, false, false))).isEqualTo("advised-against");
        assertThat(advised(word("advised-against", 1, false, false), word("with-care", 9, false, false)))
            .isEqualTo("not-asked");
        assertThat(advised(word("advised-against", 9, false, false), word("with-care", 9, false, false)))
            .isEqualTo("advised-against");
        assertThat(advised(word("advised-against", 1, false, false), word("with-care", 9, true, false)))
            .isEqualTo("with-care");
    }

    private static final FactDef LETTER = computed("letter", "letter-or-test", List.of("skin-test"), "letter",
        "negative", "neither", "positive");

    private static TestFact letter(String outcome, boolean seen, boolean thisProduct) {
        LocalDate written = LocalDate.of(2026, 5, 1);
        return new TestFact("dermatologist-letter", outcome, written, seen ? Optional.of(written) : Optional.empty(),
            true,
            thisProduct, true, false, false);
    }

    private static String lettered(int counts, TestFact... made) {
        Map<String, Integer> figures = new HashMap<>(Told.UK.figures());
        figures.put("letter-counts", counts);
        var policy = new Policy("uk", figures, Map.of(), "999", "A4", Hemisphere.NORTH, List.of());
        return noMedicines().under(policy).tested(made).fact(LETTER, SKIN, STEROID).worstClass();
    }

    @Test
    void aLetterCountsOnlyWhenItWasSeenNamesThisProductAndNothingSpeaksAgainstIt() {
        TestFact good = letter("names-product", true, true);
        assertThat(lettered(1, good)).isEqualTo("letter");
        assertThat(lettered(0, good)).as("a policy that takes none").isEqualTo("neither");
        assertThat(lettered(1, letter("names-product", false, true))).as("told of, not seen").isEqualTo("neither");
        assertThat(lettered(1, letter("names-product", true, false))).as("another product").isEqualTo("neither");
        assertThat(lettered(1, letter("names-another", true, true))).as("it names none of ours").isEqualTo("neither");
        assertThat(lettered(1, good, letter("against", true, true))).as("a second letter says no").isEqualTo("neither");
        assertThat(lettered(1)).isEqualTo("neither");
    }

    @Test
    void aLetterLiftsNoPositiveTestAndANegativeOneNeedsNone() {
        TestFact good = letter("names-product", true, true);
        assertThat(lettered(1, good, skin("positive", true, true, true, false, false))).isEqualTo("positive");
        assertThat(lettered(0, skin("negative", true, true, true, false, false))).isEqualTo("negative");
        assertThat(lettered(1, good, skin("negative", true, true, true, false, false))).isEqualTo("letter");
    }

    /** Each row spoils one thing about a test that would otherwise stand. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "a sound test stands,                      true,  true,  true,  false, false, negative",
        "read before the wait was over,            false, true,  true,  false, false, not-done",
        "made with another product,                true,  false, true,  false, false, not-done",
        "made for an earlier visit but still good, true,  true,  false, false, false, negative",
        "made under a masking medicine,            true,  true,  true,  true,  false, not-done",
        "overtaken by a sensitising event,         true,  true,  true,  false, true,  not-done" })
    void aNegativeSkinTestStandsOnlyWhenNothingSpoilsIt(String name, boolean waitKept, boolean thisProduct,
        boolean thisVisit, boolean masked,
        boolean overtaken, String expected) {
        TestFact test = skin("negative", waitKept, thisProduct, thisVisit, masked, overtaken);
        assertThat(noMedicines().tested(test).fact(SKIN, STEROID).worstClass()).isEqualTo(expected);
    }

    /** A federation's rule since 2021, six months: a test of 15 January stands through 15 July; one of 31 August through 28 February. */
    @ParameterizedTest
    @CsvSource({ "2025-01-15, 2025-07-15, negative", "2025-01-15, 2025-07-16, not-done",
        "2025-08-31, 2026-02-28, negative",
        "2025-08-31, 2026-03-01, not-done" })
    void aSkinTestStandsForThePolicysMonths(String started, String serviceDay, String expected) {
        TestFact test =
            TestFact.sound("skin-test", "negative", LocalDate.parse(started), LocalDate.parse(started).plusDays(2));
        assertThat(noMedicines().on(serviceDay).tested(test).fact(SKIN, STEROID).worstClass()).isEqualTo(expected);
    }

    /** Information page of the US authority: before every application. */
    @Test
    void whereATestCountsForOneApplicationAnEarlierVisitsTestDoesNot() {
        assertThat(noMedicines().under(Told.US).tested(skin("negative", true, true, false, false, false))
            .fact(SKIN, STEROID).worstClass())
            .isEqualTo("not-done");
        assertThat(noMedicines().under(Told.US).tested(skin("negative", true, true, true, false, false))
            .fact(SKIN, STEROID).worstClass())
            .isEqualTo("negative");
    }

    /** More than 10 mg of prednisone a day makes a negative worthless, 5 mg does not (Levian 2021); a dose not known counts as more. */
    @ParameterizedTest
    @CsvSource({ "low, negative", "high, not-done", "dont-know, not-done", "not-asked, not-done" })
    void aNegativeUnderAMaskingMedicineDoesNotStand(String dose, String expected) {
        Told client = aClient().readBy(STEROIDS)
            .said("medicines", new Answer.Medicines(List.of(new Medicine("prednisolone", dose, "mouth", "now"))));
        assertThat(client.tested(skin("negative", true, true, true, false, false)).fact(SKIN, STEROID).worstClass())
            .isEqualTo(expected);
    }

    @Test
    void medicinesNotKnownCountAsMasking() {
        Told client = aClient().readBy(STEROIDS).said("medicines", Answer.RATHER_NOT_SAY);
        assertThat(client.tested(skin("negative", true, true, true, false, false)).fact(SKIN, STEROID).worstClass())
            .isEqualTo("not-done");
    }

    @Test
    void aPositiveSkinTestIsPositiveHoweverItWasMade() {
        assertThat(
            noMedicines().tested(skin("positive", false, false, false, true, true)).fact(SKIN, STEROID).worstClass())
            .isEqualTo("positive");
        assertThat(
            noMedicines().tested(skin("doubtful", true, true, true, false, false)).fact(SKIN, STEROID).worstClass())
            .isEqualTo("positive");
    }

    @Test
    void whatNobodyOfTheStaffReadDoesNotStand() {
        var unread = new TestFact("skin-test", "negative", LocalDate.of(2026, 6, 1), Optional.empty(), true, true,
            true, false, false);
        assertThat(noMedicines().tested(unread).fact(SKIN, STEROID).worstClass()).isEqualTo("not-done");
    }

    /** Two teaching pages: a slight lightening is negative, no change at all points to silver or bismuth; common practice. */
    @ParameterizedTest
    @CsvSource({ "slight-lightening, negative", "not-whole, not-done", "nothing-happened, nothing",
        "positive, positive", "bubbles, positive" })
    void theMetalTestTellsNothingHappenedFromNegative(String outcome, String expected) {
        assertThat(noMedicines().tested(metal(outcome, 1)).fact(METAL).worstClass()).isEqualTo(expected);
    }

    @Test
    void aLaterQuietMetalTestDoesNotUndoAPositiveOne() {
        assertThat(noMedicines().tested(metal("positive", 1), metal("slight-lightening", 5)).fact(METAL).worstClass())
            .isEqualTo("positive");
        assertThat(noMedicines().tested(metal("slight-lightening", 1), metal("not-whole", 5)).fact(METAL).worstClass())
            .isEqualTo("not-done");
    }

    @Test
    void hairOnWhichNothingHappenedIsNotClearedByALaterQuietTest() {
        assertThat(
            noMedicines().tested(metal("nothing-happened", 1), metal("slight-lightening", 5)).fact(METAL).worstClass())
            .isEqualTo("nothing");
        assertThat(
            noMedicines().tested(metal("slight-lightening", 5), metal("not-whole", 5)).fact(METAL).worstClass())
            .as("of one day the worse").isEqualTo("not-done");
    }

    @Test
    void theNewestTestCuttingCountsAndOfOneDayTheWorse() {
        assertThat(noMedicines().tested(cutting("poor", 1), cutting("good", 5)).fact(CUTTING).worstClass())
            .isEqualTo("good");
        assertThat(noMedicines().tested(cutting("good", 5), cutting("poor", 5)).fact(CUTTING).worstClass())
            .isEqualTo("poor");
        assertThat(noMedicines().fact(CUTTING).worstClass()).isEqualTo("not-done");
    }

    @Test
    void anOutcomeNobodyKnowsIsAFault() {
        TestFact odd = TestFact.sound("elasticity-test", "bouncy", LocalDate.of(2026, 6, 1), LocalDate.of(2026, 6, 1));
        assertThat(noMedicines().tested(odd).fact(ELASTICITY).fault()).isPresent();
    }

    /** Label of the EU entry for oxidative dyes: not under 16. The salon of this policy takes nobody under 18. */
    @ParameterizedTest
    @CsvSource({ "2010-06-11, below-label-age", "2010-06-10, below-salon-age", "2008-06-11, below-salon-age",
        "2008-06-10, of-age" })
    void theBirthdayItselfIsOfAge(String born, String expected) {
        assertThat(aClient().born(born).on("2026-06-10").fact(AGE).worstClass()).isEqualTo(expected);
    }

    /** java.time: Period counts 17 years from 2008-02-29 to 2026-02-28, and 18 a day later. */
    @ParameterizedTest
    @CsvSource({ "2026-02-28, below-salon-age", "2026-03-01, of-age" })
    void whoeverWasBornOnALeapDayIsOlderOnTheFirstOfMarch(String serviceDay, String expected) {
        assertThat(aClient().born("2008-02-29").on(serviceDay).fact(AGE).worstClass()).isEqualTo(expected);
    }

    @Test
    void withoutABirthDateTheAgeIsNotKnown() {
        assertThat(aClient().birthDateNotKnown().fact(AGE)).hasToString("age = of-age..below-label-age");
    }

    private static TestFact metal(String outcome, int day) {
        return TestFact.sound("incompatibility-test", outcome, LocalDate.of(2026, 6, day),
            LocalDate.of(2026, 6, day + 1));
    }

    private static TestFact cutting(String outcome, int day) {
        return TestFact.sound("test-cutting", outcome, LocalDate.of(2026, 6, day), LocalDate.of(2026, 6, day));
    }
}
