package foretress.skintest;

import java.util.List;
import java.util.Optional;

/**
 * Everything about a visit's skin test on one page, in words.
 *
 * @param missing what has to be put right first, each with the way to it
 * @param refused a test must not be made at all; then {@code because} says why and {@code instead} what comes instead
 * @param signed a consent for the planned product is open, so the test can be recorded
 * @param visitAt the short visit as booked, empty when none is
 */
record Overview(String id, String client, String when, String product, List<Step> missing, boolean refused,
    List<Because> because,
    boolean signed, String visitAt, boolean tufts, List<One> tests, List<Paper> papers) {

    public String address() {
        return "/visits/" + id;
    }

    /** A test was made for this visit already: another one is no longer the first thing to do. */
    public boolean again() {
        return tests.stream().anyMatch(One::here);
    }

    public record Step(String words, String link, String act) {}

    public record Because(foretress.assessment.Weight weight, String word, String title, String todo) {}

    /**
     * One test.
     *
     * @param applied who and when, in words
     * @param stands what the test comes to for this visit, in words
     * @param doubts why it does not lift the demand, in words
     * @param earliest from when it may be read
     * @param wipe when to wipe it off; empty once that is over, or where it stays on until it is read
     */
    public record One(String id, String product, String how, String applied, String earliest,
        Optional<Wipe> wipe, boolean readable,
        boolean reacted, String stands,
        List<String> doubts, List<Line> lines, boolean here) {}

    /**
     * @param at the moment, in words
     * @param left seconds until then
     * @param said the same as minutes and seconds
     */
    public record Wipe(String at, long left, String said) {}

    /** One look at it. */
    public record Line(String entry, String when, String who, String signs, String words, String result,
        boolean reacted, String error,
        List<String> photos) {
        /** Where a mistake in the owner's reason is shown. */
        public String field() {
            return "reason-" + entry;
        }

        /** The same for the owner's proof. */
        public String proof() {
            return "password-" + entry;
        }
    }

    public record Paper(int version, String words) {}
}
