package foretress.lexicon;

import foretress.lexicon.LabelToken.Gap;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Words that speak of a metal which reacts with peroxide, in Latin and in six languages. */
final class Metals {
    static final String SOME_METAL = "metalkindnotstated";

    /** As a word begins, or as the metal ends a longer one ("chlorocuprate"). Leadwort, plumbago and argan are plants. */
    private static final Pattern STEM = Pattern.compile(
        "^(cupr|plumbi|plumbu|ferri[^s]|ferro|cobalt|kobalt|nickel|nikl|niquel|nichel|bismut|bizmut|wismut|argenti[^n]|argentu"
            + "|mangan|chromi[cu]|chromat|chlorocupr|mercuri|hydrargyr|cadmi|stann|kupfer.|eisen.|silberni|bleia|bleio|bleic).*"
            + "|.*(cuprate|ferrate|ferricyanide|ferrocyanide|plumbate|bismuthate|chromate|manganate)$");
    private static final Set<String> METALS =
        Set.of("copper", "cuivre", "cobre", "rame", "miedz", "miedzi", "kupfer", "lead",
            "plomb", "plomo", "piombo", "olow", "olowiu", "blei", "iron", "nickel", "cobalt", "bismuth", "manganese",
            "mercury",
            "silver", "srebra", "argento", "plata");
    /** What makes a compound of the word before it. */
    private static final Pattern COMPOUND = Pattern.compile(
        ".*(ate|ide|ite|ato|uro|at|id|it|ine|ane|one|ase|ene|yl)$|pca|peptide.*|complex|chelate|ii|iii|salt|salts|compound");

    private Metals() {}

    static boolean speaksOf(List<LabelToken> tokens, int at) {
        String word = tokens.get(at).folded();
        return STEM.matcher(word).matches() || METALS.contains(word) && at + 1 < tokens.size()
            && tokens.get(at + 1).before().compareTo(Gap.BREAK) <= 0
            && COMPOUND.matcher(tokens.get(at + 1).folded()).matches();
    }
}
