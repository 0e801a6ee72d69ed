package foretress.vault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import java.lang.reflect.Proxy;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What somebody is told was taken is on the device first, whichever page took it. */
class DurableActsTest {
    private int forced;
    private boolean broken;
    private final DurableActs acts = new DurableActs(new Durable(null, null) {
        @Override
        public void force() {
            if (broken) {
                throw new IllegalStateException("no device");
            }
            forced++;
        }
    });

    private void answered(String method, boolean turnedAway, int status) {
        Map<Object, Object> properties = new HashMap<>();
        ContainerRequestContext request = fake(ContainerRequestContext.class, Map.of("getMethod", method), properties);
        if (!turnedAway) {
            acts.reached(request);
        }
        acts.keep(request, fake(ContainerResponseContext.class, Map.of("getStatus", status), Map.of()));
    }

    private static <T> T fake(Class<T> type, Map<String, Object> answers, Map<Object, Object> properties) {
        return type.cast(Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] { type },
            (self, method, given) -> switch (method.getName()) {
                case "setProperty" -> properties.put(given[0], given[1]);
                case "getProperty" -> properties.get(given[0]);
                default -> answers.get(method.getName());
            }));
    }

    @Test
    void anActThatWasTakenIsForcedOnce() {
        answered("POST", false, 303);
        assertThat(forced).isEqualTo(1);
    }

    @Test
    void lookingForcesNothing() {
        answered("GET", false, 200);
        answered("HEAD", false, 200);
        assertThat(forced).isZero();
    }

    @Test
    void aRefusedActForcesNothing() {
        for (int status : new int[] { 400, 403, 409, 422, 429, 500 }) {
            answered("POST", false, status);
        }
        assertThat(forced).isZero();
    }

    @Test
    void aStrangerSentToTheSignInPageForcesNothing() {
        answered("POST", true, 303);
        assertThat(forced).isZero();
    }

    @Test
    void nobodyIsToldOfAnActThatCouldNotBeForced() {
        broken = true;
        assertThatThrownBy(() -> answered("POST", false, 303)).isInstanceOf(IllegalStateException.class);
    }
}
