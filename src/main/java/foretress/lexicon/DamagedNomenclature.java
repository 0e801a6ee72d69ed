package foretress.lexicon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Names in another tongue with a slip in a word of them: "toi9licolato de amonio", "ácido fo5fórico". A word of naming (a metal, an
 * anion, "acid") is mended where it can be no other one; then the sound of the rest may have one slip.
 */
final class DamagedNomenclature {
    private static final int SHORTEST = 5;
    private static final int LONG = 7;
    private static final int SHORTEST_SOUND = 6;
    private static final int MOST_WORDS = 5;
    private static final int ENDING = 4;
    private static final List<String> SALT_ENDINGS =
        List.of("uro", "ure", "ate", "ato", "ite", "ito", "ide", "ido", "ium",
            "io", "at", "it", "id", "an", "yn", "ek");
    private static final int ONE_SLIP = LookAlikes.SLIP + 1;
    /** Another one so little farther off, and it could be either. */
    private static final int MARGIN = 2;

    private static final List<Letterprint> WORDS =
        Nomenclature.words().stream().filter(word -> word.length() >= SHORTEST).map(Letterprint::of).toList();

    private final Map<String, Substance> byKey;
    /** The sounds that stand in keys, by all that stands around them. */
    private final Map<String, List<String>> sounds = new HashMap<>();

    DamagedNomenclature(Map<String, Substance> byKey) {
        this.byKey = byKey;
        byKey.keySet().forEach(key -> sounds.computeIfAbsent(around(key), k -> new ArrayList<>()).add(sound(key)));
    }

    /**
     * @param words as they stand
     * @param mended each as {@link #mended} says
     */
    Optional<Substance> read(List<String> words, List<String> mended) {
        String key = Nomenclature.key(mended);
        if (key.isEmpty() || around(key).equals("__")) {
            return Optional.empty();
        }
        Substance whole = byKey.get(key);
        return whole != null && !mended.equals(words) ? Optional.of(whole) : bySound(key);
    }

    /** No name in another tongue has more words that are looked at for slips. */
    static boolean mayBe(int words) {
        return words >= 2 && words <= MOST_WORDS;
    }

    private Optional<Substance> bySound(String key) {
        String sound = sound(key);
        if (sound.length() < SHORTEST_SOUND || byKey.containsKey(key)) {
            return Optional.empty();
        }
        List<String> near = sounds.getOrDefault(around(key), List.of()).stream()
            .filter(known -> known.length() >= SHORTEST_SOUND && Math.abs(known.length() - sound.length()) <= 2)
            .filter(known -> sameEnd(sound, known, ENDING - 1))
            .filter(known -> LookAlikes.between(sound, known, ONE_SLIP) <= ONE_SLIP).toList();
        return near.size() == 1 ? Optional.ofNullable(byKey.get(whole(key, near.get(0)))) : Optional.empty();
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

    /** The word of naming it alone may be; else itself. */
    static String mended(String word) {
        if (word.length() < SHORTEST || Nomenclature.knows(word)) {
            return word;
        }
        int most = word.length() < LONG ? LookAlikes.SLIP : ONE_SLIP;
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
