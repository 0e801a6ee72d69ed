package foretress.vault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.Arrays;
import java.util.Base64;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("master.key holds one key a line; the newest whose moment has come wraps")
class MasterKeysTest {
    private static final Instant NINE = Instant.parse("2026-12-01T09:00:00Z");
    private static final Instant TEN = Instant.parse("2026-12-01T10:00:00Z");

    private static byte[] key(int of) {
        byte[] bytes = new byte[MasterKeys.BYTES];
        Arrays.fill(bytes, (byte) of);
        return bytes;
    }

    private static String line(int of) {
        return Base64.getEncoder().encodeToString(key(of));
    }

    @Test
    void aFileOfBeforeIsOneKeyFromEverOn() {
        MasterKeys keys = MasterKeys.read(line(1) + "\n");
        assertThat(keys.newestFirst()).hasSize(1);
        assertThat(keys.at(Instant.EPOCH).key()).isEqualTo(key(1));
        assertThat(keys.text()).isEqualTo(line(1) + "\n");
    }

    @Test
    void aNewKeyWrapsFromItsVeryMomentOn() {
        MasterKeys keys = MasterKeys.read(line(1)).with(key(2), TEN);
        assertThat(keys.at(TEN.minusNanos(1)).key()).isEqualTo(key(1));
        assertThat(keys.at(TEN).key()).isEqualTo(key(2));
        assertThat(keys.at(TEN).fingerprint()).isNotEqualTo(keys.at(NINE).fingerprint());
    }

    @Test
    void whatIsWrittenIsReadAgainWithCommasToo() {
        MasterKeys keys = MasterKeys.read(line(1)).with(key(3), TEN).with(key(2), NINE);
        assertThat(keys.text()).isEqualTo("%s %s%n%s %s%n%s%n".formatted(line(3), TEN, line(2), NINE, line(1)));
        assertThat(MasterKeys.read(keys.text()).text()).isEqualTo(keys.text());
        assertThat(MasterKeys.read(keys.text().strip().replace("\n", ",")).text()).isEqualTo(keys.text());
    }

    @Test
    void onlyKeysOlderThanTheOneInUseAreDropped() {
        MasterKeys keys = MasterKeys.read(line(1)).with(key(2), NINE).with(key(3), TEN);
        assertThat(keys.withoutBefore(NINE).newestFirst()).extracting(MasterKeys.One::from).containsExactly(TEN, NINE);
        assertThat(keys.withoutBefore(TEN).newestFirst()).extracting(MasterKeys.One::from).containsExactly(TEN);
        assertThat(keys.withoutBefore(NINE.minusSeconds(1)).newestFirst()).hasSize(3);
    }

    @ParameterizedTest
    @ValueSource(
        strings = { "", "\n\n", "AAECAw==", "no key at all!", "AAECAwQFBgcICQoLDA0ODxAREhMUFRYXGBkaGxwdHh8= soon" })
    void whatIsNoKeyIsRefused(String text) {
        assertThatThrownBy(() -> MasterKeys.read(text)).isInstanceOf(IllegalArgumentException.class);
    }
}
