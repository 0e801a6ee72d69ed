package foretress.lexicon;

import java.util.HashMap;
import java.util.Map;

/** Names of medicines in Cyrillic, Greek and Arabic letters, by the sounds these stand for; Arabic writes long vowels only. */
final class Scripts {
    private static final Map<Integer, String> LATIN = table("""
        а a б b в v г g д d е e ё e ж z з s и i й i к k л l м m н n о o п p р r с s т t у u ф f х k ц s ч k ш s щ s ъ - ы i ь -
        э e ю iu я ia і i ї i є e ґ g
        α a β v γ g δ d ε e ζ s η i θ t ι i κ k λ l μ m ν n ξ ks ο o π p ρ r σ s ς s τ t υ i φ f χ k ψ ps ω o
        ا a ى a ة a ء - ؤ u ئ i ب b پ p ت t ث t ج g چ k ح h خ k د d ذ d ر r ز s ژ s س s ش s ص s ض d ط t ظ s ع a غ g ف f ڤ v
        ق k ك k ک k ل l م m ن n ه h و u ي i ی i""");
    private static final String ALIKE_IN_ARABIC = "pbvfgk";

    private Scripts() {}

    private static Map<Integer, String> table(String text) {
        Map<Integer, String> table = new HashMap<>();
        String[] words = text.strip().split("\\s+");
        for (int i = 0; i < words.length; i += 2) {
            table.put(words[i].codePointAt(0), words[i + 1].equals("-") ? "" : words[i + 1]);
        }
        return table;
    }

    /** The word in Latin letters; whatever is no letter of these scripts stays as it is. */
    static String latin(String word) {
        if (LetterFolding.isAscii(word)) {
            return word;
        }
        var latin = new StringBuilder();
        word.codePoints().forEach(c -> latin.append(LATIN.getOrDefault(c, Character.toString(c))));
        return latin.toString();
    }

    static boolean isArabic(String word) {
        return word.codePoints().anyMatch(c -> Character.UnicodeScript.of(c) == Character.UnicodeScript.ARABIC
            && Character.isLetter(c));
    }

    /** What Arabic letters keep of a sound: no vowels, and p as b, v as f, g as k. */
    static String consonants(String sound) {
        var kept = new StringBuilder();
        for (char c : sound.toCharArray()) {
            int pair = ALIKE_IN_ARABIC.indexOf(c);
            char even = pair < 0 ? c : ALIKE_IN_ARABIC.charAt(pair | 1);
            if ("aeiouhw_".indexOf(c) < 0) {
                kept.append(even);
            }
        }
        return kept.toString();
    }
}
