package foretress.skintest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import foretress.assessment.SkinTestOutcome;
import foretress.salon.ProductLine;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("One look at the skin, and what it comes to")
class SkinLookTest {
    private static final ObjectMapper JSON = new ObjectMapper().registerModule(new Jdk8Module());

    private static SkinLook seen(SkinSign... signs) {
        return new SkinLook(List.of(signs), Optional.empty(), "", List.of(), false);
    }

    @ParameterizedTest
    @EnumSource(value = SkinSign.class, names = { "NONE", "FAINT" }, mode = EnumSource.Mode.EXCLUDE)
    void everySignButAFaintRednessIsPositiveAloneAndBesideOne(SkinSign sign) {
        assertThat(seen(sign).result()).isEqualTo(SkinTestOutcome.POSITIVE);
        assertThat(seen(SkinSign.FAINT, sign).result()).isEqualTo(SkinTestOutcome.POSITIVE);
    }

    @Test
    void nothingIsNegativeAndAFaintRednessIsDoubtfulWhichCountsAsAReaction() {
        assertThat(seen(SkinSign.NONE).result()).isEqualTo(SkinTestOutcome.NEGATIVE);
        assertThat(seen(SkinSign.FAINT).result()).isEqualTo(SkinTestOutcome.DOUBTFUL);
        assertThat(SkinTestOutcome.DOUBTFUL.reacted()).isTrue();
        assertThat(SkinTestOutcome.NEGATIVE.reacted()).isFalse();
    }

    @Test
    void nobodyLooksAndSaysNeitherOrBoth() {
        assertThatThrownBy(() -> seen()).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> seen(SkinSign.NONE, SkinSign.ITCH)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    @DisplayName("what was kept when these were texts is read as it was, and is written with the same codes")
    void whatWasKeptEarlierIsStillRead() throws JsonProcessingException {
        SkinLook before = JSON.readValue(
            "{\"signs\":[\"blisters\",\"itch\"],\"began\":\"same-day\",\"words\":\"w\",\"masking\":[\"m\"],\"mixing\":true}",
            SkinLook.class);
        assertThat(before).isEqualTo(new SkinLook(List.of(SkinSign.BLISTERS, SkinSign.ITCH),
            Optional.of(Onset.SAME_DAY), "w", List.of("m"), true));
        assertThat(JSON.readValue(
            "{\"signs\":[\"none\"],\"began\":\"\",\"words\":\"\",\"masking\":[],\"mixing\":false}", SkinLook.class))
            .isEqualTo(seen(SkinSign.NONE));
        assertThat(JSON.writeValueAsString(before)).contains("[\"blisters\",\"itch\"]", "\"began\":\"same-day\"")
            .doesNotContain("urgent", "nothing");
        assertThat(JSON.readValue(JSON.writeValueAsString(seen(SkinSign.FAINT)), SkinLook.class))
            .isEqualTo(seen(SkinSign.FAINT));
        TestMethod made = JSON.readValue(
            "{\"shade\":\"4-0\",\"batch\":\"b\",\"mixing\":\"NEAT\",\"site\":\"INNER_ELBOW\",\"siteWords\":\"\",\"masking\":[],\"medicines\":\"unknown\"}",
            TestMethod.class);
        assertThat(made).isEqualTo(new TestMethod("4-0", "b", ProductLine.Mixing.NEAT, ProductLine.Site.INNER_ELBOW, "",
            List.of(), TestMethod.Medicines.UNKNOWN));
        assertThat(made.masked()).as("not known is not none").isTrue();
        assertThat(JSON.readValue(JSON.writeValueAsString(made), TestMethod.class)).isEqualTo(made);
    }
}
