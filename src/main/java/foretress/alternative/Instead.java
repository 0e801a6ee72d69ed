package foretress.alternative;

import foretress.assessment.Weight;
import java.util.List;

/**
 * What could be done instead, and what else there is.
 *
 * @param booked for each booked service what reaches the same more gently
 * @param other the other aims, each with its services
 * @param counts how many services stand where
 * @param wish the service the client asked for; empty when none
 */
public record Instead(List<Booked> booked, List<Aim> other, List<Alternative.Count> counts, String wish) {
    /**
     * @param aims what it is for, in words
     * @param ways what reaches that more gently, the gentlest first, and is not off
     * @param off ways to the same that are off as things stand
     * @param stronger ways to the same that are no gentler
     * @param needs what would have to happen for the booked service itself
     * @param source where what a service can do was taken from
     */
    public record Booked(String service, String aims, Weight weight, String word, List<GentlerWay> ways,
        List<GentlerWay> off,
        List<GentlerWay> stronger, List<Need> needs, String source) {}

    /** Another aim. */
    public record Aim(String name, List<Alternative> ways) {
        /** How many of its services stand where. */
        public List<Alternative.Count> counts() {
            return Alternative.Count.of(ways);
        }
    }
}
