package foretress.consent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import foretress.consent.SignatureMark.Drawn;
import foretress.consent.SignatureMark.Point;
import foretress.consent.SignatureMark.Stroke;
import foretress.consent.SignatureMark.Typed;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A11, D12: a mark is a drawing without times or a typed name")
class SignatureMarkTest {
    private static Stroke points(int many) {
        return new Stroke(Collections.nCopies(many, new Point(0.5, 0.5)));
    }

    @Test
    void fiveThousandPointsAreKept() {
        assertThat(new Drawn(List.of(points(2_500), points(2_500))).strokes()).hasSize(2);
    }

    @Test
    void onePointMoreIsRefusedAndSaysWhatToDo() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Drawn(List.of(points(2_500), points(2_501))))
            .withMessageContaining("5001 points").withMessageContaining("draw once more");
    }

    @Test
    void anEmptyBoxIsNoMark() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Drawn(List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new Drawn(List.of(points(0))));
    }

    @ParameterizedTest
    @CsvSource({ "0, 0", "1, 1", "0, 1", "0.5, 0.25" })
    void thePlaceOfAPointIsInTheBox(double x, double y) {
        assertThat(new Point(x, y).x()).isEqualTo(x);
    }

    @ParameterizedTest
    @CsvSource({ "-0.0001, 0", "0, 1.0001", "NaN, 0", "0, Infinity", "2, 2" })
    void aPointOutsideTheBoxIsRefused(double x, double y) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Point(x, y)).withMessageContaining("outside the box");
    }

    @ParameterizedTest
    @ValueSource(doubles = { 0.49, 10.01, Double.NaN, -3 })
    void aBoxNoScreenHasIsRefused(double aspect) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Drawn(List.of(points(1)), aspect));
    }

    @ParameterizedTest
    @ValueSource(strings = { "", " ", "\n\t", "\u202E" })
    void aNameWithoutLettersIsNoMark(String typed) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Typed(typed));
    }

    @Test
    void threeHundredLettersAreANameAndOneMoreIsNot() {
        assertThat(new Typed("😀".repeat(300)).name()).hasSize(600);
        assertThatIllegalArgumentException().isThrownBy(() -> new Typed("😀".repeat(301)));
    }
}
