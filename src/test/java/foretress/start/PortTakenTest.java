package foretress.start;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.runtime.QuarkusBindException;
import java.net.BindException;
import java.util.concurrent.ExecutionException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class PortTakenTest {
    /** As the framework wraps it; seen when a start on a busy machine took 106 seconds and another program was quicker. */
    @Test
    @DisplayName("R5: a port that is taken while the server starts is a sentence with its number, not a stack trace")
    void aPortTakenDuringTheStartIsASentence() {
        var taken = new QuarkusBindException("127.0.0.1", 8080, new BindException("Address already in use"));
        var failure = new RuntimeException("Failed to start quarkus",
            new RuntimeException("Unable to start HTTP server", new ExecutionException(taken)));
        assertThat(PortTaken.behind(failure)).hasValueSatisfying(refusal -> {
            assertThat(refusal.reason).isEqualTo(StartRefused.Reason.PORT_IN_USE);
            assertThat(refusal.getMessage()).contains("port 8080", "QUARKUS_HTTP_PORT").doesNotContain("\n");
        });
    }

    @Test
    void anythingElseKeepsItsWholeStory() {
        assertThat(PortTaken
            .behind(new RuntimeException("Failed to start quarkus", new BindException("Address already in use"))))
            .isEmpty();
    }
}
