package foretress.bench;

import foretress.assessment.Weight;

/**
 * What a test may come to, as its page shows it before and while it is made.
 *
 * @param text what it means in itself; may be empty
 * @param then where the booked service would stand; empty while the client has said nothing
 * @param holds it is what the test says now
 */
public record BenchOutcome(Weight weight, String word, String text, String then, boolean holds) {}
