package foretress.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("C1: a step counts unless it was taken out by name")
class ServiceTest {
    private static final Service HIGHLIGHTS = new Service("highlights",
        List.of(new Step("lighten", Set.of("persulfate", "peroxide")), new Step("tone", Set.of("oxidative-dye"))));

    @Test
    void aStepTakenOutIsGone() {
        assertThat(HIGHLIGHTS.keeping(List.of("lighten")).chemistries()).containsExactlyInAnyOrder("persulfate",
            "peroxide");
    }

    @Test
    void aBookingWithoutStepsIsTheWholeService() {
        assertThat(HIGHLIGHTS.keeping(List.of())).isEqualTo(HIGHLIGHTS);
    }

    @Test
    void aBookingWithAStepOfOtherKnowledgeIsTheWholeService() {
        assertThat(HIGHLIGHTS.keeping(List.of("colour"))).isEqualTo(HIGHLIGHTS);
        assertThat(HIGHLIGHTS.keeping(List.of("lighten", "gloss"))).isEqualTo(HIGHLIGHTS);
    }
}
