package foretress.consultation;

import foretress.assessment.Weight;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One visit as the stylist reads it, in words. What is absent is an empty text, which a template reads as nothing.
 *
 * @param when the day and the time of the visit
 * @param facts age, earlier visits, when the answers were signed
 * @param begun there is an answer at all
 * @param answered the client has answered everything that was required
 * @param standing the heaviest weight on the booked services
 * @param reasons the heaviest findings that restrict or more
 * @param more the other such findings
 * @param notes lighter findings
 * @param map the strand map as SVG and list
 * @param mapAside the hair's length and how sure it is
 */
public record Reading(String id, String clientId, String client, String facts, String when, boolean begun, boolean answered, Weight standing, String standingWord,
                      String service, List<String> follows, List<Reason> reasons, List<Reason> more,
                      List<Reason> notes, String map, String mapAside,
                      List<OwedTest> owed, List<Other> instead, List<Chapter> answers, List<Paper> papers, Optional<Since> since) {

    public String address() {
        return "/visits/" + id;
    }

    public String bench() {
        return address() + "/bench";
    }

    /**
     * A finding with why it was made.
     *
     * @param todo what to do first, one sentence; the rest of what to do follows
     * @param because the answers that decided it
     * @param condition the rule's condition as it stands in the rule file
     * @param sources where the rule comes from
     */
    public record Reason(String rule, Weight weight, String word, String title, String todo, String rest, List<String> because, boolean unsure,
                         String condition, List<String> sources) {
        /** The same, saying first that it is an earlier visit's. */
        Reason foundEarlier(String words) {
            return new Reason(rule, weight, word, title, todo, rest, Stream.concat(Stream.of(words), because.stream()).toList(), unsure, condition, sources);
        }
    }

    /** What is otherwise than at the visit before this one. */
    public record Since(String day, List<DecisionText.Said> answers, List<DecisionText.Changed> changes) {}

    /** A test that comes first, and the latest moment it can begin. */
    public record OwedTest(String name, String how, String latest, boolean late) {}

    /** Where another service stands for this client. */
    public record Other(String service, Weight weight, String word, String because, int notAsked) {
        /** Nothing much weighs on it, but not everything was asked: that may be called neither nothing found nor a note. */
        public boolean unsaid() {
            return weight.compareTo(Weight.RESTRICTS) < 0 && notAsked > 0;
        }

        /** Lightest first; what nobody has asked about stands before what a test must clear, not among what is known to be light. */
        Weight place() {
            return unsaid() ? Weight.TEST_FIRST : weight;
        }
    }

    public record Chapter(String title, String brief, List<Line> lines) {}

    public record Line(String label, String answer) {}

    /** A signed consent on file. */
    public record Paper(int version, String label) {}
}
