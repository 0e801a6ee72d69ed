package foretress.lexicon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Words on a label that are no substances: connecting words, units, "free of", "may contain"; in five languages. */
final class LabelWords {
    /** Said of nothing: they neither name a substance nor leave one unnamed. */
    static final Set<String> CONNECTING = words(
        """
        ingredients ingredient ingredientes inci composition composicion contains contain containing contiene contener
        contient contenir enthalt enthalten zawiera with con avec mit and or plus y o et ou und oder i of the a in on
        from de la el le may puede peut kann also incl including g mg ml kg l vol ppm ph w v max min less than list
        full head after mixing mixed traces kan moze zawierac sklad skladniki inhaltsstoffe bestandteile zutaten cas to
        for pour dla do oraz lub z les des du los las del percent ingredienti composizione contengono contiene da di e il lo gli nel natural naturale naturel naturelle naturalny naturalna naturalne naturlich naturliche naturliches prozent procent ciento cento vols volumes volumen volumenes volumi zusammensetzung sowie bzw per contenere puo formula ingr""");

    static final Set<String> AND = Set.of("and", "or", "nor", "y", "ni", "et", "ou", "und", "oder", "lub", "ani", "i",
        "e", "o", "oraz", "sowie", "noch");
    /** Here a claim of absence ends: what follows is in the product. */
    static final Set<String> BUT = words("""
        but with contains contain containing instead yet however only uses using based
        pero con contiene contienen sino solo
        mais avec contient contiennent seulement
        aber mit enthalt enthalten sondern nur
        ale lecz z ze zawiera zawieraja tylko
        ma contengono bensi solo""");
    /** What may stand between the words of a claim and the name in it. */
    static final Set<String> QUALIFIERS = words("""
        added any all harsh harmful toxic artificial synthetic pure free aggressive salts salt sources donors releasers dye dyes
        agregado anadido sales sal agresivo sustancias tintes derivados liberadores
        ajoute ajoutee sels sel agressif derives liberateurs
        zugesetztes zugesetzten salze schadliches donatoren abspalter farbstoff
        soli sol dodatku donorow barwnika barwnikow zwiazkow
        sali sale aggiunta derivati cessori
        d l de of di du des del""");
    static final Set<String> ETHOXYLATED = Set.of("peg", "ppg");
    /** Words of titles, directions and warnings; none of them is a damaged name. */
    static final Set<String> ORDINARY = words(
        """
        cream creme crema krem gel zel lotion lozione locion balm balsam balsamo baume mask mascarilla masque maschera maska powder
        polvo poudre proszek proszku pulver polvere spray foam espuma mousse pianka schaum schiuma hair cabello cheveux haar haare
        wlosow capelli colour color couleur farbe farba colore coloration shampoo champu shampooing szampon dye tinte teinture
        senza sans sin ohne bez without free kein keine nicht non not no nie only solo nur tylko use uso usage only new neu nuevo
        natural naturel naturale naturalny herbal roslin roslinny roslinna vegan vegano wegan plant plants pflanzen plantas plantes
        piante professional profesional profesjonalny professionnel professionale warning advertencia attention achtung uwaga
        avviso attenzione caution keep avoid eyes ojos yeux augen oczu occhi skin piel peau haut skore skory pelle children ninos
        enfants kinder dzieci bambini contact contacto kontakt kontaktu contatto rinse enjuagar rincer spulen splukac
        sciacquare gloves guantes gants handschuhe rekawice guanti allergy alergia allergie reaction reaccion reazioni sale
        made hecho producto produkt prodotto produit product batch lot lote lotto chargen partii blonde
        castano chatain rubio blond castagno braz ciemny jasny step stage phase bottle frasco flacon flasche butelka flacone
        sachet beutel saszetka bustina tube tubo tuba effect effetto efecto effet wirkung dzialanie with before after during
        colouring lightener bleach activator oxidant developer neutraliser fixer lotto marzo line linea please
        tattoos tatuajes tatouages tatuaze risk riesgo risque ryzyko warm cold water-based day days hours minutes minutos""");
    /** What opens the list of what is in it. */
    static final Set<String> HEADINGS = words("""
        ingredients ingredient ingredientes ingredienti ingredientl inci composition composicion composizione zusammensetzung
        inhaltsstoffe bestandteile zutaten sklad skladniki formula ingr""");
    static final Set<String> FREE_AFTER = Set.of("free", "frei", "libre", "libera", "libero");
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
    static final List<List<String>> WITHOUT = openings("""
        does not contain|do not contain|doesn t contain|don t contain|not contain|no contiene|no contienen|contains no
        contain no|contains neither|no added|free of|free from|devoid of|libre de|libres de|libre en|exempt de|exempts de
        exempte de|exemptes de|depourvu de|depourvue de|frei von|without|sin|sans|ohne|bez|senza|nie zawiera|nie zawieraja
        wolny od|wolna od|wolne od|wolnych od|pozbawiony|pozbawiona|enthalt kein|enthalt keine|enthalt keinen|enthalt weder
        ne contient pas|ne contient ni|ne contient aucun|ne contiennent pas|exento de|exenta de|exentos de|carece de
        non contiene|non contengono|privo di|priva di|privi di|prive di|esente da|esenti da|niente|pas de|aucun|aucune
        no lleva|no llevan|no incluye|no incluyen|no tiene|does not include|do not include|ne comporte pas|ne renferme pas|non include
        non ha|nie ma w skladzie|kein|keine|keinen|weder|ningun|ninguna|nessun|nessuna|zero|ani|ni|nor|neither|no""");

