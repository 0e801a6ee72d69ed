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
}
