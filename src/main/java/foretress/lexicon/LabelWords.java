package foretress.lexicon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Words on a label that are no substances: connecting words, units, "free of", "may contain"; in five languages. */
final class LabelWords {
    /** Said of nothing: they neither name a substance nor leave one unnamed. */
    static final Set<String> CONNECTING = Set.of("""
        ingredients ingredient ingredientes inci composition composicion contains contain containing contiene contener
        contient contenir enthalt enthalten zawiera with con avec mit and or plus y o et ou und oder i of the a in on
        from de la el le may puede peut kann also incl including g mg ml kg l vol ppm ph w v max min less than list
        full head after mixing mixed traces kan moze zawierac sklad skladniki inhaltsstoffe bestandteile zutaten cas to
        for pour dla do oraz lub z les des du los las del percent""".split("\\s+"));

    static final Set<String> AND = Set.of("and", "or", "nor", "y", "ni", "et", "ou", "und", "oder", "lub");
    static final Set<String> FREE_AFTER = Set.of("free", "frei", "libre");
    /** "Ammoniakfrei": the same in one word. */
    static final List<String> FREE_WITHIN = List.of("frei", "free");
    static final List<String> FREE_DAMAGED = List.of("frei", "free", "fee", "fre");
    static final Set<String> OF = Set.of("of", "from", "de", "d", "von");

    /** After these, to the end of the line, stands the name of a shade. */
    static final Set<String> SHADE = Set.of("shade", "shades", "colour", "color", "nuance", "farbton", "farbe", "ton",
        "tono", "teinte", "coloris", "odcien", "kolor");

    /** Words that deny by themselves and are like no other. */
    static final List<String> LONG_WITHOUT = List.of("without", "exempt", "exempte");

    /** What opens a claim that something is not in the product; the longer openings first. */
    static final List<List<String>> WITHOUT =
        List.of(List.of("does", "not", "contain"), List.of("do", "not", "contain"), List.of("no", "contiene"),
            List.of("contains", "no"), List.of("contain", "no"), List.of("no", "added"), List.of("free", "of"),
            List.of("free", "from"),
            List.of("libre", "de"), List.of("exempt", "de"), List.of("frei", "von"), List.of("without"), List.of("sin"),
            List.of("sans"),
            List.of("ohne"), List.of("bez"), List.of("nie", "zawiera"), List.of("wolny", "od"),
            List.of("wolne", "od"), List.of("enthalt", "kein"), List.of("enthalt", "keine"),
            List.of("enthalt", "keinen"), List.of("ne", "contient", "pas"),
            List.of("ne", "contient", "ni"), List.of("libres", "de"), List.of("exento", "de"), List.of("exenta", "de"),
            List.of("exempte", "de"), List.of("no"));

    /** The same by their first words, in this order. */
    static final Map<String, List<List<String>>> WITHOUT_BY_FIRST = byFirst(WITHOUT);

    /** Openings with a word long enough to be known with a slip in it. */
    static final int SPELT = 7;
    static final List<List<String>> SPELT_WITHOUT = WITHOUT.stream()
        .filter(opening -> opening.stream().anyMatch(word -> word.length() > 3)).toList();
    /** The same by their first words, in the order in which these first come. */
    static final Map<String, List<List<String>>> SPELT_BY_FIRST = byFirst(SPELT_WITHOUT);

    static final List<List<String>> MAY_CONTAIN = List.of(List.of("may", "contain"), List.of("puede", "contener"),
        List.of("peut", "contenir"), List.of("kann", "enthalten"), List.of("moze", "zawierac"));

    /** Common words that are also names of substances: they count only where they stand alone, for shades are called so too. */
    static final Set<String> ALONE_ONLY =
        Set.of("lead", "silver", "copper", "mercury", "developer", "chamomile", "indigo", "madder",
            "peroxide", "honey", "sulfur", "henna", "miedz", "miel", "kamille", "manzanilla", "rumianek", "indygo",
            "kobalt", "cobalto", "cobalt", "plomo", "plomb",
            "talk", "senna", "mercurio", "nickel", "niquel");

    /** Words that end the names of many other things (rose water, capryl alcohol): they count beside a word that is known too. */
    static final Set<String> HEADS = Set.of("alcohol", "alkohol", "alcool", "water", "eau", "agua", "wasser", "woda",
        "starch", "betaine", "keratin", "paraffin",
        "edta", "silica", "glycine", "urea", "lecithin", "parabens", "paraben", "glucose", "fragrance", "persulfate",
        "thioglycolates", "lawsonia");

    private static final int SHORT = 4;

    private LabelWords() {}

    private static Map<String, List<List<String>>> byFirst(List<List<String>> openings) {
        Map<String, List<List<String>>> byFirst = new LinkedHashMap<>();
        openings.forEach(opening -> byFirst.computeIfAbsent(opening.get(0), first -> new ArrayList<>()).add(opening));
        return byFirst;
    }

    /** Short names mean something else within longer ones (the MEA in cocamide MEA). */
    static boolean countsOnlyAlone(String key) {
        return ALONE_ONLY.contains(key) || HEADS.contains(key) || key.length() <= SHORT && !LabelToken.isNumber(key);
    }

    static boolean startsHere(List<LabelToken> tokens, int at, List<String> words) {
        if (at + words.size() > tokens.size()) {
            return false;
        }
        for (int i = 0; i < words.size(); i++) {
            LabelToken token = tokens.get(at + i);
            if (!token.folded().equals(words.get(i)) || i > 0 && token.before() != LabelToken.Gap.INSIDE) {
                return false;
            }
        }
        return true;
    }
}
