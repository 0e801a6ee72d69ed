package foretress.bench;

import foretress.alternative.Instead;
import foretress.assessment.Weight;
import java.util.List;
import java.util.Optional;

/**
 * The bench of one visit: what comes first, what runs, everything that can be tried, and what came of it.
 *
 * @param begun the client has answered something, so that there is a standing
 * @param instead what could be done instead; empty before that, and for whoever has this version on the screen already
 */
public record BenchOverview(BenchHead head, boolean begun, Weight standing, String standingWord, String service,
    List<Owed> owed,
    List<BenchTimer> timers, List<Kind> kinds, String length, Optional<Instead> instead, List<Past> past,
    BenchNews news) {
    /** A test the plan asks for, and where it begins; no link for one that is not made at the bench. */
    public record Owed(String name, String why, String latest, boolean late, String href) {}

    public record Kind(String name, String what, String href) {}

    /**
     * A test that was made.
     *
     * @param weight what its result weighs; absent when it says nothing yet
     * @param struck it was entered in error
     */
    public record Past(String href, String name, String when, boolean read, Weight weight, String result,
        boolean struck, String note) {}

    public String live() {
        return head.benchHref() + "/live";
    }
}
