package foretress.assessment;

import static foretress.assessment.Told.TODAY;
import static foretress.assessment.Told.aClient;
import static foretress.assessment.Told.computed;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidDate.InSeason;
import foretress.questionnaire.SaidDate.NotKnown;
import foretress.questionnaire.SaidDate.OnDay;
import foretress.questionnaire.SaidDate.Season;
import java.time.Year;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HairFactsTest {
    private static final FactDef METAL =
        computed("metal", "metal", List.of("restorer", "henna-unknown", "dont-know"), "none", "trace", "suspected");
    private static final FactDef BLEACHED = computed("bleached", "left", List.of("bleach"), "none", "present");
    private static final FactDef HENNA =
        computed("henna", "kind-left", List.of("henna-pure", "henna-unknown"), "none", "pure", "unknown");
    private static final FactDef PERMED = new FactDef("permed", List.of("none", "present", "recent"), List.of(),
        Optional.of(
            new FactDef.Computation(ComputedAs.LEFT, List.of("perm"), Optional.of(Figure.ofPolicy("permed-hair-weeks")),
                Optional.empty())));
    private static final FactDef LENGTH = computed("length", "hair-length", List.of(), "measured", "said", "not-known");

    private static final SaidDate SUMMER_2024 = new InSeason(Season.SUMMER, Year.of(2024));

    private static SaidDate monthsAgo(int months) {
        return new OnDay(TODAY.minusMonths(months));
    }

    private static Told aSureClient() {
        return aClient().said("lotion", "no");
    }

    @Test
    void aLotionTwoSummersAgoOnLongHairLeavesMetalSuspected() {
        assertThat(aSureClient().used("restorer", SUMMER_2024).measured(40).fact(METAL))
            .hasToString("metal = suspected");
    }

    /**
     * Slowest growth 0.5 cm a month and four months of rest: 24 months ago the hair has grown 10 cm since, so a hair of 10 cm or
     * less holds none and a longer one does. Published rates (Loussouarn 2001, 2005) less two standard deviations: 0.51 to 0.55.
     */
    @Test
    void atTheSlowestGrowthTenCentimetresAreFreeAfterTwoYears() {
        assertThat(aSureClient().used("restorer", monthsAgo(24)).measured(10).fact(METAL))
            .hasToString("metal = suspected");
        assertThat(aSureClient().used("restorer", monthsAgo(24)).measured(9).fact(METAL)).hasToString("metal = trace");
    }

    /** A published check: 20 cm of hair, last restorer two years ago: clean at the fast rate, suspect at the slow one, so a test. */
    @Test
    void hairOfTwentyCentimetresAfterTwoYearsIsStillSuspect() {
        assertThat(aSureClient().used("restorer", monthsAgo(24)).measured(20).fact(METAL))
            .hasToString("metal = suspected");
    }

    @Test
    void metalIsRuledOutOnlyWhenStaffMeasuredAndTheDateIsKnown() {
        assertThat(
            aSureClient().used("restorer", monthsAgo(240)).said("length", new Answer.Length(20, true)).fact(METAL))
            .hasToString("metal = suspected");
        assertThat(aSureClient().used("restorer", new NotKnown()).measured(4).fact(METAL))
            .hasToString("metal = suspected");
        assertThat(aSureClient().used("restorer", monthsAgo(240)).measured(20).fact(METAL))
            .hasToString("metal = trace");
    }

    @Test
    void aCueWithoutAnEntryIsATreatmentAtAnUnknownTime() {
        FactValue metal = aClient().said("lotion", "yes").neverTreated().measured(4).fact(METAL);
        assertThat(metal).hasToString("metal = suspected");
        assertThat(metal.causes()).contains("lotion");
    }

    @Test
    void anEntryInTheListSpeaksForItsCue() {
        assertThat(aClient().said("lotion", "yes").used("restorer", monthsAgo(60)).measured(10).fact(METAL))
            .hasToString("metal = trace");
    }

    @Test
    void aCueNotKnownIsPerhapsATreatment() {
        assertThat(aClient().said("lotion", Answer.DONT_KNOW).neverTreated().measured(40).fact(METAL))
            .hasToString("metal = none..suspected");
        assertThat(aClient().neverTreated().measured(40).fact(METAL).unanswered()).containsExactly("lotion");
    }

    @Test
    void aTreatmentOfAnUnknownKindMayBeAny() {
        Told client = aSureClient().used("dont-know", monthsAgo(6)).measured(40);
        assertThat(client.fact(BLEACHED)).hasToString("bleached = none..present");
        assertThat(client.fact(METAL)).hasToString("metal = suspected");
    }

    @Test
    void notKnowingTheTreatmentsIsPerhapsEachOfThem() {
        assertThat(aSureClient().said("treatments", Answer.DONT_KNOW).measured(40).fact(BLEACHED))
            .hasToString("bleached = none..present");
        assertThat(aSureClient().measured(40).fact(PERMED)).hasToString("permed = none..recent");
    }

    @Test
    void treatmentsNotAskedForAreKeptApart() {
        FactValue bleached = aSureClient().booked("heat").measured(40).fact(BLEACHED);
        assertThat(bleached).hasToString("bleached = none..present");
        assertThat(bleached.worstAsked()).isZero();
        assertThat(bleached.notAsked()).extracting(NotAsked::question).containsExactly("treatments");
    }

    @Test
    void bleachedHairCountsUntilItIsCutOffAtWhateverAge() {
        assertThat(aSureClient().used("bleach", monthsAgo(120)).measured(70).fact(BLEACHED))
            .hasToString("bleached = present");
        assertThat(aSureClient().used("bleach", monthsAgo(120)).measured(50).fact(BLEACHED))
            .hasToString("bleached = none");
    }

    @Test
    void aPermIsRecentUntilThePolicysWeeksAreFull() {
        assertThat(aSureClient().used("perm", new OnDay(TODAY.minusWeeks(12).plusDays(1))).measured(40).fact(PERMED))
            .hasToString("permed = recent");
        assertThat(aSureClient().used("perm", new OnDay(TODAY.minusWeeks(12))).measured(40).fact(PERMED))
            .hasToString("permed = present");
    }

    @Test
    void theHeaviestKindOfHennaLeftCounts() {
        assertThat(aSureClient().used("henna-pure", monthsAgo(3)).measured(40).fact(HENNA)).hasToString("henna = pure");
        assertThat(
            aSureClient().used("henna-pure", monthsAgo(3)).used("henna-unknown", monthsAgo(9)).measured(40).fact(HENNA))
            .hasToString("henna = unknown");
    }

    @Test
    void aLengthNotDrawnStraightIsNotKnown() {
        assertThat(aClient().said("length", new Answer.Length(20, false)).fact(LENGTH))
            .hasToString("length = not-known");
        assertThat(aClient().said("length", new Answer.Length(20, true)).fact(LENGTH)).hasToString("length = said");
        assertThat(aClient().said("length", new Answer.Length(20, false)).measured(31).fact(LENGTH))
            .hasToString("length = measured");
    }

    @Test
    void withoutALengthEverythingIsStillThere() {
        assertThat(aSureClient().used("bleach", monthsAgo(300)).said("length", Answer.DONT_KNOW).fact(BLEACHED))
            .hasToString("bleached = present");
    }

    /** Longer hair and a later use never leave less; every pair of lengths and months is tried. */
    @Test
    void longerHairAndALaterUseNeverLeaveLess() {
        for (int cm = 1; cm <= 60; cm += 3) {
            for (int months = 0; months <= 140; months += 7) {
                int here = aSureClient().used("bleach", monthsAgo(months)).measured(cm).fact(BLEACHED).worst();
                assertThat(aSureClient().used("bleach", monthsAgo(months)).measured(cm + 3).fact(BLEACHED).worst())
                    .isGreaterThanOrEqualTo(here);
                assertThat(aSureClient().used("bleach", monthsAgo(months + 7)).measured(cm).fact(BLEACHED).worst())
                    .isLessThanOrEqualTo(here);
            }
        }
    }
}
