package foretress.lexicon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/**
 * Names in another tongue with a slip in a word of them: "toi9licolato de amonio", "ácido fo5fórico". A word of naming (a metal, an
 * anion, "acid") is mended where it can be no other one; then the sound of the rest may have one slip.
 */
final class DamagedNomenclature {
    private static final int SHORTEST = 5;
    private static final int LONG = 7;
    private static final int LONGER = 10;
    private static final int SHORTEST_SOUND = 6;
    private static final int SHORTEST_BY_SOUND_ALONE = 8;
    private static final int TWO_SLIPS_FROM = 10;
    private static final int SHORTEST_WORD = 4;
    private static final int LINK = 2;
    private static final int MOST_WORDS = 5;
    private static final int ENDING = 4;
    private static final List<String> SALT_ENDINGS =
        List.of("uro", "ure", "ate", "ato", "ite", "ito", "ide", "ido", "ium",
            "io", "at", "it", "id", "an", "yn", "ek");
    private static final int ONE_SLIP = LookAlikes.SLIP + 1;
    /** Another one so little farther off, and it could be either. */
    private static final int MARGIN = 2;

    private static final List<Letterprint> WORDS =
        Nomenclature.words().stream().filter(word -> word.length() >= SHORTEST_WORD).map(Letterprint::of).toList();

    private final Map<String, Substance> byKey;
    /** The sounds that stand in keys, by all that stands around them. */
    private final Map<String, List<Letterprint>> sounds = new HashMap<>();
    /** Of the sounds that damaged ones were near to: made when first asked for. */
    private final Map<String, List<Letterprint>> neighbours = new ConcurrentHashMap<>();

    DamagedNomenclature(Map<String, Substance> byKey) {
        this.byKey = byKey;
        byKey.keySet().forEach(key -> sounds.computeIfAbsent(around(key), k -> new ArrayList<>())
            .add(Letterprint.of(sound(key))));
    }

    /**
     * @param words as they stand
     * @param mended each as {@link #mended} says
     */
    Optional<Substance> read(List<String> words, List<String> mended) {
        String key = Nomenclature.key(mended);
        if (key.isEmpty()) {
            return Optional.empty();
        }
        Substance whole = byKey.get(key);
        return whole != null && !mended.equals(words) ? Optional.of(whole) : bySound(key);
    }

    /** No name in another tongue has more words that are looked at for slips. */
    static boolean mayBe(int words) {
        return words <= MOST_WORDS;
    }

    /** No name known by its sound alone is as short. */
    private Optional<Substance> bySound(String key) {
        String sound = sound(key);
        int shortest = around(key).equals("__") ? SHORTEST_BY_SOUND_ALONE : SHORTEST_SOUND;
        return sound.length() < shortest || byKey.containsKey(key) ? Optional.empty() : nearest(key, sound, shortest);
    }

    private Optional<Substance> nearest(String key, String sound, int shortest) {
        Letterprint print = Letterprint.of(sound);
        int least = most(sound.length()) + 1;
        Map<String, Integer> near = new HashMap<>();
        for (Letterprint known : sounds.getOrDefault(around(key), List.of())) {
            int most = most(Math.min(sound.length(), known.key().length()));
            if (known.key().length() >= shortest && print.mayBeWithin(known, most + MARGIN)) {
                int distance = LookAlikes.between(sound, known.key(), most + MARGIN);
                near.put(known.key(), distance);
                least = distance <= most && sameEnd(key, sound, known.key()) ? Math.min(least, distance) : least;
            }
        }
        if (least > most(sound.length())) {
            return Optional.empty();
        }
        int farthest = least + MARGIN;
        List<String> nearest = near.entrySet().stream().filter(e -> e.getValue() <= farthest).map(Map.Entry::getKey)
            .sorted().toList();
        boolean told = !aNeighbourIsNearer(print, nearest, least);
        Set<String> named = nearest.stream().map(known -> byKey.get(whole(key, known)).name())
            .collect(Collectors.toSet());
        return told && named.size() == 1 ? Optional.of(byKey.get(whole(key, nearest.get(0)))) : Optional.empty();
    }

    private static int most(int letters) {
        return letters < SHORTEST_SOUND ? 0 : letters < TWO_SLIPS_FROM ? ONE_SLIP : ONE_SLIP + LookAlikes.SLIP;
    }