    /** The same by their first words, in this order. */
    static final Map<String, List<List<String>>> WITHOUT_BY_FIRST = byFirst(WITHOUT);

    /** Openings with a word long enough to be known with a slip in it. */
    static final int SPELT = 7;
    static final List<List<String>> SPELT_WITHOUT = WITHOUT.stream()
        .filter(opening -> opening.stream().anyMatch(word -> word.length() > 3)).toList();
    /** The same by their first words, in the order in which these first come. */
    static final Map<String, List<List<String>>> SPELT_BY_FIRST = byFirst(SPELT_WITHOUT);

    /** What a damaged "no" before it makes a claim of. */
    static final Set<String> SAYS_CONTAINS =
        words("contiene contienen contient contiennent contengono contain contains "
            + "zawiera zawieraja");
    static final Set<String> DENIES_CONTAINS = Set.of("no", "non", "ne", "nie", "not");
    /** What says "free" before an "of", in whatever tongue. */
    static final Set<String> FREE_BEFORE =
        words("free libre libres frei exento exenta exempt exempte depourvu wolny wolna "
            + "wolne privo priva esente esenti devoid");
    private static final List<String> DENY = List.of("sin", "sans", "ohne", "senza", "bez", "kein", "keine", "zero");
    /** Words of their own, however like one that denies. */
    private static final Set<String> NO_DENIAL =
        words("in ein eine einen one si so sie sun ans cans sand sono les des");
    private static final int LONG_DENIAL = 4;
    private static final Set<String> DENYING_SHAPES = Stream.of("sin", "sans", "ohne", "senza", "bez", "kein")
        .map(LabelWords::shape).collect(Collectors.toSet());

    static final List<List<String>> MAY_CONTAIN = List.of(List.of("may", "contain"), List.of("puede", "contener"),
        List.of("peut", "contenir"), List.of("kann", "enthalten"), List.of("moze", "zawierac"),
        List.of("puo", "contenere"));

    /** Common words that are also names of substances: they count only where they stand alone, for shades are called so too. */
    static final Set<String> ALONE_ONLY =
        Set.of("lead", "silver", "copper", "mercury", "developer", "chamomile", "indigo", "madder",
            "peroxide", "honey", "sulfur", "miedz", "miel", "kamille", "manzanilla", "rumianek", "indygo",
            "kobalt", "cobalto", "cobalt", "plomo", "plomb",
            "talk", "senna", "walnut", "walnuss", "noce", "nogal", "noyer", "caramel", "caramello", "caramelo",
            "karmel",
            "sumac", "saflor", "natron", "soda", "mercurio", "nickel", "niquel");

    /** Words that end the names of many other things (rose water, capryl alcohol): they count beside a word that is known too. */
    static final Set<String> HEADS = Set.of("alcohol", "alkohol", "alcool", "water", "eau", "agua", "wasser", "woda",
        "starch", "betaine", "keratin", "paraffin",
        "edta", "silica", "glycine", "urea", "lecithin", "parabens", "paraben", "glucose", "fragrance", "persulfate",
        "thioglycolates", "lawsonia");

