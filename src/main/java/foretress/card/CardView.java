package foretress.card;

import foretress.assessment.Weight;
import foretress.consent.ConsentInput.Strand;
import foretress.told.SentPhotoViews;
import java.util.List;
import java.util.Optional;

/**
 * A client's record card in words, the same for the screen and for paper. What is absent is an empty text.
 *
 * @param merged how many records it is made of, when it is more than one
 * @param map the strand map of today as SVG and list; empty when nothing lies on the hair
 */
public record CardView(String id, String client, List<Line> particulars, String merged, String map, String mapAside,
    Optional<Strand> strand,
    List<TestView> tests, List<VisitView> visits) {
    public CardView {
        particulars = List.copyOf(particulars);
        tests = List.copyOf(tests);
        visits = List.copyOf(visits);
    }

    public record Line(String label, String value) {}

    public record Found(Weight weight, String word, String title) {}

    /** A test: what came of it, and its days. */
    public record TestView(String name, String outcome, String days) {}

    /**
     * One visit.
     *
     * @param standing empty while nothing was assessed, or when the consent was withdrawn
     * @param told what the client said by the link of the visit: reactions, and that there was a complaint
     */
    public record VisitView(String id, String when, String services, String stylist, String state,
        Optional<Weight> standing, String word,
        List<Found> findings, List<DecisionView> decisions, List<DoneView> done, List<PhotoView> photos,
        List<SentPhotoViews.Line> sent, List<PaperView> papers, List<String> told) {
        public String getId() {
            return id;
        }
    }

    /** A decision: one line a service and those that go with it, and by whom. */
    public record DecisionView(List<String> lines, String by) {}

    /**
     * One version of a closing, the newest first.
     *
     * @param wrong what went wrong, in lines; that nothing did is a line too
     * @param why it was put right; empty in the first version
     */
    public record DoneView(List<String> services, List<String> products, String strandTest, List<String> wrong,
        boolean happened, String condition, String notes,
        String why, String by) {}

    public record PhotoView(String href, String label, String when) {}

    public record PaperView(int version, String label) {}
}
