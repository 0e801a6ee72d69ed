package foretress.consultation;

import foretress.card.BenchTestKind;
import foretress.visit.Visit;

/** What stands over every page of the bench. */
public record BenchHead(String client, String when, String visitHref, String benchHref, boolean ahead) {
    static BenchHead of(Visit visit, ChairTime time) {
        return new BenchHead(visit.client.fullName(), time.dayAndTime(visit.startsThere()), "/visits/" + visit.id, BenchDoor.at(visit),
            visit.state.isAhead());
    }

    /** Where a test of this kind begins. */
    String begins(BenchTestKind kind) {
        return benchHref + "/" + kind.code();
    }
}
