package foretress.lexicon;

import foretress.lexicon.LabelToken.Gap;
import java.util.BitSet;
import java.util.List;

/**
 * Finds the stretches of a label that claim something is not in it. In doubt a stretch ends early, so that a real ingredient is
 * never taken for a claim: after "free of" it reaches to the first comma, or to the end of the sentence if the list closes with
 * "and" or "or" and has at most six parts.
 */
final class Absences {
    private static final int LONGEST_LIST = 6;
    /** No claim is looked for further than this many words, so that the work stays in step with the text. */
    private static final int FARTHEST = 40;

    private final List<LabelToken> tokens;
    private final BitSet absent = new BitSet();

    private Absences(List<LabelToken> tokens) {
        this.tokens = tokens;
    }

    /** Tokens that lie in such a stretch, the words that open it among them. */
    static BitSet of(List<LabelToken> tokens) {
        Absences absences = new Absences(tokens);
        for (int i = 0; i < tokens.size(); i++) {
            absences.openedAt(i);
        }
        return absences.absent;
    }

    private void openedAt(int at) {
        if (tokens.get(at).percent() && isZero(tokens.get(at).folded()) && !partOfNumber(at)) {
            mark(at, endOfFirst(at + 1));
            return;
        }
        for (List<String> opening : LabelWords.WITHOUT) {
            if (LabelWords.startsHere(tokens, at, opening) && opens(at, opening)) {
                mark(at, end(at + opening.size()));
                return;
            }
        }
    }

    private static boolean isZero(String digits) {
        return digits.chars().allMatch(c -> c == '0');
    }

    /** The 0 of "2.0 %". */
    private boolean partOfNumber(int at) {
        LabelToken token = tokens.get(at);
        return at > 0 && LabelToken.isNumber(tokens.get(at - 1).folded()) && token.from() == tokens.get(at - 1).to() + 1;
    }

    /** A bare "no" opens a claim only before a word and at the head of an item: HC Red No. 3 has a number. */
    private boolean opens(int at, List<String> opening) {
        boolean bareNo = opening.equals(List.of("no"));
        int next = at + opening.size();
        boolean word = next < tokens.size() && !LabelToken.isNumber(tokens.get(next).folded()) && tokens.get(next).before() == Gap.INSIDE;
        return word && (!bareNo || tokens.get(at).before() != Gap.INSIDE);
    }

    private int end(int from) {
        int stop = from + 1;
        int commas = 0;
        boolean closed = false;
        while (stop < tokens.size() && stop < from + FARTHEST && inSentence(stop)) {
            boolean comma = tokens.get(stop).before() == Gap.COMMA;
            commas += comma ? 1 : 0;
            boolean and = LabelWords.AND.contains(tokens.get(stop).folded());
            closed = and || closed && !comma;
            stop++;
        }
        return closed && commas < LONGEST_LIST ? stop : endOfFirst(from);
    }

    private int endOfFirst(int from) {
        int stop = from + 1;
        while (stop < tokens.size() && stop < from + FARTHEST && inSentence(stop) && tokens.get(stop).before() != Gap.COMMA) {
            stop++;
        }
        return Math.min(stop, tokens.size());
    }

    private boolean inSentence(int at) {
        return tokens.get(at).before() != Gap.STOP && tokens.get(at).before() != Gap.LINE;
    }

    private void mark(int from, int to) {
        absent.set(from, Math.max(from, to));
    }

    /** "PPD-free": the word right after says so, unless it goes on with "of" or "from" about something else. */
    static boolean saidFreeAfter(List<LabelToken> tokens, int after) {
        if (after >= tokens.size() || tokens.get(after).before() != Gap.INSIDE || !LabelWords.FREE_AFTER.contains(tokens.get(after).folded())) {
            return false;
        }
        boolean goesOn = after + 1 < tokens.size() && tokens.get(after + 1).before() == Gap.INSIDE
            && (LabelWords.OF.contains(tokens.get(after + 1).folded()) || tokens.get(after + 1).folded().equals("flowing"));
        return !goesOn;
    }
}
