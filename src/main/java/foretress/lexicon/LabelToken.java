package foretress.lexicon;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A run of letters and digits on a label, with its place and what parts it from the token before.
 *
 * @param folded letters folded, trade spellings evened out: sulphate and sulfate, para and p, hydrochloride and HCl
 * @param hyphenBefore a hyphen stands right before it
 * @param plain as written
 * @param percent a number that is followed by a per cent sign
 * @param between what stands between it and the token before
 */
record LabelToken(int from, int to, String folded, Gap before, boolean percent, boolean hyphenBefore, String plain,
    String between) {
    private static final Map<String, String> SAME = Map.ofEntries(Map.entry("para", "p"), Map.entry("meta", "m"),
        Map.entry("ortho", "o"), Map.entry("alpha", "a"), Map.entry("alfa", "a"), Map.entry("hydrochloride", "hcl"),
        Map.entry("dihydrochloride", "hcl"),
        Map.entry("clorhidrato", "hcl"), Map.entry("sulfato", "sulfate"), Map.entry("aluminium", "aluminum"));

    private static final Pattern DIGIT_LIKE_A_LETTER = Pattern.compile("[01589]");
    private static final Pattern DIGIT_FIRST = Pattern.compile(
        "(5(?![a-z]*(amin|nitr|chlor|meth|hydrox|brom|ethyl|acet|oxo|sulf(?!ate|ite|ide)|pyr))"
            + "|8(?!amino|diamino|nitro|chloro|methyl|methoxy|hydroxy|dihydroxy|bromo|ethyl|acet|oxo|sulf))[a-z]{4,}");
    /** A place in a molecule that has lost the hyphen beside it. */
    private static final Pattern STUCK_BEFORE = Pattern.compile("[a-z]{4,}[0-9]|[0-9]{1,2}");
    private static final Pattern STUCK_AFTER = Pattern.compile("[0-9][a-z][a-z0-9]{3,}|[0-9]");
    /** An amount that has lost the blank before it: "thioglycolate9 %". */
    private static final Pattern AMOUNT_STUCK_ON = Pattern.compile("(\\p{L}{4,})[0-9]+");
    private static final Pattern PERCENT = Pattern.compile("([.,][0-9]+)?\\s*[%٪％]");
    private static final Pattern NO_LETTER = Pattern.compile("[^a-z0-9\\p{L}]");

    /** What stands between two tokens, from nothing that matters to the end of a sentence. */
    enum Gap {
        /** A blank, a hyphen, a comma between two digits: within a name. */
        INSIDE,
        /** A bracket, a slash, a new line: a name may run over it, an item does not. */
        BREAK, LINE,
        COMMA,
        STOP
    }

    static List<LabelToken> of(String text) {
        List<LabelToken> tokens = new ArrayList<>();
        int end = 0;
        int at = 0;
        while (at < text.length()) {
            int stop = beforeAmount(text, at, endOfToken(text, at));
            if (stop == at) {
                at += Character.charCount(text.codePointAt(at));
                continue;
            }
            String folded = folded(text.substring(at, stop));
            if (!folded.isEmpty()) {
                Gap gap = tokens.isEmpty() ? Gap.STOP
                    : gap(text.substring(end, at), tokens.get(tokens.size() - 1).folded, folded);
                tokens.add(new LabelToken(at, stop, folded, gap, percentAfter(text, stop, folded),
                    at > 0 && "-‐‑–".indexOf(text.charAt(at - 1)) >= 0, text.substring(at, stop),
                    text.substring(end, at)));
                end = stop;
            }
            at = stop;
        }
        return tokens;
    }

    private static int endOfToken(String text, int from) {
        int at = from;
        while (at < text.length() && inToken(text, at)) {
            at += Character.charCount(text.codePointAt(at));
        }
        return at;
    }

    private static int beforeAmount(String text, int from, int to) {
        Matcher stuck = AMOUNT_STUCK_ON.matcher(text.substring(from, to));
        boolean amount = stuck.matches() && PERCENT.matcher(text).region(to, text.length()).lookingAt();
        return amount ? from + stuck.end(1) : to;
    }

    private static boolean inToken(String text, int at) {
        int c = text.codePointAt(at);
        int type = Character.getType(c);
        return Character.isLetterOrDigit(c) || type == Character.NON_SPACING_MARK || type == Character.FORMAT;
    }

    static String folded(String word) {
        String lower = LetterFolding.isAscii(word) ? word.toLowerCase(Locale.ROOT)
            : NO_LETTER.matcher(LetterFolding.folded(word)).replaceAll("");
        String plain = DIGIT_LIKE_A_LETTER.matcher(lower).find() ? digitsAmongLetters(digitFirst(lower)) : lower;
        while (plain.contains("sulph")) {
            plain = plain.replace("sulph", "sulf");
        }
        return SAME.getOrDefault(plain, plain);
    }

    /** "5ulfate" begins with an s; "5amino" has lost the hyphen after a number. */
    private static String digitFirst(String lower) {
        return DIGIT_FIRST.matcher(lower).matches() ? LookAlikes.shape(lower.charAt(0)) + lower.substring(1) : lower;
    }

    /** A 1, 0, 5, 8 or 9 between two letters is an l, o, s, b or g. */
    private static String digitsAmongLetters(String lower) {
        var plain = new StringBuilder(lower.length());
        for (int i = 0; i < lower.length(); i++) {
            boolean between = i > 0 && i + 1 < lower.length() && isLetter(plain.charAt(plain.length() - 1))
                && isLetter(lower.charAt(i + 1));
            char c = lower.charAt(i);
            plain.append(between && "01589".indexOf(c) >= 0 ? LookAlikes.shape(c) : c);
        }
        return plain.toString();
    }

    private static boolean isLetter(char c) {
        return c >= 'a' && c <= 'z';
    }

    /** A slash, a dash between blanks or a full stop that no blank follows: one statement ends and another begins. */
    boolean newStatement() {
        boolean stop = between.equals(".");
        boolean dash = between.length() > 1 && (between.indexOf('—') >= 0 || between.indexOf('–') >= 0
            || between.startsWith(" -") || between.endsWith("- "));
        return stop || dash || between.indexOf('/') >= 0;
    }

    /** Whether this is the rest of a word that a line broke off; a number or a single letter stands by itself. */
    boolean brokenFrom(String before) {
        return brokenLine(between) && before.length() > 1 && folded.length() > 1 && !isNumber(before)
            && !isNumber(folded);
    }

    private static boolean brokenLine(String between) {
        return between.equals("-\n") || between.equals("-\r\n") || between.equals("\u00ad\n");
    }

    boolean colonBefore() {
        return between.strip().equals(":");
    }

    /** A digit in it was read as the letter it looks like. */
    boolean mended() {
        return digits(plain) > digits(folded);
    }

    private static long digits(String text) {
        return text.chars().filter(c -> LookAlikes.digit((char) c)).count();
    }

    /** How many characters as written stand for the first so many folded ones. */
    int written(int letters) {
        int characters = 0;
        while (characters < plain.length() && folded(plain.substring(0, characters)).length() < letters) {
            characters++;
        }
        return characters;
    }

    private static boolean percentAfter(String text, int at, String folded) {
        int next = at;
        while (next < text.length() && text.charAt(next) <= ' ') {
            next++;
        }
        return isNumber(folded) && next < text.length()
            && (text.charAt(next) == '%' || text.charAt(next) == '٪' || text.charAt(next) == '％');
    }

    static boolean isNumber(String folded) {
        for (int i = 0; i < folded.length(); i++) {
            if (folded.charAt(i) < '0' || folded.charAt(i) > '9') {
                return false;
            }
        }
        return !folded.isEmpty();
    }

    private static Gap gap(String between, String before, String after) {
        if (brokenLine(between)) {
            return Gap.INSIDE;
        }
        boolean locants =
            shortPart(before) && shortPart(after) || between.equals(",") && stuck(before, after);
        Gap gap = Gap.INSIDE;
        for (int i = 0; i < between.length(); i++) {
            Gap one =
                gap(between.charAt(i), i + 1 < between.length() ? between.charAt(i + 1) : 'x', locants, before, after);
            gap = one.compareTo(gap) > 0 ? one : gap;
        }
        boolean dash = between.length() == 3 && "-–—".indexOf(between.charAt(1)) >= 0
            && between.charAt(0) == ' ' && between.charAt(2) == ' ';
        gap = dash && gap == Gap.INSIDE ? Gap.BREAK : gap;
        return between.indexOf('\n') < between.lastIndexOf('\n') ? Gap.STOP : gap;
    }

    /** "2,5diamine", "toluene2,5-diamine": one number of the two has lost its hyphen. */
    private static boolean stuck(String before, String after) {
        return STUCK_BEFORE.matcher(before).matches() && STUCK_AFTER.matcher(after).matches();
    }

    /** Numbers and single letters say where in a molecule something sits: N,N- or 2,5-. */
    private static boolean shortPart(String folded) {
        return folded.length() <= 1 || isNumber(folded) && folded.length() <= 2;
    }

    private static Gap gap(char c, char next, boolean locants, String before, String after) {
        return switch (c) {
            case ',', '،', '、', '，' -> locants ? Gap.INSIDE : Gap.COMMA;
            case '!', '?', ';', '|', '•', '·', '●', '▪', '*', '؛' -> Gap.STOP;
            case ':' -> locants ? Gap.INSIDE : Gap.STOP;
            case '.' -> Character.isWhitespace(next) && before.length() > 2 && !before.equals("ext") && !isNumber(after)
                ? Gap.STOP : Gap.INSIDE;
            case '\n', '\r' -> Gap.LINE;
            case '(', ')', '[', ']', '{', '}', '/', '\\', '+', '±', '&', '"', '“', '”' -> Gap.BREAK;
            default -> Gap.INSIDE;
        };
    }
}
