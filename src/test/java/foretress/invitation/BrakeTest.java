package foretress.invitation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BrakeTest {
    @Test
    void theKnockAfterTheLastAllowedOneIsHeldBackAndAnotherAddressIsNot() {
        var brake = new Brake(3, 100);
        for (int i = 0; i < 3; i++) assertThat(brake.lets("192.0.2.1")).isTrue();
        assertThat(brake.lets("192.0.2.1")).isFalse();
        assertThat(brake.lets("192.0.2.2")).isTrue();
    }

    @Test
    void allTogetherAreHeldBackToo() {
        var brake = new Brake(10, 5);
        for (int i = 0; i < 5; i++) assertThat(brake.lets("192.0.2." + i)).isTrue();
        assertThat(brake.lets("192.0.2.99")).isFalse();
    }

    /** RFC 4291 section 2.2 gives the short forms; a home or phone is usually given a whole /64. */
    @Test
    void oneIpv6NetworkCountsAsOneAddress() {
        assertThat(Brake.network("2001:db8::1")).isEqualTo(Brake.network("2001:db8:0:0:ffff::2"));
        assertThat(Brake.network("2001:db8:0:1::1")).isNotEqualTo(Brake.network("2001:db8::1"));
        assertThat(Brake.network("::1")).isEqualTo("0:0:0:0");
    }
}
