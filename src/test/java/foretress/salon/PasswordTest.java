package foretress.salon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.text.Normalizer;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("B8, B9: which passwords are taken, and how they are kept")
class PasswordTest {
    private static final List<String> KNOWN = List.of("Alder & Wren", "Tarnbeck", "Edda Wren", "edda");

    /** The worked example of the Argon2 authors' own test suite (phc-winner-argon2, src/test.c), as remembered: 64 MiB, t=2, p=1. */
    @Test
    void aHashMadeElsewhereIsChecked() {
        PasswordHash published = PasswordHash
            .parse("$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc");
        assertThat(published.matches("password")).isTrue();
        assertThat(published.matches("passwore")).isFalse();
    }

    /** At least 19 MiB, two rounds, one lane (OWASP Password Storage sheet). */
    @Test
    void theEffortIsWrittenInTheHash() {
        assertThat(PasswordHash.of("kettle orbit walnut 7").toString()).startsWith("$argon2id$v=19$m=19456,t=2,p=1$");
        assertThat(PasswordHash.of("kettle orbit walnut 7").isOutdated()).isFalse();
    }

    @Test
    void nobodysHashAsksTheSameEffortAndIsNeverTheSameTwice() {
        PasswordHash nobody = PasswordHash.ofNobody();
        assertThat(nobody.toString()).startsWith("$argon2id$v=19$m=19456,t=2,p=1$")
            .hasSameSizeAs(PasswordHash.of("kettle orbit walnut 7").toString())
            .isNotEqualTo(PasswordHash.ofNobody().toString());
        assertThat(nobody.matches("")).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = { "m=19455,t=2", "m=19456,t=1", "m=8192,t=1" })
    void lessEffortIsOutdated(String effort) {
        assertThat(PasswordHash
            .parse("$argon2id$v=19$" + effort + ",p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc")
            .isOutdated()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "$2y$10$abcdefghijklmnopqrstuv", "$argon2i$v=19$m=19456,t=2,p=1$c29t$CTFh",
        "kettle orbit walnut 7" })
    void anythingElseIsNotAHash(String text) {
        assertThatThrownBy(() -> PasswordHash.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }

    static Stream<String> longOnes() {
        return Stream.of("a".repeat(72) + "X", "🦊🌲".repeat(32), "пароль из нескольких слов", "  blanks count too  ");
    }

    @ParameterizedTest
    @MethodSource("longOnes")
    void everyCharacterCountsToTheLast(String password) {
        PasswordHash hash = PasswordHash.of(password);
        assertThat(PasswordHash.parse(hash.toString()).matches(password)).isTrue();
        assertThat(hash.matches(password.substring(0, password.length() - 1))).isFalse();
        assertThat(hash.matches(password + " ")).isFalse();
    }

    @Test
    void anAccentIsTheSameComposedOrApart() {
        String composed = "café crème brûlée 9";
        assertThat(PasswordHash.of(composed).matches(Normalizer.normalize(composed, Normalizer.Form.NFD))).isTrue();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", value = {
        "fourteen chars | TOO_SHORT",
        "kettle orbit walnut 7 | -",
        "exactly15chars! | -",
        "correct horse battery staple | COMMON",
        "Password12345678 | COMMON",
        "qwertyuiop123456 | COMMON",
        "P a s s w o r d 2026! | COMMON",
        "aaaaaaaaaaaaaaaa | REPETITIVE",
        "abcabcabcabcabcabc | REPETITIVE",
        "kettlekettlekettle | REPETITIVE",
        "Alder & Wren Tarnbeck | SALON_WORDS",
        "edda-wren-tarnbeck-9 | SALON_WORDS",
        "tarnbeck has a quiet mill | -",
        "wortkette aus dem garten | -" })
    void longAndNotTheFirstGuess(String password, PasswordRule.Fault fault) {
        if (fault == null) {
            assertThat(PasswordRule.fault(password, KNOWN)).isEmpty();
        } else {
            assertThat(PasswordRule.fault(password, KNOWN)).contains(fault);
        }
    }

    static Stream<Arguments> lengths() {
        return Stream.of(Arguments.of(14, Optional.of(PasswordRule.Fault.TOO_SHORT)),
            Arguments.of(15, Optional.empty()), Arguments.of(64, Optional.empty()),
            Arguments.of(1024, Optional.empty()), Arguments.of(1025, Optional.of(PasswordRule.Fault.TOO_LONG)));
    }

    @ParameterizedTest(name = "{0} characters")
    @MethodSource("lengths")
    void theBordersOfLength(int length, Optional<PasswordRule.Fault> fault) {
        var random = new Random(7);
        String password =
            random.ints(length, 0, 20).mapToObj(i -> "bdfghjklmnpqrtvwxyz4".substring(i, i + 1)).reduce("",
                String::concat);
        assertThat(PasswordRule.fault(password, KNOWN)).isEqualTo(fault);
    }

    @Test
    void lengthIsCountedInCharactersNotInHalves() {
        assertThat(PasswordRule.fault("🦊🌲🪨🌊🔥🌙⭐🍋🦉🐝🪶🍄🎈🧭", KNOWN)).contains(PasswordRule.Fault.TOO_SHORT);
        assertThat(PasswordRule.fault("🦊🌲🪨🌊🔥🌙⭐🍋🦉🐝🪶🍄🎈🧭🧲", KNOWN)).isEmpty();
    }
}
