package foretress.skintest;

import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.net.URI;
import java.util.Optional;

/** The spot of a skin test as the client watches it: where what is seen there is told. */
@Singleton
public class TestSpot {
    private final Links links;

    TestSpot(Links links) {
        this.links = links;
    }

    /** Whether a skin test was put on for this visit. */
    public boolean isWatched(Visit visit) {
        return newest(visit).isPresent();
    }

    /** Its page, by a further link; a path of this server. */
    public Optional<String> page(Visit visit) {
        return newest(visit).map(test -> URI.create(links.make(test.id(), "client")).getPath());
    }

    private static Optional<TestApplied> newest(Visit visit) {
        return TestApplied.ofClient(visit.client.id).stream().filter(test -> test.visitId().equals(visit.id))
            .findFirst();
    }
}
