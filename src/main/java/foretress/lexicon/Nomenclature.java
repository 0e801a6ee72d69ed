package foretress.lexicon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One key for a chemical name in English, Spanish, French, German, Polish and Italian: the parts of a salt in one order, whether
 * it is "ammonium persulfate", "persulfato de amonio", "Ammoniumpersulfat", "nadsiarczan amonu" or "ammonio persolfato"; an acid
 * without its ending; all other words by their sound. Words of chemical naming, from memory.
 */
final class Nomenclature {
    private static final Map<String, String> CATIONS = table("""
        sodium sodio sodico sodica sodique sodu sodowy sodowa natrium soude sosa soda
        potassium potasio potassio potasico potassico potassique potasu potasowy kalium potasse potasa potassa
        ammonium amonio ammonio amonico ammonico amonu amonowy
        calcium calcio calcico calcique wapnia kalzium
        magnesium magnesio magnezu
        lithium litio litu
        barium bario baryum baru
        strontium estroncio stronzio strontu
        aluminum aluminium aluminio alluminio glinu
        zinc cynku zinco zink
        tin estano etain cyny stagno zinn
        lead plomo plomb olowiu piombo blei
        silver plata argent srebra argento silber
        bismuth bismuto bizmutu wismut bismut
        copper cobre cuivre miedzi rame kupfer cupric cuprico cuprique rameico
        cuprous cuproso cuivreux rameoso
        iron hierro fer zelaza ferro eisen
        ferrous ferroso ferreux zelazawy
        ferric ferrico ferrique zelazowy
        cobalt cobalto kobaltu kobalt
        nickel niquel niklu nichel
        manganese manganeso manganu mangan
        mercury mercurio mercure rteci quecksilber
        cadmium cadmio kadmu
        chromium cromo chrome chromu
        guanidine guanidina guanidin guanidyny
        hydrolyzed hydrolysed hidrolizado hidrolizada hydrolyse hydrolysee hydrolisiert hydrolisiertes hydrolysiertes
        hydrolizowany hydrolizowana idrolizzato idrolizzata""");

    private static final Map<String, String> ANIONS = table("""
        sulfate sulfato solfato siarczan siarczanu sulfat
        sulfite sulfito solfito siarczyn siarczynu sulfit
        sulfide sulfuro solfuro sulfure siarczek siarczku sulfid
        persulfate persulfato persolfato nadsiarczan nadsiarczanu persulfat peroxodisulfat
        bisulfite bisulfito bisolfito wodorosiarczyn wodorosiarczynu bisulfit hydrogensulfit
        metabisulfite metabisulfito metabisolfito pirosiarczyn pirosiarczynu disiarczyn metabisulfit disulfit disulfito
        thiosulfate tiosulfato tiosolfato tiosiarczan tiosiarczanu thiosulfat hyposulfite hiposulfito iposolfito
        dithionite ditionito hidrosulfito idrosolfito hydrosulfite podsiarczyn dithionit hydrosulfit
        chloride cloruro chlorure chlorek chlorku chlorid
        hcl clorhidrato chlorhydrate chlorowodorek chlorowodorku dichlorowodorek cloridrato dicloridrato hydrochlorid dihydrochlorid hydrochloride
        hydroxide hidroxido hydroxyde wodorotlenek wodorotlenku idrossido hydroxid
        peroxide peroxido peroxyde nadtlenek nadtlenku perossido peroxid
        oxide oxido oxyde tlenek tlenku tlenkow ossido oxid
        carbonate carbonato weglan weglanu carbonat karbonat
        bicarbonate bicarbonato wodoroweglan bicarbonat hydrogencarbonat
        percarbonate percarbonato nadweglan percarbonat
        nitrate nitrato azotan azotanu nitrat
        subnitrate subnitrato subnitrat
        acetate acetato octan octanu acetat
        citrate citrato cytrynian cytrynianu citrat zitrat
        phosphate fosfato fosforan phosphat
        pyrophosphate pirofosfato pirofosforan pyrophosphat diphosphat difosforan
        stannate estannato stannato stannat cynian
        silicate silicato krzemian silicat silikat
        metasilicate metasilicato metakrzemian metakrzemianu metasilicat metasilikat
        perborate perborato nadboran perborat
        bromate bromato bromian bromianu bromat
        dichromate dicromato bicromato dichromat bichromate dwuchromian dichromian
        bromide bromuro bromure bromek bromid
        thioglycolate tioglicolato tioglicolate tioglikolan tioglikolanu thioglycolat thioglykolat tioglicolaat
        thiolactate tiolactato tiolattato tiomleczan thiolactat
        gluconate gluconato glukonian glukonianu gluconat
        stearate estearato stearato stearynian stearat
        benzoate benzoato benzoesan benzoat
        sorbate sorbato sorbinian sorbat
        lactate lactato lattato mleczan lactat
        picramate picramato pikraminian pikraminianu pikramat picramat
        tartrate tartrato winian tartrat
        permanganate permanganato nadmanganian permanganat
        glycolate glicolato glikolan glycolat
        methosulfate metosulfato metosolfato methosulfat""");

