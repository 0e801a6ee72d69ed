package foretress.salon;

import foretress.web.Fold;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What makes a password good enough where it is the only thing asked: length, and not being the first thing somebody would guess
 * (NIST SP 800-63B: at least 15 characters, no rules of composition, refuse the common and the salon's own words).
 */
final class PasswordRule {
    static final int SHORTEST = 15;
    /** Far above the 64 that must be allowed; a bound only against flooding. */
    static final int LONGEST = 1024;

    enum Fault { TOO_SHORT, TOO_LONG, COMMON, SALON_WORDS, REPETITIVE }

    private PasswordRule() {}

    /** @param known words anybody could know here: the salon's name and town, the person's name and login */
    static Optional<Fault> fault(String password, List<String> known) {
        int length = password.codePointCount(0, password.length());
        if (length < SHORTEST) {
            return Optional.of(Fault.TOO_SHORT);
        }
        if (length > LONGEST) {
            return Optional.of(Fault.TOO_LONG);
        }
        String bare = bare(password);
        if (bare.codePoints().distinct().count() < 5 || isRepeated(bare)) {
            return Optional.of(Fault.REPETITIVE);
        }
        if (madeOf(bare, CommonPasswords.all().stream())) {
            return Optional.of(Fault.COMMON);
        }
        if (madeOf(bare, known.stream().flatMap(PasswordRule::words))) {
            return Optional.of(Fault.SALON_WORDS);
        }
        return Optional.empty();
    }

    private static Stream<String> words(String text) {
        return Stream.concat(Stream.of(bare(text)), Stream.of(text.split("[^\\p{L}\\p{N}]+")).map(PasswordRule::bare));
    }

    /** Too little is left once every guessable word is taken out: fewer characters than an eight-letter word has. */
    private static boolean madeOf(String bare, Stream<String> guessable) {
        var rest = new StringBuilder(bare);
        guessable.filter(word -> word.length() >= 3).sorted((a, b) -> b.length() - a.length())
            .forEach(word -> takeOut(rest, word));
        return rest.length() < 8 && rest.length() < bare.length();
    }

    private static void takeOut(StringBuilder rest, String word) {
        for (int at = rest.indexOf(word); at >= 0; at = rest.indexOf(word)) {
            rest.delete(at, at + word.length());
        }
    }

    /** One short piece over and over, like abcabcabcabcabc. */
    private static boolean isRepeated(String bare) {
        for (int piece = 1; piece <= bare.length() / 3; piece++) {
            if (bare.equals(bare.substring(0, piece).repeat(bare.length() / piece + 1).substring(0, bare.length()))) {
                return true;
            }
        }
        return false;
    }

    private static String bare(String text) {
        return Fold.fold(text).replaceAll("[\\s\\p{Punct}]+", "");
    }
}
