package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("R63: behind proxies the caller is read from the right, and nothing a caller writes is believed")
class ProxiesTest {
    private static final String NOBODY = "198.51.100.66";

    private static String caller(String trusted, String peer, String... lines) {
        return Proxies.of(trusted).caller(peer, List.of(lines));
    }

    @Test
    void withoutATrustedProxyTheHeaderSaysNothing() {
        assertThat(caller("", "203.0.113.5", NOBODY)).isEqualTo("203.0.113.5");
        assertThat(caller("127.0.0.1", "203.0.113.5", NOBODY)).isEqualTo("203.0.113.5");
    }

    @Test
    void behindOneProxyTheRightMostEntryCounts() {
        assertThat(caller("127.0.0.1", "127.0.0.1", "203.0.113.5")).isEqualTo("203.0.113.5");
        assertThat(caller("127.0.0.1", "127.0.0.1", NOBODY + ", 203.0.113.5")).isEqualTo("203.0.113.5");
    }

    /** As HAProxy writes it: a second line, and the caller's own is left where it is (its manual, option forwardfor). */
    @Test
    void linesAreReadAsOneList() {
        assertThat(caller("127.0.0.1", "127.0.0.1", NOBODY, "203.0.113.5")).isEqualTo("203.0.113.5");
    }

    @Test
    void behindTwoProxiesTheFirstThatIsNotOursCounts() {
        assertThat(caller("127.0.0.1,10.0.0.0/8", "127.0.0.1", NOBODY + ", 203.0.113.5, 10.1.2.3"))
            .isEqualTo("203.0.113.5");
        assertThat(caller("127.0.0.1", "127.0.0.1", "203.0.113.5, 10.1.2.3")).isEqualTo("10.1.2.3");
    }

    /** What nginx 1.22.1 and HAProxy 2.6.12 of Debian 12 sent, called from 127.0.0.5 with a forged header, an unreadable and an empty one; 127.0.0.3 between two. */
    @Test
    void whatRealProxiesSentIsReadRight() {
        String one = "127.0.0.1", two = "127.0.0.1,127.0.0.3";
        assertThat(caller(one, "127.0.0.1", "198.51.100.66, 127.0.0.5")).isEqualTo("127.0.0.5");
        assertThat(caller(one, "127.0.0.1", "unknown, , 127.0.0.5")).isEqualTo("127.0.0.5");
        assertThat(caller(two, "127.0.0.1", "198.51.100.66, 127.0.0.5, 127.0.0.3")).isEqualTo("127.0.0.5");
        assertThat(caller(one, "127.0.0.1", "unknown", "", "127.0.0.5")).isEqualTo("127.0.0.5");
        assertThat(caller(two, "127.0.0.1", "198.51.100.66", "127.0.0.5", "127.0.0.3")).isEqualTo("127.0.0.5");
        assertThat(Proxies.of(one).caller("127.0.0.1", Proxies.fors(List.of("for=198.51.100.66", "for=127.0.0.5"))))
            .isEqualTo("127.0.0.5");
    }

    @Test
    void aCallerInsideTheTrustedNetworkIsItself() {
        assertThat(caller("127.0.0.1,10.0.0.0/8", "127.0.0.1", "10.9.9.9")).isEqualTo("10.9.9.9");
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "unknown", "_hidden", "a:b", ",", ",,,", "203.0.113.300", "localhost", "\"", "[::1",
        "1.2.3.4:port", "::1::2", "1.2.3", "%", ":", "[]" })
    void whatIsNoAddressLeavesTheNearestKnownOne(String written) {
        assertThat(caller("127.0.0.1", "127.0.0.1", written)).isEqualTo("127.0.0.1");
        assertThat(caller("127.0.0.1,10.0.0.1", "127.0.0.1", "203.0.113.5, " + written + ", 10.0.0.1"))
            .isEqualTo("10.0.0.1");
    }

    @ParameterizedTest
    @CsvSource({ "203.0.113.5:4711, 203.0.113.5", "[2001:db8::7]:4711, 2001:db8:0:0:0:0:0:7",
        "[2001:db8::7], 2001:db8:0:0:0:0:0:7",
        "2001:db8::7, 2001:db8:0:0:0:0:0:7", "::ffff:203.0.113.5, 203.0.113.5", "fe80::1%eth0, fe80:0:0:0:0:0:0:1" })
    void portsBracketsAndMappedAddressesAreRead(String written, String address) {
        assertThat(caller("::1", "0:0:0:0:0:0:0:1", written)).isEqualTo(address);
    }

    /** RFC 7239, sections 4 and 6, its own examples. */
    @Test
    void theStandardHeaderIsRead() {
        assertThat(Proxies.fors(
            List.of("for=\"_gazonk\"", "For=\"[2001:db8:cafe::17]:4711\"", "for=192.0.2.60;proto=http;by=203.0.113.43",
                "for=192.0.2.43, for=198.51.100.17", "proto=https")))
            .containsExactly("\"_gazonk\"", "\"[2001:db8:cafe::17]:4711\"", "192.0.2.60",
                "192.0.2.43", "198.51.100.17", "unknown");
        assertThat(Proxies.of("127.0.0.1").caller("127.0.0.1",
            Proxies.fors(List.of("for=" + NOBODY, "for=\"[2001:db8:cafe::17]:4711\""))))
            .isEqualTo("2001:db8:cafe:0:0:0:0:17");
    }

    @Test
    void aVeryLongListIsReadFromItsEnd() {
        assertThat(caller("10.0.0.0/8", "10.0.0.1", (NOBODY + ",").repeat(5_000) + "203.0.113.5"))
            .isEqualTo("203.0.113.5");
        assertThat(caller("10.0.0.0/8", "10.0.0.1", "203.0.113.5" + ",10.0.0.2".repeat(5_000))).startsWith("10.");
    }

    @ParameterizedTest
    @ValueSource(strings = { "proxy.example", "10.0.0.0/33", "10.0.0/8", "10.0.0.0/", "2001:db8::/129", "*" })
    void whatIsNoNetworkIsRefused(String entry) {
        assertThatThrownBy(() -> Proxies.of("127.0.0.1, " + entry)).isInstanceOf(IllegalArgumentException.class)
            .hasMessage(entry);
    }

    @ParameterizedTest
    @CsvSource({ "10.0.0.0/8, 10.255.0.1, true", "10.0.0.0/8, 11.0.0.1, false", "192.0.2.128/25, 192.0.2.127, false",
        "192.0.2.128/25, 192.0.2.128, true",
        "2001:db8::/33, 2001:db8:7fff::1, true", "2001:db8::/33, 2001:db8:8000::1, false",
        "0.0.0.0/0, 203.0.113.9, true", "0.0.0.0/0, 2001:db8::1, false" })
    void aNetworkHoldsItsAddresses(String network, String peer, boolean holds) {
        assertThat(caller(network, peer, "192.0.2.250").equals("192.0.2.250")).isEqualTo(holds);
    }
}
