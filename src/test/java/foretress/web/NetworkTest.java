package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class NetworkTest {
    /** RFC 4291 section 2.2 gives the short forms; a home or phone is usually given a whole /64. */
    @Test
    void oneIpv6NetworkCountsAsOneAddress() {
        assertThat(Network.of("2001:db8::1")).isEqualTo(Network.of("2001:db8:0:0:ffff::2"));
        assertThat(Network.of("2001:db8:0:1::1")).isNotEqualTo(Network.of("2001:db8::1"));
        assertThat(Network.of("::1")).isEqualTo("0:0:0:0");
    }

    @Test
    void anIpv4AddressIsItsOwn() {
        assertThat(Network.of("192.0.2.1")).isEqualTo("192.0.2.1").isNotEqualTo(Network.of("192.0.2.2"));
    }
}