    private static final Map<String, String> WORDS = table("""
        hc
        red rojo roja rouge rot rosso rossa czerwony czerwien
        blue azul bleu bleue blau blu niebieski blekit
        yellow amarillo amarilla jaune gelb giallo gialla zolty zolcien
        orange naranja anaranjado arancio arancione pomaranczowy oranz
        violet violette violeta violett viola violetto fioletowy fiolet
        black negro noir schwarz nero czarny czern
        brown marron marrone castano braun brun bruno brazowy braz
        green verde vert grun zielen zielony
        acidic
        basic basico basica basique basisch basische basischer zasadowy zasadowa zasadowe
        disperse dispers disperso dispersi dispersa dispersas dispersos dispersion dyspersyjny dyspersyjna dyspersyjne zawiesinowy zawiesinowa
        oil aceite huile ol oel olio olej
        alcohol alkohol alcool
        protein proteina proteine protein bialko""");

    /** They stand before the colour in one tongue and after it in another: "Basic Red 2", "rosso basico 2". */
    private static final Set<String> FAMILIES = Set.of("basic", "disperse", "hc", "acidic");
    /** German joins the family to the colour: Säurerot, Basischblau, Dispersionsgelb. */
    private static final Map<String, String> FAMILY_JOINED =
        Map.of("basisch", "basic", "saure", "acidic", "dispersions", "disperse", "dispers", "disperse", "hc", "hc");
    private static final Set<String> COLOURS =
        Set.of("red", "blue", "yellow", "orange", "violet", "black", "brown", "green");
    /** Polish and Spanish put a vowel between the groups: "metyloizotiazolinon". */
    private static final Pattern GROUP_JOINT = Pattern.compile("(?<=met|et|prop|but|fen)ilo(?=[a-z]{4})");
    private static final Set<String> ACID =
        Set.of("acid", "acido", "acide", "saure", "kwas", "acidum", "kwasu", "acidi", "ac", "kw");
    private static final Map<String, String> MEANINGS = meanings();
    private static final Set<String> LINKS = Set.of("de", "d", "di", "du", "des", "del", "della", "von", "l");
    private static final Set<String> NUMBER_SIGNS = Set.of("no", "nr", "num", "numero");
    private static final Set<String> SIGNS_OF_A_DYE = Set.of("no", "nr", "num", "numero", "n", "o");
    /** That it is dissolved makes no other substance of it. */
    private static final Set<String> SOLUTION =
        Set.of("solution", "losung", "solucion", "soluzione", "roztwor", "aqueous",
            "wassrig", "wassrige", "wodny", "aqueuse", "acuosa", "acquosa");
    private static final String GERMAN_SOLUTION = "losung";
    private static final Set<String> VALENCES = Set.of("i", "ii", "iii", "iv");
    private static final Map<String, String> VALENT =
        Map.of("ironii", "ferrous", "ironiii", "ferric", "copperi", "cuprous", "mercuryi", "mercurous");
    private static final Set<String> BETA = Set.of("β", "beta", "b");
    private static final List<String> COUNTS = List.of("tetra", "penta", "hexa", "mono", "tri", "di");
    private static final List<String> COMPOUNDING = List.of("ammonium", "natrium", "kalium", "calcium", "kalzium",
        "magnesium", "lithium", "barium", "strontium", "kupfer", "eisen", "blei", "silber", "zink", "zinn", "wismut",
        "bismut", "kobalt", "nickel", "mangan", "quecksilber", "guanidin");
    private static final Pattern ACID_ENDING = Pattern.compile("(in)?(ik|ov|eg)$");
    private static final Pattern JOINT = Pattern.compile("en[eo](?=[bdfgklmnprstv])");
    private static final Pattern ENDING = Pattern.compile("(um|[aeiou]+)$");
    private static final int SHORTEST = 5;
    private static final int MOST_BEFORE_ITS_NUMBER = 6;
    private static final int MOST_BEFORE_ANION = 4;
    private static final int LONGEST_ANION = 16;
    private static final int SHORTEST_STEM = 4;

