package foretress.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.SaidDate.Hemisphere;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Of leaflet and policy the stricter holds")
class StricterTest {
    private static final LocalDate BEGUN = LocalDate.of(2026, 3, 2);

    private static Policy policy(int waitHours, int months) {
        return new Policy("test", Map.of("skin-test-wait-hours", waitHours, "skin-test-validity-months", months),
            Map.of(), "999", "A4",
            Hemisphere.NORTH, List.of());
    }

    private static Stricter both(int waitHours, int months, int leafletHours, Validity leaflet) {
        return Stricter.of(policy(waitHours, months), Optional.of(new Leaflet(leafletHours, leaflet)));
    }

    /** A trade federation's 48 hours against a label's 24, and the other way round (24 h: information page on US labels). */
    @Test
    void theLongerWaitHolds() {
        assertThat(both(48, 6, 24, new Validity.Unsaid()).waitHours()).isEqualTo(48);
        assertThat(both(24, 0, 48, new Validity.Unsaid()).waitHours()).isEqualTo(48);
        assertThat(Stricter.of(policy(48, 6)).waitHours()).isEqualTo(48);
    }

    @Test
    void theShorterValidityHolds() {
        assertThat(both(48, 6, 48, new Validity.Months(3)).lastDay(BEGUN)).contains(LocalDate.of(2026, 6, 2));
        assertThat(both(48, 6, 48, new Validity.Months(12)).lastDay(BEGUN)).contains(LocalDate.of(2026, 9, 2));
        assertThat(both(48, 6, 48, new Validity.Days(28)).lastDay(BEGUN)).contains(LocalDate.of(2026, 3, 30));
    }

    @Test
    void aLeafletThatNamesNoTimeLeavesThePolicys() {
        assertThat(both(48, 6, 0, new Validity.Unsaid())).satisfies(terms -> {
            assertThat(terms.waitHours()).isEqualTo(48);
            assertThat(terms.lastDay(BEGUN)).contains(LocalDate.of(2026, 9, 2));
        });
    }

    @Test
    void eachApplicationCountsForTheVisitItWasMadeForAlone() {
        Stricter terms = both(48, 6, 48, new Validity.EachApplication());
        assertThat(terms.stands(BEGUN, BEGUN.plusDays(3), true)).isTrue();
        assertThat(terms.stands(BEGUN, BEGUN.plusDays(3), false)).isFalse();
        assertThat(terms.stands(BEGUN, BEGUN.plusMonths(7), true)).as("too old by the policy all the same").isFalse();
    }

    @Test
    void itStandsOnItsLastDayAndNotOnTheNext() {
        Stricter terms = both(48, 6, 48, new Validity.Days(28));
        assertThat(terms.stands(BEGUN, LocalDate.of(2026, 3, 30), false)).isTrue();
        assertThat(terms.stands(BEGUN, LocalDate.of(2026, 3, 31), false)).isFalse();
    }

    /** Every day of four years, leap day and month ends included, against trying each day by hand. */
    @Test
    void theFirstDayIsTheEarliestThatReachesTheService() {
        List<Stricter> all = List.of(both(48, 6, 48, new Validity.Unsaid()), both(48, 6, 48, new Validity.Months(1)),
            both(48, 12, 48, new Validity.Days(31)), Stricter.of(policy(48, 6)));
        for (LocalDate service = LocalDate.of(2027, 1, 1); service.getYear() < 2031; service = service.plusDays(1)) {
            for (Stricter terms : all) {
                LocalDate first = terms.firstDay(service).orElseThrow();
                assertThat(terms.stands(first, service, false)).as("%s for %s", first, service).isTrue();
                assertThat(terms.stands(first.minusDays(1), service, false))
                    .as("the day before %s for %s", first, service).isFalse();
            }
        }
        assertThat(Stricter.of(policy(24, 0)).firstDay(BEGUN)).isEmpty();
    }
}
