package foretress.told;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.Loaded;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What is told by the link is told in the questionnaire's own options")
class FeltTest {
    @Test
    void theOptionsAreTheQuestionnaires() {
        assertThat(Arrays.stream(Felt.values()).map(Felt::code).toList())
            .isEqualTo(Loaded.KNOWLEDGE.questionnaire().question(Felt.QUESTION).orElseThrow().options());
        assertThat(Arrays.stream(Showed.values()).map(Showed::code).toList())
            .isEqualTo(Loaded.KNOWLEDGE.questionnaire().question("colour-reaction-soon").orElseThrow().options());
    }

    @Test
    void whatMayBecomeGraveIsUrgentWhateverStandsBesideIt() {
        assertThat(new Telling(List.of(Felt.OTHER, Felt.FAINT), Optional.empty(), List.of(), "", "en").urgent())
            .isTrue();
        assertThat(new Telling(List.of(Felt.ITCH_AFTER), Optional.empty(), List.of(), "", "en").urgent()).isFalse();
    }

    @ParameterizedTest(name = "received {0}: by {1}")
    @DisplayName("a complaint is acknowledged within 30 days, the day it came counted, by the salon's own calendar")
    @CsvSource({ "2026-06-01T10:00:00Z, 2026-06-30", "2026-06-01T23:30:00Z, 2026-07-01",
        "2027-01-31T12:00:00Z, 2027-03-01", "2028-01-31T12:00:00Z, 2028-02-29" })
    void theThirtiethDay(Instant received, LocalDate last) {
        assertThat(Deadline.of(received, ZoneId.of("Europe/London"))).isEqualTo(last);
    }
}
