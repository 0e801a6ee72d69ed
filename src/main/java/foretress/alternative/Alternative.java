package foretress.alternative;

import foretress.assessment.Weight;
import java.util.List;

/**
 * Where another service stands for this client.
 *
 * @param id of the service, which {@code service} names
 */
public record Alternative(String id, String service, Weight weight, String word, String because, int notAsked) {
    /** Nothing much weighs on it, but not everything was asked: that may be called neither nothing found nor a note. */
    public boolean unsaid() {
        return weight.compareTo(Weight.RESTRICTS) < 0 && notAsked > 0;
    }

    /** Lightest first; what nobody has asked about stands before what a test must clear, not among what is known to be light. */
    Weight place() {
        return unsaid() ? Weight.TEST_FIRST : weight;
    }

    /** So many services stand there. */
    public record Count(Weight weight, String word, boolean unsaid, int times) {
        /** How many of these stand where, in the order in which they are offered. */
        public static List<Count> of(List<Alternative> all) {
            return all.stream().map(Count::of).distinct()
                .map(one -> one.times((int) all.stream().filter(o -> Count.of(o).equals(one)).count())).toList();
        }

        static Count of(Alternative other) {
            return new Count(other.place(), other.unsaid() ? "" : other.word(), other.unsaid(), 0);
        }

        Count times(int number) {
            return new Count(weight, word, unsaid, number);
        }
    }
}
