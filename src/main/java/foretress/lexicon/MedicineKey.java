package foretress.lexicon;

import java.util.List;
import java.util.Set;

/**
 * The sound of a medicine's name, so that its English, Spanish, French, German, Polish and Latin spellings fall together:
 * hydroxyzine, hidroxizina, hydroksyzyna. Case, accents and hyphens are gone, and the ending of an INN (-e, -a, -o, -um).
 */
final class MedicineKey {
    private static final Set<String> ACID = Set.of("acid", "acido", "acide", "saure", "saeure", "kwas", "acidum");
    private static final int SHORTEST_STEM = 5;

    private MedicineKey() {
    }

    /** The key of one or more folded words that together may be a name. */
    static String of(List<String> words) {
        StringBuilder key = new StringBuilder();
        boolean acid = words.size() > 1 && words.stream().anyMatch(ACID::contains);
        for (String word : words) {
            String bare = word.endsWith("saure") && word.length() > 7 ? word.substring(0, word.length() - 5) : word;
            acid |= !bare.equals(word);
            if (!ACID.contains(bare) || words.size() == 1) {
                key.append(key.length() > 0 ? "_" : "").append(acid ? acidStem(sound(bare)) : stem(sound(bare)));
            }
        }
        return acid ? key + "_acid" : key.toString();
    }

    static String sound(String word) {
        return word.replaceAll("[^\\p{L}0-9]", "").replace("ae", "e").replace("oe", "e").replace("ph", "f").replace("qu", "k")
            .replace("ch", "k").replace("x", "ks").replace("c", "k").replace("y", "i").replace("j", "i").replace("z", "s")
            .replace("w", "v").replace("h", "").replaceAll("(.)\\1+", "$1");
    }

    private static String stem(String sound) {
        String stem = sound.endsWith("um") ? sound.substring(0, sound.length() - 2) : sound.replaceFirst("[aeiou]$", "");
        return stem.length() >= SHORTEST_STEM ? stem : sound;
    }

    private static String acidStem(String sound) {
        return stem(sound).replaceFirst("(ik|ikum|ov|ovi|ue)$", "").replaceFirst("ik$", "");
    }
}
