package foretress.lexicon;

import foretress.lexicon.MedicineKey.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A word of a typed line of medicines.
 *
 * @param written as typed, which tells an abbreviation from a word
 * @param part what it would be in the key of a name
 * @param joined nothing but a blank or a hyphen parts it from the word before
 */
record TypedWord(int from, int to, String written, String folded, Part part, boolean joined) {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}\\p{N}][\\p{L}\\p{M}\\p{N}'’.-]*");
    private static final Pattern DOSE_STUCK_ON = Pattern.compile("(\\p{L}{4,})[0-9].*");
    private static final Pattern PUNCTUATION_LAST = Pattern.compile("[.'’-]+$");
    private static final Pattern ARTICLE_STUCK_ON =
        Pattern.compile("^(l|d|j|qu|un|all|dell|nell|sull|dall)['’](?=\\p{L}{4})");

    static List<TypedWord> of(String phrase) {
        List<TypedWord> words = new ArrayList<>();
        Matcher word = WORD.matcher(phrase);
        int end = 0;
        while (word.find()) {
            String folded = PUNCTUATION_LAST.matcher(LetterFolding.folded(word.group())).replaceAll("");
            String bare = ARTICLE_STUCK_ON.matcher(folded).replaceFirst("");
            Matcher dose = DOSE_STUCK_ON.matcher(bare);
            boolean joined = end > 0 && phrase.substring(end, word.start()).matches("[ \\u00a0]+");
            words.add(of(word.start(), word.end(), word.group(), dose.matches() ? dose.group(1) : bare, joined));
            end = word.end();
        }
        return words;
    }

    private static TypedWord of(int from, int to, String written, String folded, boolean joined) {
        return new TypedWord(from, to, written, folded, Part.of(folded), joined);
    }

    /** "prednisolone-5mg" opened at its hyphen. */
    List<TypedWord> parts() {
        if (folded.indexOf('-') < 0) {
            return List.of(this);
        }
        String[] folds = folded.split("-");
        String[] writes = written.split("-");
        List<TypedWord> parts = new ArrayList<>();
        for (int i = 0; i < folds.length; i++) {
            if (!folds[i].isEmpty()) {
                parts.add(of(from, to, i < writes.length ? writes[i] : folds[i], folds[i], parts.size() > 0 || joined));
            }
        }
        return parts;
    }

    boolean isNumber() {
        return Character.isDigit(folded.isEmpty() ? ' ' : folded.charAt(0));
    }

    /** In capitals, as abbreviations are written. */
    boolean inCapitals() {
        return written.chars().noneMatch(Character::isLowerCase);
    }
}
