package foretress.closing;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import foretress.closing.Closing.Planned;
import foretress.closing.Closing.Used;
import foretress.closing.Closing.Wrong;
import foretress.told.Showed;
import foretress.visit.Booked;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A closing is kept in the codes it was posted in, and those of earlier versions are still read")
class ClosingJsonTest {
    private static final ObjectMapper JSON = new ObjectMapper().findAndRegisterModules();

    private static final Closing WHOLE = new Closing(List.of(new Booked("highlights", List.of("lighten"))),
        Map.of("highlights", Course.AS_PLANNED),
        List.of(new Used(Optional.of(AppliedTo.LENGTHS_ENDS), "Lightener", "B1", "", "1 : 2", "40", "6 %", "30",
            Planned.NOTHING)),
        Optional.of(StrandTrial.GOOD),
        new Wrong(Wrong.Said.YES, List.of(Mishap.STING), Optional.of(Showed.WHILE_ON), "A sting.", "Rinsed."), "Even.",
        "", "");

    @Test
    void whatIsWrittenIsReadBack() throws JsonProcessingException {
        String kept = JSON.writeValueAsString(WHOLE);
        assertThat(kept).contains("\"as-planned\"", "\"lengths-ends\"", "\"good\"", "\"yes\"", "\"sting\"",
            "\"while-on\"");
        assertThat(JSON.readValue(kept, Closing.class)).isEqualTo(WHOLE);
    }

    @Test
    @DisplayName("of a version that knew no course, zone, ratio or mishap, and wrote an empty text where nothing was said")
    void anEarlierVersion() throws JsonProcessingException {
        Closing kept = JSON.readValue("""
            {"done":[],"used":[{"product":"Tint","batch":"","shade":"6","strength":"","minutes":"35"}],
             "strandTest":"","condition":"","notes":"","wrong":{"said":"","kinds":[],"when":"","words":"","helped":""}}
            """, Closing.class);
        assertThat(kept.strandTest()).isEmpty();
        assertThat(kept.courses()).isEmpty();
        assertThat(kept.wrong()).isEqualTo(Wrong.NOT_ASKED);
        assertThat(kept.used()).singleElement().satisfies(one -> {
            assertThat(one.zone()).isEmpty();
            assertThat(one.planned()).isEqualTo(Planned.NOTHING);
            assertThat(one.ratio()).isEmpty();
        });
        assertThat(JSON.readValue("{\"done\":[],\"used\":[],\"strandTest\":\"not-done\"}", Closing.class).wrong())
            .isEqualTo(Wrong.NOT_ASKED);
    }
}