    /** "Etilresorcina" is no damaged "metilresorcina". */
    private boolean aNeighbourIsNearer(Letterprint sound, List<String> known, int distance) {
        return known.stream()
            .flatMap(name -> neighbours.computeIfAbsent(name, DamagedNomenclature::neighbours).stream())
            .anyMatch(other -> sound.mayBeWithin(other, distance - 1)
                && LookAlikes.between(sound.key(), other.key(), distance) <= distance - 1);
    }

    private static List<Letterprint> neighbours(String sound) {
        return Neighbours.ofSound(sound).stream().map(Letterprint::of).toList();
    }

    /** What a name ends in tells one kind of salt from another; the ending of an acid is no part of its sound. */
    private static boolean sameEnd(String key, String sound, String known) {
        return key.endsWith("_acid") || sameEnd(sound, known, sound.length() < TWO_SLIPS_FROM ? ENDING - 1 : 1);
    }

    private static String sound(String key) {
        return key.split("_", -1)[1];
    }

    private static String around(String key) {
        return whole(key, "");
    }

    private static String whole(String key, String sound) {
        String[] parts = key.split("_", -1);
        parts[1] = sound;
        return String.join("_", parts);
    }

    /** "Dd" between two words; no name begins with one. */
    static boolean isLink(String word) {
        return word.length() == LINK && !Nomenclature.knows(word) && !LabelToken.isNumber(word);
    }

    /** The word of naming it alone may be; else itself. */
    static String mended(String word) {
        if (isLink(word)) {
            return "de";
        }
        if (word.length() < SHORTEST_WORD || Nomenclature.knows(word)) {
            return word;
        }
        String compound = mendedCompound(word);
        return compound.isEmpty() ? mendedWord(word) : compound;
    }

    /** "Kupferlguconat", "Ntriumsulfit". */
    private static String mendedCompound(String word) {
        String metal = Nomenclature.compoundedMetal(word);
        String rest = word.substring(metal.length());
        if (!metal.isEmpty() && rest.length() >= SHORTEST) {
            String anion = mendedWord(rest);
            return !anion.equals(rest) && Nomenclature.isAnion(anion) ? metal + anion : "";
        }
        String anion = Nomenclature.anionAtTheEnd(word);
        String head = word.substring(0, word.length() - anion.length());
        String mended = anion.isEmpty() || head.length() < SHORTEST_WORD ? head : mendedWord(head);
        return !mended.equals(head) && !Nomenclature.compoundedMetal(mended).isEmpty() ? mended + anion : "";
    }

    private static String mendedWord(String word) {
        int most = word.length() < LONG ? LookAlikes.SLIP : word.length() < LONGER ? ONE_SLIP
            : ONE_SLIP + LookAlikes.SLIP;
        Map<String, Integer> near = new HashMap<>();
        Letterprint print = Letterprint.of(word);
        for (Letterprint known : WORDS) {
            if (print.mayBeWithin(known, most + MARGIN)) {
                int distance = LookAlikes.between(word, known.key(), most + MARGIN);
                near.put(known.key(), distance);
            }
        }
        near.values().removeIf(distance -> distance > most + MARGIN);
        int least = near.values().stream().mapToInt(d -> d).min().orElse(most + 1);
        Set<String> meanings = new LinkedHashSet<>();
        near.forEach((known, distance) -> {
            if (distance <= least + MARGIN) {
                meanings.add(Nomenclature.meaning(known));
            }
        });
        return least > most || meanings.size() > 1 || another(word, nearest(near, least), least) ? word
            : nearest(near, least);
    }

    /** A chlorate is no damaged chlorite: what a salt ends in tells which it is. */
    private static boolean another(String word, String known, int distance) {
        return distance > 2 && (!saltEnding(word).equals(saltEnding(known)) && !saltEnding(word).isEmpty()
            || Neighbours.of(known, false).contains(word));
    }

    private static String saltEnding(String word) {
        return SALT_ENDINGS.stream().filter(word::endsWith).findFirst().orElse("");
    }

    private static boolean sameEnd(String word, String known, int letters) {
        return word.regionMatches(word.length() - letters, known, known.length() - letters, letters);
    }

    private static String nearest(Map<String, Integer> near, int least) {
        return near.entrySet().stream().filter(e -> e.getValue() == least).map(Map.Entry::getKey).sorted().findFirst()
            .orElseThrow();
    }
}
