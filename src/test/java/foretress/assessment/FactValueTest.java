package foretress.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A fact, as far as it is known")
class FactValueTest {
    private static final FactDef SCALP =
        new FactDef("scalp", List.of("calm", "sore", "burnt", "broken"), List.of(), Optional.empty());

    private static FactValue between(int best, int worst, String... causes) {
        return FactValue.between(SCALP, best, worst, List.of(causes));
    }

    private static FactValue asked(int best, int worstAsked, int worst) {
        return new FactValue("scalp", SCALP.classes(), best, worst, worstAsked, List.of("one"), List.of(),
            List.of("open"), List.of(), Optional.empty());
    }

    @Test
    void ofTwoTheHeavierStandsAndWhatDecidedItIsKept() {
        assertThat(between(0, 2, "one").heavier(between(1, 1, "two"))).isEqualTo(between(1, 2, "one"));
        assertThat(between(1, 1, "two").heavier(between(0, 2, "one"))).isEqualTo(between(1, 2, "one"));
        assertThat(between(1, 1, "one").heavier(between(1, 1, "two"))).isEqualTo(between(1, 1, "one", "two"));
    }

    @Test
    void aFaultIsNeverLostAndNeverKnown() {
        FactValue faulty = FactValue.faulty(SCALP, "a date was not read");
        assertThat(faulty.isKnown()).isFalse();
        assertThat(faulty.mayBeWorst()).isTrue();
        assertThat(faulty).hasToString("scalp = fault: a date was not read");
        assertThat(between(3, 3).heavier(faulty).fault()).contains("a date was not read");
        assertThat(between(3, 3).heavier(faulty).isKnown()).as("one class, and still a fault").isFalse();
        assertThat(faulty.heavier(between(3, 3)).fault()).contains("a date was not read");
    }

    @Test
    void oneClassIsReadAsAWorseOneWhereverItMayBeMeant() {
        assertThat(between(1, 1).raised(1, 3)).isEqualTo(between(3, 3));
        assertThat(between(0, 1).raised(1, 2)).isEqualTo(between(0, 2));
        assertThat(between(1, 2).raised(1, 2)).isEqualTo(between(2, 2));
        assertThat(between(0, 2).raised(1, 3)).isEqualTo(between(0, 2));
        assertThat(asked(0, 1, 2).raised(1, 2)).isEqualTo(asked(0, 2, 2));
    }

    @Test
    void answeredWellItIsNoWorseThanWhatWasAsked() {
        FactValue well = asked(0, 1, 3).asAsked();
        assertThat(List.of(well.best(), well.worst(), well.worstAsked())).containsExactly(0, 1, 1);
        assertThat(well.unanswered()).containsExactly("open");
    }

    @Test
    void whatNobodyAnsweredIsAddedOnceAndNothingChangesNothing() {
        assertThat(asked(0, 1, 1).leavingOpen(List.of("open", "other")).unanswered()).containsExactly("open", "other");
        FactValue same = between(0, 1);
        assertThat(same.leavingOpen(List.of())).isSameAs(same);
        assertThat(same.reading(List.of())).isSameAs(same);
    }

    @Test
    void itSaysItsClassesAndWhetherItMayBeTheWorst() {
        assertThat(between(1, 1)).hasToString("scalp = sore");
        assertThat(between(1, 3)).hasToString("scalp = sore..broken");
        assertThat(between(1, 3).bestClass()).isEqualTo("sore");
        assertThat(between(1, 3).worstClass()).isEqualTo("broken");
        assertThat(between(1, 3).mayBeWorst()).isTrue();
        assertThat(between(1, 2).mayBeWorst()).isFalse();
        assertThat(between(1, 1).isKnown()).isTrue();
        assertThat(between(1, 2).isKnown()).isFalse();
        assertThat(FactValue.unknown(SCALP, List.of())).isEqualTo(between(0, 3));
        assertThat(FactValue.known(SCALP, "burnt", List.of())).isEqualTo(between(2, 2));
    }

    @Test
    void whatIsNoRangeOfItsClassesIsRefused() {
        assertThatThrownBy(() -> between(-1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> between(2, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> between(0, 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> asked(0, 3, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> asked(2, 1, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SCALP.ordinal("itchy")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new FactDef("one", List.of("only"), List.of(), Optional.empty()))
            .isInstanceOf(IllegalArgumentException.class);
    }
}
