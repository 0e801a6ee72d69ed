package foretress.running;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.web.Problem;
import foretress.web.Problems;
import org.eclipse.microprofile.health.HealthCheckResponse.Status;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("R68: a full disk is said, not hidden")
class SpaceTest {
    private static Space of(long mebibytes) {
        return new Space(() -> mebibytes << 20, 64);
    }

    @Test
    void belowTheFloorTheServerIsNotReady() {
        assertThat(new SpaceCheck(of(63)).call().getStatus()).isEqualTo(Status.DOWN);
        assertThat(new SpaceCheck(of(64)).call().getStatus()).isEqualTo(Status.UP);
    }

    @Test
    void aFailureWithoutRoomSaysThatThereIsNone() {
        assertThat(Problems.statusOf(of(3))).isEqualTo(507);
        assertThat(Problems.statusOf(of(3_000))).isEqualTo(500);
        assertThat(Problem.of(507)).isEqualTo(Problem.NO_SPACE);
    }
}
