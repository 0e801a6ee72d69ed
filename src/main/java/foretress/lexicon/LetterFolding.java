package foretress.lexicon;

import java.text.Normalizer;
import java.util.Locale;

/** Folds letters so that case, accents, full-width forms and ligatures make no difference, in whatever language the machine runs. */
final class LetterFolding {
    private LetterFolding() {}

    static boolean isAscii(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) >= 128) {
                return false;
            }
        }
        return true;
    }

    static String folded(String text) {
        if (isAscii(text)) {
            return text.toLowerCase(Locale.ROOT);
        }
        String plain = Normalizer.normalize(text, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
        var out = new StringBuilder(plain.length());
        Normalizer.normalize(plain, Normalizer.Form.NFD).codePoints()
            .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
            .filter(c -> Character.getType(c) != Character.FORMAT).forEach(c -> append(out, c));
        return out.toString();
    }

    private static void append(StringBuilder out, int c) {
        switch (c) {
            case 'ß' -> out.append("ss");
            case 'ł' -> out.append('l');
            case 'ø' -> out.append('o');
            case 'æ' -> out.append("ae");
            case 'œ' -> out.append("oe");
            case 'đ' -> out.append('d');
            case 'ı' -> out.append('i');
            default -> out.appendCodePoint(c);
        }
    }
}
