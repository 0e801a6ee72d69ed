package foretress.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("D16: a key comes back from any so many of its printed shares, and from no fewer")
class KeySharesTest {
    private final byte[] key = key(1);
    private final List<String> five = KeyShares.split(key, 3, 5, new SecureRandom());

    private static byte[] key(int seed) {
        byte[] bytes = new byte[32];
        new Random(seed).nextBytes(bytes);
        return bytes;
    }

    @Test
    void anyThreeOfFiveGiveItBackInAnyOrder() throws Exception {
        for (int a = 0; a < 5; a++) {
            for (int b = 0; b < 5; b++) {
                for (int c = 0; c < 5; c++) {
                    if (a != b && b != c && a != c) {
                        assertThat(KeyShares.join(List.of(five.get(a), five.get(b), five.get(c)))).isEqualTo(key);
                    }
                }
            }
        }
        assertThat(KeyShares.join(five)).isEqualTo(key);
    }

    @Test
    void twoOrOneThreeTimesDoNot() {
        assertThatThrownBy(() -> KeyShares.join(five.subList(0, 2))).hasMessage(
            "3 different shares are needed, and these are 2.");
        assertThatThrownBy(() -> KeyShares.join(List.of(five.get(0), five.get(0), five.get(0))))
            .hasMessageContaining("these are 1");
        assertThatThrownBy(() -> KeyShares.join(List.of())).isInstanceOf(KeyShares.Unusable.class);
    }

    @Test
    void everyMistypedLetterIsFoundAndItsShareNamed() {
        String good = five.get(1);
        for (int at = 0; at < good.length(); at++) {
            if (good.charAt(at) == ' ') {
                continue;
            }
            char other = good.charAt(at) == 'Q' ? 'R' : 'Q';
            List<String> typed = new ArrayList<>(five.subList(0, 3));
            typed.set(1, good.substring(0, at) + other + good.substring(at + 1));
            assertThatThrownBy(() -> KeyShares.join(typed)).as("letter %d", at)
                .hasMessage("Share 2 in your list is mistyped: its checksum does not fit.");
        }
    }

    @Test
    void smallLettersHyphensAndNoBlanksAreAsGood() throws Exception {
        List<String> typed = List.of(five.get(4).toLowerCase(Locale.ROOT), five.get(0).replace(" ", ""),
            five.get(2).replace(' ', '-'));
        assertThat(KeyShares.join(typed)).isEqualTo(key);
    }

    @Test
    void aShareOfAnotherKeyOrOneCutShortIsNamed() {
        String other = KeyShares.split(key(2), 3, 5, new SecureRandom()).get(2);
        assertThatThrownBy(() -> KeyShares.join(List.of(five.get(0), five.get(1), other)))
            .hasMessageContaining("Share 3 in your list belongs to another key");
        assertThatThrownBy(() -> KeyShares.join(List.of(five.get(0), "ABCD EFGH")))
            .hasMessageContaining("Share 2 in your list has 8 letters");
    }

    @Test
    void impossibleNumbersAreRefused() {
        for (int[] numbers : new int[][] { { 1, 5 }, { 6, 5 }, { 3, 17 } }) {
            assertThatThrownBy(() -> KeyShares.split(key, numbers[0], numbers[1], new SecureRandom()))
                .isInstanceOf(IllegalArgumentException.class);
        }
    }
}
