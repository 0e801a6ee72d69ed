package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlipsTest {

    /** Optimal string alignment; "ca" and "abc" are three apart by it (textbook example, from memory). */
    @ParameterizedTest
    @CsvSource({ "kitten, sitting, 3", "ca, abc, 3", "ab, ba, 1", "abcd, acbd, 1", "same, same, 0", "a, abcd, 3" })
    void textbookDistances(String a, String b, int slips) {
        assertThat(Slips.between(a, b, 5)).isEqualTo(slips);
        assertThat(Slips.between(b, a, 5)).isEqualTo(slips);
    }

    @Test
    void stoppingEarlyNeverChangesTheAnswer() {
        var lot = new Random(11);
        for (int i = 0; i < 20_000; i++) {
            String a = word(lot);
            String b = word(lot);
            int full = Slips.between(a, b, 20);
            for (int most = 0; most <= 3; most++) {
                assertThat(Slips.between(a, b, most)).as("%s %s %d", a, b, most).isEqualTo(Math.min(full, most + 1));
            }
        }
    }

    private static String word(Random lot) {
        return lot.ints(lot.nextInt(7), 'a', 'd')
            .collect(StringBuilder::new, (s, c) -> s.append((char) c), StringBuilder::append).toString();
    }
}
