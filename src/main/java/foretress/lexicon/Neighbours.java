package foretress.lexicon;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Names that chemistry puts beside a name and a dictionary may not have: another homologue, another salt, another oxidation
 * state, another number of the same group, another place on the ring. A damaged spelling that may as well be one of them is not
 * read as the name it resembles. Groups by the rules of chemical naming (from memory).
 */
final class Neighbours {
    private static final int SHORTEST = 4;
    private static final int FARTHEST = 3 * LookAlikes.SLIP + 2;
    /** By its last letter a word of naming is of one tongue or of its nearest: sulfate and sulfite, sulfato and sulfito, Sulfat and Sulfit. */
    private static final List<String> TONGUES = List.of("e", "oa", "td", "nk", "ui");
    private static final List<List<String>> GROUPS = List.of(
        List.of("trimethyl", "dimethyl", "methyl", "diethyl", "ethyl", "dipropyl", "isopropyl", "propyl", "isobutyl",
            "butyl", "pentyl", "hexyl"),
        List.of("lauryl", "myristyl", "cetearyl", "cetyl", "stearyl", "oleyl", "behenyl", "caprylyl", "capryl",
            "decyl"),
        List.of("laureth", "ceteareth", "ceteth", "steareth", "oleth", "myreth", "trideceth", "deceth"),
        List.of("thiosulfate", "persulfate", "metabisulfite", "bisulfite", "bisulfate", "sulfate", "sulfite",
            "sulfide"),
        List.of("perchlorate", "chlorate", "chlorite", "chloride"), List.of("bromate", "bromide"),
        List.of("iodate", "iodide"),
        List.of("nitrate", "nitrite", "nitride"), List.of("pyrophosphate", "phosphate", "phosphite"),
        List.of("bicarbonate", "carbonate"),
        List.of("peroxide", "hydroxide", "dioxide", "oxide"), List.of("acetate", "acetyl"),
        List.of("acetate", "lactate", "citrate", "tartrate", "gluconate", "oxalate", "malate", "maleate", "formate",
            "benzoate", "stearate", "oleate", "palmitate",
            "laurate", "nitrate", "subnitrate", "sulfate", "carbonate", "subcarbonate", "phosphate", "chloride",
            "bromide", "iodide", "oxide", "sulfide", "borate"),
        List.of("tetrasodium", "trisodium", "disodium", "sodium", "dipotassium", "potassium", "diammonium", "ammonium",
            "calcium", "magnesium", "lithium",
            "barium", "strontium", "aluminum", "zinc"),
        List.of("tetraamino", "triamino", "diamino", "amino"), List.of("trihydroxy", "dihydroxy", "hydroxy"),
        List.of("dichloro", "chloro", "bromo", "fluoro", "iodo"),
        List.of("dicloro", "cloro", "bromo", "fluoro", "iodo", "yodo"), List.of("chlor", "brom", "fluor", "iod"),
        List.of("trimetil", "dimetil", "metil", "dietil", "etil", "propil", "butil", "pentil", "hexil", "octil"),
        List.of("metylo", "etylo", "propylo", "butylo"),
        List.of("lauril", "miristil", "cetearil", "cetil", "estearil", "stearil", "oleil", "behenil"),
        List.of("dinitro", "nitroso", "nitro"),
        List.of("triethanol", "diethanol", "monoethanol", "ethanol"),
        List.of("diamine", "triamine", "amine", "amide", "imine"),
        List.of("ferrous", "ferric"), List.of("cuprous", "cupric"), List.of("mercurous", "mercuric"),
        List.of("stannous", "stannic"),
        List.of("manganous", "manganic"), List.of("cysteamine", "cysteine", "cystine"),
        List.of("thioglycol", "thiolact"),
        List.of("naphthalene", "naphthol"),
        List.of("lead", "zinc", "silver", "copper", "bismuth", "cobalt", "nickel", "cadmium", "mercury", "tin"));
    private static final List<List<String>> SOUNDS = GROUPS.stream()
        .map(group -> group.stream().map(Nomenclature::soundOfGroup).distinct().toList()).toList();
    /** Metals and salts of six tongues by the words of another meaning that a few slips make of them: "hydroxyde" and "peroxyde". */
    private static final Map<String, List<String>> CONFUSED = Nomenclature.words().stream()
        .filter(word -> word.length() >= SHORTEST)
        .collect(Collectors.toUnmodifiableMap(word -> word, Neighbours::confusedWith));
    private static final String PLACES = "pmo";

    private Neighbours() {}

    /** All names one group away from this one. */
    static List<String> of(String key, boolean placeFirst) {
        List<String> all = new ArrayList<>();
        GROUPS.forEach(group -> swapped(key, group, all));
        confused(key, all);
        if (placeFirst) {
            PLACES.chars().filter(c -> c != key.charAt(0)).forEach(c -> all.add((char) c + key.substring(1)));
        }
        return all;
    }

    /** The same of a name by its sound, whatever tongue it is in. */
    static List<String> ofSound(String sound) {
        List<String> all = new ArrayList<>();
        SOUNDS.forEach(group -> swapped(sound, group, all));
        return all;
    }

    private static List<String> confusedWith(String word) {
        String meaning = Nomenclature.meaning(word);
        return Nomenclature.words().stream()
            .filter(other -> other.length() >= SHORTEST && !Nomenclature.meaning(other).equals(meaning))
            .filter(other -> tongue(word) == tongue(other))
            .filter(other -> LookAlikes.between(word, other, FARTHEST) <= FARTHEST).sorted().toList();
    }

    private static int tongue(String word) {
        char last = word.charAt(word.length() - 1);
        return TONGUES.stream().filter(letters -> letters.indexOf(last) >= 0).map(TONGUES::indexOf).findFirst()
            .orElse(TONGUES.size());
    }

    private static void confused(String key, List<String> all) {
        for (int from = 0; from < key.length(); from++) {
            for (int to = from + SHORTEST; to <= key.length(); to++) {
                String before = key.substring(0, from);
                String after = key.substring(to);
                CONFUSED.getOrDefault(key.substring(from, to), List.of())
                    .forEach(other -> all.add(before + other + after));
            }
        }
    }

    private static void swapped(String key, List<String> group, List<String> all) {
        int at = 0;
        while (at < key.length()) {
            String here = at(key, at, group);
            if (here.isEmpty()) {
                at++;
                continue;
            }
            for (String other : group) {
                if (!other.equals(here)) {
                    all.add(key.substring(0, at) + other + key.substring(at + here.length()));
                }
            }
            at += here.length();
        }
    }

    private static String at(String key, int at, List<String> group) {
        for (String member : group) {
            if (key.startsWith(member, at)) {
                return member;
            }
        }
        return "";
    }
}
