package foretress.questionnaire;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Contradiction.Side;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ContradictionTest {
    private static final Contradiction BOX_AND_NEVER =
        new Contradiction("box-and-never", new Side("treatments", Set.of("box-dye")),
            new Side("home-colour", Set.of("no")));

    private static Answers said(String homeColour, String... treatments) {
        List<SaidTreatment> list = Stream.of(treatments)
            .map(what -> new SaidTreatment(what, new SaidDate.NotKnown(), "whole", "home", SaidTreatment.ONCE))
            .toList();
        return Answers.NONE.with("home-colour", Answer.Chosen.of(homeColour)).with("treatments",
            new Answer.Treatments(list));
    }

    @Test
    @DisplayName("R56: a box colour on the list against \"never at home\" is one; either alone, or not knowing, is none")
    void holdsOnlyWhereBothAreSaid() {
        assertThat(BOX_AND_NEVER.holds(said("no", "perm", "box-dye"))).isTrue();
        assertThat(BOX_AND_NEVER.holds(said("no", "perm"))).isFalse();
        assertThat(BOX_AND_NEVER.holds(said("no"))).isFalse();
        assertThat(BOX_AND_NEVER.holds(said("yes", "box-dye"))).isFalse();
        assertThat(BOX_AND_NEVER.holds(said("dont-know", "box-dye"))).isFalse();
        assertThat(BOX_AND_NEVER.holds(Answers.NONE)).isFalse();
        assertThat(BOX_AND_NEVER.one().treatments(said("no", "perm", "box-dye"))).extracting(SaidTreatment::what)
            .containsExactly("box-dye");
    }
}
