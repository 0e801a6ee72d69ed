package foretress.visit;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Text made equal for searching: no accents, no capitals, single spaces; letters as whoever lacks them on the keyboard types them. */
final class Folded {
    /** Letters that Unicode does not take apart into a letter and a mark. */
    private static final Map<Integer, String> PLAIN = Map.ofEntries(
        plain('ł', "l"), plain('ø', "o"), plain('đ', "d"), plain('ð', "d"), plain('ɖ', "d"), plain('þ', "th"),
        plain('ß', "ss"),
        plain('æ', "ae"), plain('œ', "oe"), plain('ı', "i"), plain('ȷ', "j"), plain('ħ', "h"), plain('ŧ', "t"),
        plain('ŋ', "n"),
        plain('ĸ', "k"), plain('ƒ', "f"), plain('ƶ', "z"), plain('ǥ', "g"), plain('ɨ', "i"), plain('ƀ', "b"),
        plain('ə', "e"), plain('ǝ', "e"));

    private Folded() {}

    private static Map.Entry<Integer, String> plain(char letter, String typed) {
        return Map.entry((int) letter, typed);
    }

    static String of(String text) {
        String compatible = Normalizer.normalize(text, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
        String bare = Normalizer.normalize(compatible, Normalizer.Form.NFD).replaceAll("\\p{Mn}+", "");
        String typed =
            bare.codePoints().mapToObj(c -> PLAIN.getOrDefault(c, Character.toString(c))).collect(Collectors.joining());
        return typed.replaceAll("[\\s\\p{Z}\\p{Cc}]+", " ").strip();
    }
}