    /** Short, and never a part of another name. */
    private static final Set<String> FORMULAS = Set.of("h2o2", "ppd");
    /** What stands after a number, and is the same with a slip in it. */
    private static final List<String> UNITS =
        List.of("vol", "vols", "volumes", "volumen", "volumenes", "volumi", "percent", "prozent", "procent");
    private static final int SHORT = 4;
    private static final Pattern COLOUR_AND_NUMBER =
        Pattern.compile("(blue|red|yellow|green|orange|violet|brown|black)[0-9]+");

    private LabelWords() {}

    private static Set<String> words(String text) {
        return Arrays.stream(text.strip().split("\\s+")).collect(Collectors.toUnmodifiableSet());
    }

    private static List<List<String>> openings(String text) {
        return Arrays.stream(text.strip().split("[|\n]")).map(opening -> List.of(opening.strip().split(" "))).toList();
    }

    /** A word that denies, with its letters read as what looks like them: "SlN", "0HNE". */
    static boolean deniesByShape(String word) {
        return DENYING_SHAPES.contains(shape(word));
    }

    static boolean deniesButForASlip(String word) {
        return word.length() > 2
            && DENYING_SHAPES.stream().anyMatch(denies -> denies.length() > 3 && LookAlikes.oneSlip(word, denies));
    }

    /** Nearly a word that denies; a short one only at the head of an item, "senza" even with two slips. */
    static boolean mayDeny(String word, boolean heads) {
        boolean likely = word.length() > 1 && !NO_DENIAL.contains(word) && !LabelToken.isNumber(word)
            && !CONNECTING.contains(word);
        return likely && DAMAGED_DENIALS.contains(word)
            || likely && DENY.stream().filter(denies -> heads || denies.length() > LONG_DENIAL)
                .anyMatch(denies -> LookAlikes.oneSlip(word, denies) || twoSlips(word, denies));
    }

    /** Wherever they stand: no words of any tongue, but what a lost, doubled or swapped letter makes of "bez", "senza", "ohne", "sans". */
    private static final Set<String> DAMAGED_DENIALS =
        words("bz bzz ebz bze bezz beez sna sns snas saans sanns ohn hne ohen "
            + "onhe oohne ohhne senz snza seza senzza sennza esnza sezna kien keiin keinn");

    static boolean nearlyFree(String word) {
        return FREE_BEFORE.stream().anyMatch(free -> LookAlikes.oneSlip(word, free));
    }

    private static boolean twoSlips(String word, String denies) {
        int most = 2 * LookAlikes.SLIP;
        return denies.length() > LONG_DENIAL && word.length() == denies.length()
            && word.charAt(0) == denies.charAt(0) && LookAlikes.between(word, denies, most) <= most;
    }

    private static String shape(String word) {
        var shape = new StringBuilder(word);
        for (int i = 0; i < word.length(); i++) {
            shape.setCharAt(i, LookAlikes.shape(word.charAt(i)));
        }
        return shape.toString();
    }

    private static Map<String, List<List<String>>> byFirst(List<List<String>> openings) {
        Map<String, List<List<String>>> byFirst = new LinkedHashMap<>();
        openings.forEach(opening -> byFirst.computeIfAbsent(opening.get(0), first -> new ArrayList<>()).add(opening));
        return byFirst;
    }

    /** Short names mean something else within longer ones (the MEA in cocamide MEA). */
    static boolean countsOnlyAlone(String key) {
        return ALONE_ONLY.contains(key) || HEADS.contains(key)
            || key.length() <= SHORT && !LabelToken.isNumber(key) && !FORMULAS.contains(key);
    }

    /** "Blue 1" is a food colour by itself, and another one after "disperse". */
    static boolean isColourAndNumber(String key) {
        return COLOUR_AND_NUMBER.matcher(key).matches();
    }

    /** "Peroxide 7 vvol". */
    static boolean isUnit(String word) {
        return word.length() > 2 && UNITS.stream().anyMatch(unit -> LookAlikes.oneSlip(word, unit));
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
