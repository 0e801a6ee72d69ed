package foretress.seal;

import java.time.Instant;

/** Papers sealed by somebody else's key. */
public final class Foreign {
    private static final Instant NOW = Instant.parse("2026-12-01T09:00:00Z");

    private Foreign() {}

    public static byte[] sealed(byte[] paper) {
        return PaperSeal.put(paper, SealingKey.make("Another salon", NOW), NOW);
    }
}