    private final StringBuilder cations = new StringBuilder();
    private final StringBuilder words = new StringBuilder();
    private final StringBuilder anions = new StringBuilder();
    private final List<String> others = new ArrayList<>();
    private boolean acid;
    private boolean oneName;

    private Nomenclature() {}

    /** The first of each line for all of that line. */
    private static Map<String, String> table(String text) {
        Map<String, String> table = new HashMap<>();
        String head = "";
        for (String line : text.strip().split("\n")) {
            String[] same = line.strip().split(" ");
            head = same[0];
            for (String word : same) {
                table.put(word, head);
            }
        }
        return table;
    }

    /** Every word of naming: metals, anions, "acid". */
    static Set<String> words() {
        return Stream.of(MEANINGS.keySet(), WORDS.keySet()).flatMap(Set::stream).collect(Collectors.toSet());
    }

    static boolean knows(String word) {
        return MEANINGS.containsKey(word) || LINKS.contains(word) || WORDS.containsKey(word)
            || VALENCES.contains(word);
    }

    /** What it stands for, the same in every tongue. */
    static String meaning(String word) {
        return MEANINGS.getOrDefault(word, WORDS.get(word));
    }

    static boolean isCation(String word) {
        return CATIONS.containsKey(word);
    }

    static boolean isAnion(String word) {
        return ANIONS.containsKey(word);
    }

    /** The metal a German compound begins with ("Kupfergluconat"); empty where it does not. */
    static String compoundedMetal(String word) {
        return COMPOUNDING.stream().filter(word::startsWith).findFirst().orElse("");
    }

    private static Map<String, String> meanings() {
        Map<String, String> all = new HashMap<>(ANIONS);
        all.putAll(CATIONS);
        ACID.forEach(word -> all.put(word, "acid"));
        return Map.copyOf(all);
    }

    /** Of the folded words of one name; empty where they are too few letters to be told by their sound. */
    static String key(List<String> words) {
        List<String> tokens = dye(undissolved(words));
        boolean family = tokens.stream().anyMatch(Nomenclature::isFamily);
        if (family && !LabelToken.isNumber(tokens.get(tokens.size() - 1))) {
            return "";
        }
        var name = new Nomenclature();
        for (int i = 0; i < tokens.size(); i++) {
            boolean numberNext = i + 1 < tokens.size() && LabelToken.isNumber(tokens.get(i + 1));
            boolean inner = i > 0 && i + 1 < tokens.size();
            if (i > 0 && name.valence(tokens.get(i - 1), tokens.get(i))) {
                continue;
            }
            boolean link = inner && LINKS.contains(tokens.get(i)) && (!numberNext || tokens.get(i).length() > 1);
            boolean colour = i > 0 && numberNext && tokens.get(i).equals("n") && WORDS.containsKey(tokens.get(i - 1));
            if (!link && !colour && !(numberNext && NUMBER_SIGNS.contains(tokens.get(i)))) {
                boolean beta = i + 1 < tokens.size() && tokens.get(i + 1).startsWith("hydroxyethyl");
                name.add(beta && BETA.contains(tokens.get(i)) ? "2" : tokens.get(i));
            }
        }
        return name.key();
    }

    /** The number of a dye stands last: in "HC Violet 2 Basic Orange 3" the 2 is not the orange's. */
    private static boolean isFamily(String word) {
        return FAMILIES.contains(WORDS.getOrDefault(word, ""));
    }

