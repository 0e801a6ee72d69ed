package foretress.lexicon;

import foretress.lexicon.LabelToken.Gap;
import java.util.BitSet;
import java.util.List;
import java.util.Map;

/**
 * Finds the stretches of a label that claim something is not in it. In doubt a stretch ends early, so that a real ingredient is
 * never taken for a claim: after "free of" it reaches to the first comma, or to the end of the sentence if the list closes with
 * "and" or "or" and has at most six parts.
 */
final class Absences {
    private static final int LONGEST_LIST = 6;
    /** No claim is looked for further than this many words, so that the work stays in step with the text. */
    private static final int FARTHEST = 40;
    private static final int LONGEST_OPENING = 3;
    private static final int SHORT_WORD = 3;
    private static final int LONGEST_WORD = 9;

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
        for (List<String> opening : LabelWords.WITHOUT_BY_FIRST.getOrDefault(tokens.get(at).folded(), List.of())) {
            if (LabelWords.startsHere(tokens, at, opening) && opens(at, opening)) {
                mark(at, end(at + opening.size()));
                return;
            }
        }
        damagedOpening(at);
    }

    /** A damaged opening counts where the word that denies is whole, or is a long one: "cotnains no", "witout", "freee from", but never "ein" for "kein". */
    private void damagedOpening(int at) {
        if (longOpening(at)) {
            return;
        }
        String first = tokens.get(at).folded();
        for (Map.Entry<String, List<List<String>>> openings : LabelWords.SPELT_BY_FIRST.entrySet()) {
            if (like(first, openings.getKey()) && damagedOpening(at, openings.getValue())) {
                return;
            }
        }
    }

    private boolean damagedOpening(int at, List<List<String>> openings) {
        for (List<String> opening : openings) {
            if (at + opening.size() <= tokens.size() && likeOpening(at, opening) && opens(at, opening)) {
                mark(at, end(at + opening.size()));
                return true;
            }
        }
        return false;
    }

    /** One word that denies, whole or with a slip, or broken into several. */
    private boolean longOpening(int at) {
        String said = "";
        for (int end = at + 1; end <= tokens.size() && end <= at + LONGEST_OPENING && said.length() < LONGEST_WORD;
            end++) {
            if (end > at + 1 && tokens.get(end - 1).before().compareTo(Gap.LINE) > 0) {
                return false;
            }
            String word = tokens.get(end - 1).folded();
            said = end == at + 1 ? word : said + word;
            for (String without : LabelWords.LONG_WITHOUT) {
                if (said.startsWith(without) || LookAlikes.oneSlip(said, without)) {
                    mark(at, end(end));
                    return true;
                }
            }
        }
        return false;
    }

    /** The words after the first. The long ones may have a slip, the short ones, which deny, have none. */
    private boolean likeOpening(int at, List<String> opening) {
        for (int i = 1; i < opening.size(); i++) {
            if (tokens.get(at + i).before() != Gap.INSIDE || !like(tokens.get(at + i).folded(), opening.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean like(String word, String right) {
        return word.equals(right) || right.length() >= LabelWords.SPELT && LookAlikes.oneSlip(word, right)
            || right.length() > SHORT_WORD && Math.abs(word.length() - right.length()) <= 1
                && word.charAt(0) == right.charAt(0)
                && LookAlikes.between(word, right, 1) <= 1;
    }

    private static boolean isZero(String digits) {
        return digits.matches("0+");
    }

    /** The 0 of "2.0 %". */
    private boolean partOfNumber(int at) {
        LabelToken token = tokens.get(at);
        return at > 0 && LabelToken.isNumber(tokens.get(at - 1).folded())
            && token.from() == tokens.get(at - 1).to() + 1;
    }

    /** A bare "no" opens a claim only before a word and at the head of an item: HC Red No. 3 has a number. */
    private boolean opens(int at, List<String> opening) {
        boolean bareNo = opening.equals(List.of("no"));
        int next = at + opening.size();
        boolean word = next < tokens.size() && !LabelToken.isNumber(tokens.get(next).folded())
            && (tokens.get(next).before() == Gap.INSIDE || tokens.get(next).before() == Gap.LINE && !bareNo);
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
        while (stop < tokens.size() && stop < from + FARTHEST && inSentence(stop)
            && tokens.get(stop).before() != Gap.COMMA) {
            stop++;
        }
        return Math.min(stop, tokens.size());
    }

    private boolean inSentence(int at) {
        // A line that ends in "and" goes on.
        boolean goesOn = tokens.get(at).before() == Gap.LINE && LabelWords.AND.contains(tokens.get(at - 1).folded());
        return goesOn || tokens.get(at).before() != Gap.STOP && tokens.get(at).before() != Gap.LINE;
    }

    private void mark(int from, int to) {
        absent.set(from, Math.max(from, to));
    }

    /** "-free" itself may have a slip where a hyphen joins it to the name. */
    private static boolean saysFree(List<LabelToken> tokens, int at) {
        String word = tokens.get(at).folded();
        boolean joined =
            at > 0 && tokens.get(at).from() == tokens.get(at - 1).to() + 1 && tokens.get(at).hyphenBefore();
        return LabelWords.FREE_AFTER.contains(word) || joined && word.startsWith("f")
            && LabelWords.FREE_WITHIN.stream().anyMatch(free -> LookAlikes.oneSlip(word, free));
    }

    /** "PPD-free": the word right after says so, unless it goes on with "of" or "from" about something else. */
    static boolean saidFreeAfter(List<LabelToken> tokens, int after) {
        if (after >= tokens.size() || tokens.get(after).before() != Gap.INSIDE || !saysFree(tokens, after)) {
            return false;
        }
        boolean goesOn = after + 1 < tokens.size() && tokens.get(after + 1).before() == Gap.INSIDE
            && (LabelWords.OF.contains(tokens.get(after + 1).folded())
                || tokens.get(after + 1).folded().equals("flowing"));
        return !goesOn;
    }
}
