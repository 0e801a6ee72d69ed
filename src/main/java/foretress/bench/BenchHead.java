package foretress.bench;

import foretress.visit.Visit;
import foretress.web.ChairTime;

/** What stands over every page of the bench. */
public record BenchHead(String client, String when, String visitHref, String benchHref, boolean ahead) {
    public static BenchHead of(Visit visit, ChairTime time) {
        return new BenchHead(visit.client.fullName(), time.dayAndTime(visit.startsThere()), "/visits/" + visit.id,
            BenchDoor.at(visit),
            visit.state.isAhead());
    }

    /** Where a test of this kind begins. */
    String begins(BenchKind kind) {
        return benchHref + "/" + kind.code();
    }
}
