package foretress.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;

/** E12: a visit is agreed in wall time. A start that the old rules gave stands for rules that have changed. */
class RereadTest {
    private static Visit agreed(String wall, String startUnderOldRules) {
        var visit = new Visit();
        visit.wallTime = LocalDateTime.parse(wall);
        visit.zone = "Europe/London";
        visit.startsAt = Instant.parse(startUnderOldRules);
        return visit;
    }

    @Test
    void aVisitStaysWhenTheRulesStay() {
        Visit visit = agreed("2026-06-11T14:00", "2026-06-11T13:00:00Z");
        assertThat(visit.reread()).isFalse();
        assertThat(visit.startsAt).isEqualTo("2026-06-11T13:00:00Z");
    }

    @Test
    void aVisitMovesToWhereItsWallTimeNowIs() {
        Visit visit = agreed("2026-06-11T14:00", "2026-06-11T14:00:00Z");
        assertThat(visit.reread()).isTrue();
        assertThat(visit.startsAt).isEqualTo("2026-06-11T13:00:00Z");
    }

    @Test
    void ofATimeThatComesTwiceTheChosenTurnIsKept() {
        for (String turn : new String[] { "2026-10-25T00:30:00Z", "2026-10-25T01:30:00Z" }) {
            Visit visit = agreed("2026-10-25T01:30", turn);
            assertThat(visit.reread()).isFalse();
            assertThat(visit.startsAt).isEqualTo(turn);
        }
    }
}