    /** "Rojo ácido n.º 33", "Säurerot 33", "H.C. Red 3": a family, a colour and a number; the acid of its family makes no acid of it. */
    private static List<String> dye(List<String> words) {
        int last = words.size() - 1;
        if (last < 1 || last > MOST_BEFORE_ITS_NUMBER || !LabelToken.isNumber(words.get(last))) {
            return words;
        }
        List<String> parts = new ArrayList<>();
        words.subList(0, last).stream().map(Nomenclature::familyApart).forEach(parts::addAll);
        if (parts.stream().noneMatch(Nomenclature::isColour)) {
            return words;
        }
        parts.removeIf(SIGNS_OF_A_DYE::contains);
        if (parts.size() > 1 && parts.get(0).equals("h") && parts.get(1).equals("c")) {
            parts.subList(0, 2).clear();
            parts.add(0, "hc");
        }
        parts.replaceAll(part -> ACID.contains(part) || part.startsWith("kwasow") ? "acidic" : part);
        parts.add(words.get(last));
        return parts;
    }

    private static boolean isColour(String word) {
        return COLOURS.contains(WORDS.getOrDefault(word, ""));
    }

    private static List<String> familyApart(String word) {
        return FAMILY_JOINED.keySet().stream()
            .filter(family -> word.startsWith(family) && isColour(word.substring(family.length())))
            .findFirst().map(family -> List.of(FAMILY_JOINED.get(family), word.substring(family.length())))
            .orElse(List.of(word));
    }

    private static List<String> undissolved(List<String> words) {
        boolean dissolved = words.stream().anyMatch(word -> word.endsWith(GERMAN_SOLUTION) || SOLUTION.contains(word));
        return !dissolved ? words : words.stream().filter(word -> !SOLUTION.contains(word))
            .map(word -> word.endsWith(GERMAN_SOLUTION) ? word.substring(0, word.length() - GERMAN_SOLUTION.length())
                : word)
            .toList();
    }

    /** "Iron(II)" is ferrous, "copper(I)" cuprous; of the other metals one state alone is met with. */
    private boolean valence(String metal, String state) {
        String cation = CATIONS.getOrDefault(metal, "");
        if (cation.isEmpty() || !VALENCES.contains(state) || cations.length() == 0) {
            return false;
        }
        String named = VALENT.getOrDefault(cation + state, cation);
        cations.replace(cations.length() - cation.length(), cations.length(), named);
        return true;
    }

    /** Whether a part of it is known only by its sound. */
    static boolean soundAlone(List<String> words) {
        String[] parts = key(words).split("_", -1);
        return parts.length > 1 && !parts[1].isEmpty();
    }

    private void add(String token) {
        if (ACID.contains(token)) {
            acid = true;
        } else if (CATIONS.containsKey(bare(token))) {
            cations.append(count(token)).append(CATIONS.get(bare(token)));
        } else if (ANIONS.containsKey(token)) {
            anions.append(ANIONS.get(token));
        } else {
            compound(token);
        }
    }

    /** German joins the parts: Dinatriumpyrophosphat, Etidronsäure, Diaminsulfat. */
    private void compound(String token) {
        String bare = bare(token);
        for (String cation : COMPOUNDING) {
            if (bare.startsWith(cation) && bare.length() > cation.length() + 2) {
                String count = token.substring(0, token.length() - bare.length());
                cations.append(count.equals("mono") ? "" : count).append(CATIONS.get(cation));
                add(bare.substring(cation.length()));
                return;
            }
        }
        if (token.endsWith("saure") && token.length() > 7) {
            acid = true;
            others.add(token.substring(0, token.length() - 5));
            return;
        }
        String anion = anionAtTheEnd(token);
        if (!anion.isEmpty()) {
            anions.append(ANIONS.get(anion));
        }
        others.add(FAMILIES.contains(WORDS.getOrDefault(token, "")) ? 0 : others.size(),
            token.substring(0, token.length() - anion.length()));
    }

    static String anionAtTheEnd(String token) {
        for (int from = Math.max(MOST_BEFORE_ANION, token.length() - LONGEST_ANION); from < token.length() - 3;
            from++) {
            if (ANIONS.containsKey(token.substring(from))) {
                return token.substring(from);
            }
        }
        return "";
    }

