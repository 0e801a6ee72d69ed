package foretress.assessment;

import java.util.Optional;

/**
 * What a step that was done means at a later visit.
 *
 * @param countsAs the treatment it is in the history of the hair; empty when it leaves nothing
 * @param foundIn the zone of the hair it is found in; empty where the service says
 * @param reaction how a client would tell of a reaction to it; empty when it puts nothing on the skin
 */
public record Afterwards(Optional<String> countsAs, Optional<String> foundIn, Optional<Reaction> reaction) {
    public static final Afterwards NOTHING = new Afterwards(Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * @param question the id of the question that asks for it; what it was is asked by the same with {@code -what} behind it
     * @param which the answer to the question with {@code -which} behind it, where there is one
     */
    public record Reaction(String question, Optional<String> which) {}
}
