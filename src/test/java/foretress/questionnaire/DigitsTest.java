package foretress.questionnaire;

import static foretress.questionnaire.Posted.assertSays;
import static foretress.questionnaire.Posted.question;
import static foretress.questionnaire.Posted.read;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer.Length;
import foretress.questionnaire.Answer.Said;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.SaidDate.OnDay;
import java.time.LocalDate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DigitsTest {
    private static Stream<Integer> zeros() {
        return IntStream.rangeClosed(0, Character.MAX_CODE_POINT)
            .filter(c -> Character.getType(c) == Character.DECIMAL_DIGIT_NUMBER && Character.digit(c, 10) == 0).boxed();
    }

    @Test
    @DisplayName("A30 the sixty and more digit sets of the Unicode character database are tried, Arabic to full-width")
    void thereAreManySets() {
        // Unicode 13.0, DerivedGeneralCategory.txt: 650 code points in Nd, ten a set (number from memory)
        assertThat(zeros().count()).isGreaterThanOrEqualTo(60);
        assertThat(zeros()).contains((int) '٠', (int) '۰', (int) '०', (int) '০', (int) '๐', (int) '０', 0x1D7CE);
    }

    @ParameterizedTest
    @MethodSource("zeros")
    @DisplayName("A30 every digit set reads alike")
    void everySetReadsAlike(int zero) {
        Question when = question("when", Kind.SAID_DATE);
        assertSays(
            read(when, "when.precision", "day", "when.day", in(zero, "29"), "when.month", in(zero, "2"), "when.year",
                in(zero, "2024")),
            new Said(new OnDay(LocalDate.of(2024, 2, 29))));
        Question hair = question("hair", Kind.HAIR_LENGTH);
        assertSays(read(hair, "hair.cm", in(zero, "107"), "hair.straight", "yes"), new Length(107, true));
    }

    private static String in(int zero, String digits) {
        var other = new StringBuilder();
        digits.chars().forEach(d -> other.appendCodePoint(zero + d - '0'));
        return other.toString();
    }
}