    private static String count(String token) {
        return COUNTS.stream().filter(c -> token.startsWith(c) && CATIONS.containsKey(token.substring(c.length())))
            .filter(c -> !c.equals("mono")).findFirst().orElse("");
    }

    private static String bare(String token) {
        if (CATIONS.containsKey(token)) {
            return token;
        }
        for (String count : COUNTS) {
            if (token.startsWith(count) && token.length() > count.length() + 3) {
                return token.substring(count.length());
            }
        }
        return token;
    }

    private String key() {
        oneName = oneGroupOfPlaces();
        others.stream().filter(w -> oneName && LabelToken.isNumber(w)).forEach(words::append);
        others.stream().filter(w -> !oneName || !LabelToken.isNumber(w)).forEach(w -> words.append(sound(w)));
        String joined = words.toString();
        boolean enough = joined.length() + cations.length() + anions.length() >= SHORTEST
            && joined.length() + anions.length() > 0
            && (joined.isEmpty() || letters(joined) >= SHORTEST_STEM || cations.length() + anions.length() > 0);
        return enough ? cations + "_" + joined + "_" + anions + (acid ? "_acid" : "") : "";
    }

    /** Then it does not matter where in the name they stand: toluene-2,5-diamine, 2,5-toluenediamine. */
    private boolean oneGroupOfPlaces() {
        int groups = 0;
        for (int i = 0; i < others.size(); i++) {
            boolean number = LabelToken.isNumber(others.get(i));
            boolean before = i > 0 && LabelToken.isNumber(others.get(i - 1));
            groups += number && !before ? 1 : 0;
        }
        return groups == 1;
    }

    private static int letters(String text) {
        int letters = 0;
        for (int i = 0; i < text.length(); i++) {
            letters += Character.isLetter(text.charAt(i)) ? 1 : 0;
        }
        return letters;
    }

    /** A group of a molecule as it sounds within a name. */
    static String soundOfGroup(String word) {
        return new Nomenclature().sound(word);
    }

    private String sound(String word) {
        if (LabelToken.isNumber(word) || word.length() == 1) {
            return word;
        }
        String known = WORDS.getOrDefault(word, word);
        String bare = known.startsWith("mono") && known.length() > 8 ? known.substring(4) : known;
        var sound = new StringBuilder();
        CharSequence even = evened(bare);
        for (int i = 0; i < even.length(); i++) {
            char c = even.charAt(i);
            boolean soft = c == 'c' && i + 1 < even.length() && "ei".indexOf(even.charAt(i + 1)) >= 0;
            char said = c == 'c' ? soft ? 's' : 'k' : c;
            if (said == 'n' || sound.length() == 0 || sound.charAt(sound.length() - 1) != said) {
                sound.append(said);
            }
        }
        return ended(JOINT.matcher(GROUP_JOINT.matcher(sound).replaceAll("il")).replaceAll("en"));
    }

    /** One way to write what is said alike: ph and f, th and t, qu, ch and k, y, j and i, w and v, x, z and s; an h is silent. */
    private static CharSequence evened(String word) {
        var even = new StringBuilder(word.length());
        for (int i = 0; i < word.length(); i++) {
            char c = word.charAt(i);
            char next = i + 1 < word.length() ? word.charAt(i + 1) : ' ';
            boolean pair = next == 'h' && (c == 'p' || c == 't' || c == 'c') || c == 'q' && next == 'u';
            char said = switch (c) {
                case 'p' -> pair ? 'f' : c;
                case 'q', 'c' -> pair ? 'k' : c;
                case 'y', 'j' -> 'i';
                case 'w' -> 'v';
                case 'x', 'z' -> 's';
                default -> c;
            };
            if (c != 'h') {
                even.append(said);
            }
            i += pair ? 1 : 0;
        }
        return even;
    }

    private String ended(String sound) {
        Matcher ending = ENDING.matcher(sound);
        String bare = ending.find() && ending.start() >= SHORTEST_STEM ? sound.substring(0, ending.start()) : sound;
        String even = bare.replace("toluilen", "toluen").replace("toluol", "toluen");
        String whole = even.endsWith("resorsin") ? even + "ol" : even;
        return acid ? ACID_ENDING.matcher(whole).replaceFirst("") : whole;
    }
}
