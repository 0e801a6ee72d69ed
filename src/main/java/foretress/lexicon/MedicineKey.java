package foretress.lexicon;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The sound of a medicine's name, so that its English, Spanish, French, German, Polish and Latin spellings fall together:
 * hydroxyzine, hidroxizina, hydroksyzyna. Case, accents and hyphens are gone, and the ending of an INN (-e, -a, -o, -um) or of a Polish case.
 */
final class MedicineKey {
    private static final Set<String> ACID = Set.of("acid", "acido", "acide", "saure", "saeure", "kwas", "acidum");
    private static final Pattern ACID_ENDING = Pattern.compile("(ik|ikum|ov|ovi|ue)$");
    /** "Cetirizine" begins as "sertraline" does. */
    private static final Pattern SOFT_C = Pattern.compile("c(?=[eiy])");
    /** "Espironolactona" is spironolactone. */
    private static final Pattern SPANISH_BEFORE_S = Pattern.compile("^es(?=[bdfgklmnprtv])");
    private static final int SHORTEST_STEM = 5;
    /** So few letters are an abbreviation: it is spelt, not heard, and AZA is not ASA. */
    private static final int ABBREVIATION = 3;

    private MedicineKey() {}

    /**
     * One folded word as a part of a key.
     *
     * @param isAcid the word that says so, itself no part of a name of several words
     * @param saysAcid ends in "-säure", which is taken off
     */
    record Part(String stem, boolean isAcid, boolean saysAcid) {
        static Part of(String typed) {
            String word = Scripts.latin(typed);
            boolean saysAcid = word.endsWith("saure") && word.length() > 7;
            String bare = saysAcid ? word.substring(0, word.length() - 5) : word;
            return new Part(MedicineKey.stem(sound(bare)), ACID.contains(bare), saysAcid);
        }

        String acidStem() {
            String stem = ACID_ENDING.matcher(this.stem).replaceFirst("");
            return stem.endsWith("ik") ? stem.substring(0, stem.length() - 2) : stem;
        }
    }

    /** The key of one or more folded words that together may be a name. */
    static String of(List<String> words) {
        return ofParts(words.stream().map(Part::of).toList());
    }

    static String ofParts(List<Part> parts) {
        var key = new StringBuilder();
        boolean acid = parts.size() > 1 && parts.stream().anyMatch(Part::isAcid);
        for (Part part : parts) {
            acid |= part.saysAcid();
            if (!part.isAcid() || parts.size() == 1) {
                key.append(key.length() > 0 ? "_" : "").append(acid ? part.acidStem() : part.stem());
            }
        }
        return acid ? key + "_acid" : key.toString();
    }

    static String sound(String word) {
        return sound(word, true);
    }

    private static String sound(String word, boolean onceEach) {
        if (word.length() <= ABBREVIATION) {
            return lettersAndDigits(word);
        }
        String even = lettersAndDigits(word).replace("ae", "e").replace("oe", "e").replace("ph", "f").replace("qu", "k")
            .replace("ch", "k");
        String sound = SOFT_C.matcher(even).replaceAll("s").replace('c', 'k').replace('y', 'i').replace("ji", "gi")
            .replace('j', 'i')
            .replace('z', 's').replace('w', 'v').replace("h", "").replace("x", "s").replace("ks", "s");
        return SPANISH_BEFORE_S.matcher(onceEach ? onceEach(sound) : sound).replaceFirst("s");
    }

    /** What a damaged word sounded like before its doubled letters and its ending were evened out: "traadol", "nebivolo". */
    static List<String> unevened(String word) {
        String sound = sound(word, false);
        return List.of(stem(sound), sound, sound(word)).stream().distinct().toList();
    }

    private static String lettersAndDigits(String word) {
        var kept = new StringBuilder(word.length());
        word.codePoints().filter(c -> Character.isLetter(c) || c >= '0' && c <= '9').forEach(kept::appendCodePoint);
        return kept.toString();
    }

    /** A letter doubled is one letter. */
    private static String onceEach(String word) {
        var once = new StringBuilder(word.length());
        for (int i = 0; i < word.length(); i++) {
            if (i == 0 || word.charAt(i) != word.charAt(i - 1)) {
                once.append(word.charAt(i));
            }
        }
        return once.toString();
    }

    private static String stem(String sound) {
        boolean vowel = !sound.isEmpty() && "aeiou".indexOf(sound.charAt(sound.length() - 1)) >= 0;
        int ending = sound.endsWith("um") || sound.endsWith("em") ? 2 : vowel ? 1 : 0;
        return sound.length() - ending >= SHORTEST_STEM ? sound.substring(0, sound.length() - ending) : sound;
    }
}
