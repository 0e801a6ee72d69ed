package foretress.invitation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TokenTest {
    /** B1: 32 bytes are 43 letters of base64url without padding (RFC 4648 section 5: 4 letters for 3 bytes). */
    @Test
    void aTokenIs256BitsInLettersThatNeedNoEscaping() {
        assertThat(Token.fresh().reveal()).matches("[A-Za-z0-9_-]{43}");
    }

    @Test
    void aMillionTokensAreAMillionTokens() {
        Set<String> seen = new HashSet<>(2_000_000);
        for (int i = 0; i < 1_000_000; i++) {
            seen.add(Token.fresh().reveal());
        }
        assertThat(seen).hasSize(1_000_000);
    }

    /** The digest of "abc" is the worked example of FIPS 180-4 (NIST, SHA-256 examples). */
    @Test
    void theHashIsTheStandardOne() {
        assertThat(Token.hash("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void printingATokenDoesNotRevealIt() {
        Token token = Token.fresh();
        assertThat("" + token).doesNotContain(token.reveal());
    }

    @Test
    void codesKeepTheirLeadingZeros() {
        for (int i = 0; i < 10_000; i++) {
            assertThat(Token.freshCode()).matches("[0-9]{8}");
        }
    }
}
