package foretress.consultation;

import foretress.alternative.Instead;
import foretress.assessment.Weight;
import foretress.bench.OwedLine;
import foretress.decision.DecisionText;
import foretress.told.SentPhotoViews;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One visit as the stylist reads it, in words. What is absent is an empty text, which a template reads as nothing.
 *
 * @param over what became of a visit at which nothing is to happen any more
 * @param begun there is an answer at all
 * @param answered the client has answered everything that was required
 * @param asks what nobody asked yet, or must ask again
 * @param pairs answers that contradict each other
 */
public record VisitView(Head head, Optional<Over> over, boolean begun, boolean answered, Found found,
    List<String> follows, List<Ask> asks, List<Pair> pairs, Hair hair, List<OwedLine> owed,
    Instead instead, Folded folded) {

    /**
     * Whose visit it is.
     *
     * @param facts age, earlier visits, when the answers were signed
     * @param when the day and the time of the visit
     */
    public record Head(String id, String clientId, String client, String facts, String when, String service) {}

    /**
     * What was found, the heaviest first.
     *
     * @param standing the heaviest weight on the booked services
     * @param reasons the heaviest findings that restrict or more, and acts for such findings
     * @param more the others
     */
    public record Found(Weight standing, String standingWord, List<Point> reasons, List<Point> more) {
        /** How many findings are folded behind the first screen's. */
        public int moreFindings() {
            return findings(more);
        }
    }

    /**
     * @param map the strand map as SVG and list
     * @param aside the hair's length and how sure it is
     */
    public record Hair(String map, String aside) {}

    /**
     * What lies behind the first screen.
     *
     * @param notes what weighs less
     * @param photos what the client sent
     */
    public record Folded(List<Point> notes, Optional<Since> since, List<Chapter> answers, String answersBrief,
        List<SentPhotoViews.Line> photos, List<Paper> papers) {
        public int noteFindings() {
            return findings(notes);
        }
    }

    public String address() {
        return "/visits/" + head.id();
    }

    public String bench() {
        return address() + "/bench";
    }

    /** Nothing is owed and nothing is to be asked: the next act is the decision. */
    public boolean isReady() {
        return owed.isEmpty() && asks.stream().allMatch(ask -> ask.href().isEmpty());
    }

    private static int findings(List<Point> points) {
        return points.stream().mapToInt(point -> point.reasons().size()).sum();
    }

    /**
     * A visit that was closed, called off, or whose client took their consent back; what can still be done stands as links.
     *
     * @param readable the answers may still be read
     */
    public record Over(String word, String text, List<Link> links, boolean readable) {}

    public record Link(String href, String words) {}

    /**
     * Something to ask.
     *
     * @param href where it is asked; empty when it cannot be asked now
     */
    public record Ask(String title, String what, String href, String act) {}

    /** Two answers that cannot both be right. */
    public record Pair(String one, String other) {}

    /**
     * A finding with why it was made.
     *
     * @param todo the whole of what to do
     * @param because the answers that decided it, and how typed words in them were read
     * @param brief the first of them, none cut off, and how many more there are
     * @param condition the rule's condition as it stands in the rule file
     * @param sources where the rule comes from
     * @param lookUp where a name that nobody can read is looked up; empty when there is none
     */
    public record Reason(String rule, Weight weight, String word, String title, String todo, List<String> because,
        String brief, boolean unsure,
        String condition, List<String> sources, String lookUp) {
        /** The same, saying first that it is an earlier visit's. */
        Reason foundEarlier(String words) {
            return new Reason(rule, weight, word, title, todo,
                Stream.concat(Stream.of(words), because.stream()).toList(), words, unsure, condition, sources, "");
        }
    }

    /**
     * A finding, or an act that would settle several which stand only because an answer is not known.
     *
     * @param weight the heaviest of them
     * @param title what to do; empty for a finding, which says it itself
     * @param asked the first question it would answer, and how many more there are
     */
    public record Point(Weight weight, String word, String title, String asked, List<Reason> reasons) {
        static Point alone(Reason reason) {
            return new Point(reason.weight(), reason.word(), "", "", List.of(reason));
        }

        public boolean isMany() {
            return reasons.size() > 1;
        }

        boolean isUnsure() {
            return isMany() || only().unsure();
        }

        public Reason only() {
            return reasons.get(0);
        }

        /** The room it takes on the first screen: an act is one line, a finding says what to do at length. */
        int lines() {
            return isMany() ? 1 : 2;
        }
    }

    /** What is otherwise than at the visit before this one. */
    public record Since(String day, List<DecisionText.Said> answers, List<DecisionText.Changed> changes) {}

    public record Chapter(String title, String brief, List<Line> lines) {}

    public record Line(String label, String answer) {}

    /**
     * A signed consent on file.
     *
     * @param copied there is a copy in the words of whoever reads this
     */
    public record Paper(int version, String label, boolean copied) {}
}
