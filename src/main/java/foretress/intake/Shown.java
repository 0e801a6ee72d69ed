package foretress.intake;

import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.UUID;

/** Notes when a page was put before the client, for the evidence behind the signature. */
@Singleton
public class Shown {
    private final Clock clock;

    Shown(Clock clock) {
        this.clock = clock;
    }

    @Transactional
    public void page(UUID visitId, String page) {
        PageShown.note(visitId, page, clock.instant());
    }
}
