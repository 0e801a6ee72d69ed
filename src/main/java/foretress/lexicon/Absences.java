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
    private static final List<String> DENIES = List.of("denies");

    private final List<LabelToken> tokens;
    private final Names names;
    private final BitSet absent = new BitSet();
    private final BitSet doubtful = new BitSet();

    /** Where a name that begins at a token ends. */
    interface Names {
        /** One past the last token of the longest name that begins here, or {@code at} where none does. */
        int endOfName(int at);
    }

    private Absences(List<LabelToken> tokens, Names names) {
        this.tokens = tokens;
        this.names = names;
    }

    static Absences of(List<LabelToken> tokens, Names names) {
        var absences = new Absences(tokens, names);
        for (int i = 0; i < tokens.size(); i++) {
            absences.openedAt(i);
        }
        absences.doubtful.andNot(absences.absent);
        return absences;
    }

    /** Tokens that lie in such a stretch, the words that open it among them. */
    BitSet absent() {
        return absent;
    }

    /** Tokens that may lie in one, its words being damaged: whether what they name is in the product nobody can tell. */
    BitSet doubtful() {
        return doubtful;
    }

    private void openedAt(int at) {
        if (tokens.get(at).percent() && isZero(tokens.get(at).folded()) && !partOfNumber(at)) {
            boolean list = at + 1 < tokens.size() && afterPercentAndColon(at + 1);
            claim(at, at + 1, list ? end(at + 1) : endOfFirst(at + 1));
            return;
        }
        for (List<String> opening : LabelWords.WITHOUT_BY_FIRST.getOrDefault(tokens.get(at).folded(), List.of())) {
            if (LabelWords.startsHere(tokens, at, opening) && opens(at, opening)) {
                claim(at, at + opening.size(), end(at + opening.size()));
                return;
            }
        }
        if (LabelWords.deniesByShape(tokens.get(at).folded()) && opens(at, DENIES) || accentedNor(at)) {
            claim(at, at + 1, end(at + 1));
            return;
        }
        if (at + 1 < tokens.size() && !absent.get(at + 1) && mayOpen(at)) {
            doubt(at, end(at + 1));
        }
        damagedOpening(at);
    }

    /** "Beez amoniaku", "sekaz ammoniaca", "nt contiene parabenos": before a name, a word that names nothing and is nearly one that denies. */
    private boolean mayOpen(int at) {
        String word = tokens.get(at).folded();
        boolean heads = tokens.get(at).before() != Gap.INSIDE || at > 0 && absent.get(at - 1);
        boolean goesOn = at + 1 < tokens.size() && tokens.get(at + 1).before() == Gap.INSIDE;
        if (!goesOn || names.endOfName(at) > at || LabelWords.ORDINARY.contains(word)
            || LabelWords.BUT.contains(word)) {
            return false;
        }
        boolean contains = heads && word.length() <= SHORT_WORD
            && !LabelWords.CONNECTING.contains(word)
            && LabelWords.SAYS_CONTAINS.contains(tokens.get(at + 1).folded())
            && LabelWords.DENIES_CONTAINS.stream().anyMatch(denies -> LookAlikes.oneSlip(word, denies));
        if (heads && saysFreeOf(at, word)) {
            return true;
        }
        boolean name = names.endOfName(at + 1) > at + 1 || heads && word.length() <= SHORT_WORD + 1;
        return contains || name && tokens.get(at + 1).between().equals(" ") && LabelWords.mayDeny(word, heads);
    }

    /** "Libre dee amoníaco", "fri von PPD". */
    private boolean saysFreeOf(int at, String word) {
        return word.length() >= SHORT_WORD && tokens.get(at + 1).folded().length() <= SHORT_WORD + 1
            && at + 2 < tokens.size() && tokens.get(at + 2).before() == Gap.INSIDE && LabelWords.nearlyFree(word);
    }

    private void doubt(int from, int to) {
        doubtful.set(from, Math.max(from, Math.min(to, tokens.size())));
    }

    private boolean afterPercentAndColon(int at) {
        return tokens.get(at).between().replace("%", "").strip().equals(":");
    }

    /** Italian "né"; without its accent it is French, and what follows is no name. */
    private boolean accentedNor(int at) {
        return tokens.get(at).plain().equalsIgnoreCase("né") && opens(at, DENIES);
    }

    /**
     * Marks the claim, but only as far as it surely reaches: each of its parts speaks of one name, with words before it only that
     * belong to a claim. Where another name follows without "and", the list has begun.
     */
    private void claim(int opening, int from, int to) {
        int part = from;
        while (part < to) {
            int partTo = part + 1;
            while (partTo < to && !partBegins(partTo)) {
                partTo++;
            }
            int reach = reach(part, partTo);
            if (reach < partTo) {
                mark(opening, reach);
                doubtAfterADamagedWord(part, reach, partTo);
                return;
            }
            part = partTo;
        }
        mark(opening, Math.min(to, tokens.size()));
    }

    /** "Bez ocatnu ołowiu": the first word names nothing, so the name after it may be the rest of one. */
    private void doubtAfterADamagedWord(int part, int reach, int partTo) {
        int first = part;
        while (first < reach && (qualifies(first) || isAnd(first))) {
            first++;
        }
        boolean rest = partTo == reach + 1 && Nomenclature.isCation(tokens.get(reach).folded());
        boolean damagedAnd = reach > first + 1 && tokens.get(reach - 1).folded().length() <= SHORT_WORD;
        if (first < reach && names.endOfName(first) == first && (rest || damagedAnd)) {
            doubt(reach, partTo);
        }
    }

    private boolean partBegins(int at) {
        return tokens.get(at).before() != Gap.INSIDE || isAnd(at - 1);
    }

    /** How far one part of a claim reaches: to its end, or to where a name begins that is not its first word. */
    private int reach(int from, int to) {
        int at = from;
        while (at < to && names.endOfName(at) == at && (qualifies(at) || isAnd(at))) {
            at++;
        }
        int next = at < to ? Math.max(at + 1, names.endOfName(at)) : to;
        while (next < to && (names.endOfName(next) == next || damagedAnd(next))) {
            next++;
        }
        return Math.min(next, to);
    }

    /** "Without resorcinol anx ammonia", and then the list begins with its heading. */
    private boolean damagedAnd(int name) {
        int end = name;
        while (end < tokens.size() && end < name + FARTHEST && inSentence(end)) {
            end++;
        }
        boolean headed = end < tokens.size() && LabelWords.HEADINGS.contains(tokens.get(end).folded());
        String before = tokens.get(name - 1).folded();
        return headed
            && LabelWords.AND.stream().anyMatch(and -> and.length() == SHORT_WORD && LookAlikes.oneSlip(before, and))
            && names.endOfName(name - 1) == name - 1;
    }

    private boolean qualifies(int at) {
        return LabelWords.QUALIFIERS.contains(tokens.get(at).folded())
            || LabelWords.CONNECTING.contains(tokens.get(at).folded()) || deniesAgain(at);
    }

    /** "Ohne Parfum und oyne Lanolin": within a claim, after "and", a word that denies may have a slip. */
    private boolean deniesAgain(int at) {
        return at > 0 && isAnd(at - 1) && LabelWords.deniesButForASlip(tokens.get(at).folded());
    }

    /** The o of o-aminophenol is no "or". */
    private boolean isAnd(int at) {
        boolean locant = tokens.get(at).folded().length() == 1 && at + 1 < tokens.size()
            && tokens.get(at + 1).from() == tokens.get(at).to() + 1 && tokens.get(at + 1).hyphenBefore();
        return !locant && LabelWords.AND.contains(tokens.get(at).folded());
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
                claim(at, at + opening.size(), end(at + opening.size()));
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
                    claim(at, end, end(end));
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

    /** A bare "no" opens a claim only before a word, at the head of an item or before a name: HC Red No. 3 has a number. */
    private boolean opens(int at, List<String> opening) {
        boolean bareNo = opening.equals(List.of("no"));
        int next = at + opening.size();
        boolean beforeName = next < tokens.size() && names.endOfName(next) > next
            && tokens.get(at).from() - tokens.get(Math.max(0, at - 1)).to() <= 1;
        boolean word = next < tokens.size() && !LabelToken.isNumber(tokens.get(next).folded())
            && (tokens.get(next).before() == Gap.INSIDE || tokens.get(next).before() == Gap.LINE && !bareNo
                || tokens.get(next).colonBefore() && !bareNo);
        return word && (!bareNo || tokens.get(at).before() != Gap.INSIDE || beforeName);
    }

    private int end(int from) {
        boolean whole = wholeLine(from);
        int stop = from + 1;
        int commas = 0;
        boolean closed = false;
        boolean nearlyClosed = false;
        while (stop < tokens.size() && stop < from + FARTHEST && goesOn(stop, whole)) {
            boolean comma = tokens.get(stop).before() == Gap.COMMA;
            commas += comma ? 1 : 0;
            closed = isAnd(stop) || closed && !comma;
            nearlyClosed = nearlyAnd(stop) || nearlyClosed && !comma;
            stop++;
        }
        if (nearlyClosed && !closed && commas < LONGEST_LIST) {
            doubt(endOfFirst(from), stop);
        }
        return whole || closed && commas < LONGEST_LIST ? Math.min(stop, tokens.size()) : endOfFirst(from);
    }

    /** "Free of parabens, silicones, formaldehyde anw MIT". */
    private boolean nearlyAnd(int at) {
        String word = tokens.get(at).folded();
        boolean before = tokens.get(at).before() == Gap.INSIDE && at + 1 < tokens.size()
            && tokens.get(at + 1).before() == Gap.INSIDE;
        return before && names.endOfName(at) == at && word.length() <= SHORT_WORD + 1 && !isAnd(at)
            && LabelWords.AND.stream().anyMatch(and -> and.length() >= SHORT_WORD && LookAlikes.oneSlip(word, and));
    }

    /** A claim with a colon, and one whose next line is headed as the list, take up their line, if another one follows. */
    private boolean wholeLine(int from) {
        boolean colon = from < tokens.size() && tokens.get(from).between().indexOf(':') >= 0;
        int next = from + 1;
        while (next < tokens.size() && next < from + FARTHEST && inSentence(next)) {
            next++;
        }
        return next < tokens.size() && next < from + FARTHEST && newLine(next)
            && (colon || LabelWords.HEADINGS.contains(tokens.get(next).folded()));
    }

    private boolean newLine(int at) {
        return tokens.get(at).between().indexOf('\n') >= 0;
    }

    private int endOfFirst(int from) {
        int stop = from + 1;
        while (stop < tokens.size() && stop < from + FARTHEST && goesOn(stop, false)
            && tokens.get(stop).before() != Gap.COMMA) {
            stop++;
        }
        return Math.min(stop, tokens.size());
    }

    /** A slash between two names of a list that surely is one parts nothing. */
    private boolean goesOn(int at, boolean whole) {
        boolean slash = whole && tokens.get(at).between().equals("/");
        boolean statement = tokens.get(at).newStatement() && !slash && !abbreviated(at - 1);
        return inSentence(at) && !statement && !but(at);
    }

    /** "mit" goes on with what is in it, "MIT" in a list is a substance. */
    private boolean but(int at) {
        boolean goesOn = at + 1 < tokens.size() && tokens.get(at + 1).before() == Gap.INSIDE
            || at + 1 < tokens.size() && tokens.get(at + 1).colonBefore();
        return goesOn && LabelWords.BUT.contains(tokens.get(at).folded());
    }

    /** The full stops of "P.P.D." part nothing. */
    private boolean abbreviated(int at) {
        return tokens.get(at).folded().length() <= 2 && tokens.get(at + 1).between().equals(".");
    }

    private boolean inSentence(int at) {
        // A line that ends in "and" goes on.
        boolean goesOn = tokens.get(at).before() == Gap.LINE && isAnd(at - 1);
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
