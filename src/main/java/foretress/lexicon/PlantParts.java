package foretress.lexicon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Plants named by their parts in six languages: "walnut shell", "Walnussschalen", "cáscara de nuez", "liść indygo" are the plant
 * whatever part of it is meant. Words of everyday language, from memory. An oil is another substance, and no part.
 */
final class PlantParts {
    private static final Set<String> PARTS = words(
        """
        leaf leaves root roots seed seeds flower flowers fruit peel shell husk hull bark wood herb rind powder powdered extract
        ground dried pwdr pwd pdr plv
        blatt blatter wurzel wurzeln samen blute bluten frucht schale schalen rinde holz kraut pulver extrakt gemahlen getrocknet
        feuille feuilles racine racines graine graines fleur fleurs fruits ecorce coque coques bois poudre extrait
        hoja hojas raiz semilla semillas flor flores fruto corteza cascara cascaras madera polvo extracto
        lisc lisci liscie korzen korzenia nasiona nasion kwiat kwiaty kwiatu kwiatow owoc owocow kora kory lupina lupiny lupin
        skorka drewno ziele proszek proszku ekstrakt wyciag sproszkowany sproszkowana
        foglia foglie radice radici semi fiore fiori frutto corteccia guscio gusci legno polvere estratto buccia mallo""");
    private static final Set<String> LINKS = Set.of("de", "d", "di", "du", "des", "del", "della", "dell", "la", "l",
        "en", "in",
        "z", "ze", "w", "da", "von", "aus", "of", "the", "el", "le", "les", "los", "las", "e", "y", "i", "et", "und",
        "and");
    /** German joins them to the plant: Indigoblätter, Walnussschalen, Krappwurzelpulver, Brennnesselextrakt. */
    private static final List<String> JOINED = Stream.of("blatt", "blatter", "wurzel", "wurzeln", "samen", "blute",
        "bluten",
        "frucht", "schale", "schalen", "rinde", "holz", "kraut", "pulver", "extrakt", "schalenextrakt", "schalenpulver",
        "wurzelpulver", "wurzelextrakt", "blattpulver", "blattextrakt", "blatterpulver", "blutenpulver",
        "blutenextrakt",
        "rindenextrakt", "rindenpulver", "samenpulver", "fruchtpulver").toList();
    private static final int SHORTEST_PLANT = 4;
    private static final int SHORTEST_DAMAGED_PART = 6;

    private static final List<Letterprint> DAMAGED_PARTS = PARTS.stream()
        .filter(part -> part.length() >= SHORTEST_DAMAGED_PART).sorted().map(Letterprint::of).toList();

    private PlantParts() {}

    private static Set<String> words(String text) {
        return Arrays.stream(text.strip().split("\\s+")).collect(Collectors.toUnmodifiableSet());
    }

    /** The plant alone, whatever part of it the words name; empty where they name none. */
    static String plant(List<String> words) {
        List<String> kept = new ArrayList<>();
        boolean part = false;
        for (String word : words) {
            String bare = bare(word);
            part |= PARTS.contains(word) || bare.length() < word.length();
            if (!PARTS.contains(word) && !LINKS.contains(word)) {
                kept.add(bare);
            }
        }
        String plant = String.join("", kept);
        return part && plant.length() >= SHORTEST_PLANT ? plant : "";
    }

    /** What a substance is called without its part, as its names are learnt. */
    static String learnt(List<String> words) {
        String plant = plant(words);
        return plant.isEmpty() ? String.join("", words) : plant;
    }

    /** A word for a part with one slip in it: "cásara". */
    static String mended(String word) {
        if (word.length() < SHORTEST_DAMAGED_PART || PARTS.contains(word)) {
            return word;
        }
        Letterprint print = Letterprint.of(word);
        return DAMAGED_PARTS.stream().filter(part -> LookAlikes.oneSlip(print, part)).findFirst()
            .map(Letterprint::key).orElse(word);
    }

    static boolean namesAPart(List<String> words) {
        return words.stream().anyMatch(PARTS::contains);
    }

    private static String bare(String word) {
        return JOINED.stream().filter(part -> word.endsWith(part) && word.length() >= part.length() + SHORTEST_PLANT)
            .max((a, b) -> Integer.compare(a.length(), b.length()))
            .map(part -> word.substring(0, word.length() - part.length())).orElse(word);
    }
}
