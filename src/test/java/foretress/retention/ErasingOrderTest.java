package foretress.retention;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ErasingOrderTest {
    @Test
    @DisplayName("what points at a row, or is found through it, goes first")
    void childrenFirst() {
        assertThat(ErasingOrder.of(
            Map.of("client", "id in (:who)", "visit", "client_id in (:who)", "door",
                "visit_id in (select id from visit where client_id in (:who))"),
            Map.of("visit", Set.of("client"), "client", Set.of("client")))).containsExactly("door", "visit", "client");
    }

    @Test
    @DisplayName("two tables that wait for each other are refused, and nothing is erased by halves")
    void circles() {
        assertThatThrownBy(() -> ErasingOrder.of(Map.of("a", ":who", "b", ":who"),
            Map.of("a", Set.of("b"), "b", Set.of("a")))).hasMessageContaining("[a, b]");
    }
}
