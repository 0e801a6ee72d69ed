package foretress.lexicon;

import java.util.ArrayList;
import java.util.List;

/**
 * Names that chemistry puts beside a name and a dictionary may not have: another homologue, another salt, another oxidation
 * state, another number of the same group, another place on the ring. A damaged spelling that may as well be one of them is not
 * read as the name it resembles. Groups by the rules of chemical naming (from memory).
 */
final class Neighbours {
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
        List.of("dichloro", "chloro", "bromo", "fluoro", "iodo"), List.of("dinitro", "nitroso", "nitro"),
        List.of("triethanol", "diethanol", "monoethanol", "ethanol"),
        List.of("diamine", "triamine", "amine", "amide", "imine"),
        List.of("ferrous", "ferric"), List.of("cuprous", "cupric"), List.of("mercurous", "mercuric"),
        List.of("stannous", "stannic"),
        List.of("manganous", "manganic"), List.of("cysteamine", "cysteine", "cystine"),
        List.of("thioglycol", "thiolact"),
        List.of("naphthalene", "naphthol"),
        List.of("lead", "zinc", "silver", "copper", "bismuth", "cobalt", "nickel", "cadmium", "mercury", "tin"));
    private static final String PLACES = "pmo";

    private Neighbours() {}

    /** All names one group away from this one. */
    static List<String> of(String key, boolean placeFirst) {
        List<String> all = new ArrayList<>();
        GROUPS.forEach(group -> swapped(key, group, all));
        if (placeFirst) {
            PLACES.chars().filter(c -> c != key.charAt(0)).forEach(c -> all.add((char) c + key.substring(1)));
        }
        return all;
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
