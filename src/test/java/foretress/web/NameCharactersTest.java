package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("R68: a name cannot be made to read as another one")
class NameCharactersTest {
    @ParameterizedTest
    @ValueSource(ints = { 0x202A, 0x202B, 0x202C, 0x202D, 0x202E, 0x2066, 0x2067, 0x2068, 0x2069, 0x200E, 0x200F,
        0x061C, 0x2028, 0x2029, 0x09, 0x0A, 0x1B, 0x7F, 0x85 })
    void signsThatAreNotSeenAreRefused(int sign) {
        assertThat(NameCharacters.plain("Ottilie" + Character.toString(sign) + "Brandt")).isFalse();
    }

    /** U+200C and U+200D belong to how Persian and several scripts of India are spelt. */
    @Test
    void namesOfAnyScriptAreNames() {
        for (String name : new String[] { "Ottilie O'Brandt-Łącka", "\u05E9\u05DC\u05D5\u05DD",
            "\u0645\u0631\u06CC\u0645", "\u0646\u06CC\u200C\u06A9\u06CC", "\uD83C\uDF3F", "e\u0301" }) {
            assertThat(NameCharacters.plain(name)).as(name).isTrue();
        }
    }
}
