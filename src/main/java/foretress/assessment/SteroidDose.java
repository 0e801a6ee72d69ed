package foretress.assessment;

import foretress.questionnaire.Digits;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * What a typed line says of the dose of a steroid by mouth or injection, as prednisolone a day.
 *
 * <p>Weights by the comparable doses on the label of prednisolone in the United States, as quoted by prescribing pages: 15 mg are
 * worth 75 of cortisone, 60 of hydrocortisone, 15 of prednisone, 12 of methylprednisolone or triamcinolone and 2.25 of
 * dexamethasone or betamethasone. A steroid that is not among them is worth nobody knows how much.
 */
final class SteroidDose {
    private static final Map<String, Double> WORTH = Map.of("prednisolone", 1.0, "prednisone", 1.0,
        "methylprednisolone", 15 / 12.0, "triamcinolone", 15 / 12.0, "dexamethasone", 15 / 2.25, "betamethasone",
        15 / 2.25, "hydrocortisone", 15 / 60.0, "cortisone", 15 / 75.0);
    /** What may be thousands, {@code 1,000}, is read as such: of two readings the heavier. */
    private static final String THOUSANDS = "[1-9]\\d{0,2}(?:\\.\\d{3})+(?!\\d)";
    private static final String GRAM = "(?:gr?|gra?m\\p{L}*|جم|غ|غم|[جغ]رام\\p{L}*)(?!\\p{L})";
    private static final String MICROGRAM = "mcg|[µμ]g|ug|mi[ck]rog\\p{L}*|ميكرو\\p{L}*";
    private static final Pattern AMOUNT =
        Pattern.compile("(%s|\\d+(?:\\.\\d+)?)\\s*(?:(%s)|(%s))?".formatted(THOUSANDS, MICROGRAM, GRAM));
    private static final Pattern WORD = Pattern.compile("[\\p{L}]+|[&+]");
    /** {@code b.d.} is {@code bd}. */
    private static final Pattern DOT_OF_A_LETTER = Pattern.compile("(?<=\\b\\p{L})\\.");
    /** Words that multiply an amount or add another to it: the amount of a day is then not known. */
    private static final Set<String> MORE =
        Set.of("twice", "thrice", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "couple",
            "times",
            "double", "bd", "bid", "tds", "tid", "qds", "qid", "each", "every", "and", "dos", "tres", "cuatro", "cinco",
            "seis", "siete", "ocho", "nueve", "diez", "veces", "doble", "cada", "y", "zwei", "zweimal", "drei",
            "dreimal",
            "vier", "viermal", "fünf", "sechs", "sieben", "acht", "neun", "zehn", "mal", "und", "deux", "trois",
            "quatre",
            "cinq", "sept", "huit", "neuf", "dix", "fois", "et", "dwa", "dwie", "trzy", "cztery", "pięć", "sześć",
            "siedem", "osiem", "dziewięć", "dziesięć", "razy", "i", "x", "&", "+",
            "hai", "ba", "bốn", "năm", "sáu", "bảy", "tám", "chín", "mười", "lần", "mỗi", "và",
            "مرتين", "مرتان", "مرات", "حبتين", "حبتان", "قرصين", "قرصان", "اثنين", "اثنان", "ثلاث", "ثلاثة", "أربع",
            "أربعة", "اربع", "اربعة", "خمس", "خمسة", "ست", "ستة", "سبع", "سبعة", "ثمان", "ثماني", "ثمانية", "تسع",
            "تسعة", "عشر", "عشرة", "كل", "و");

    private final List<Double> amounts;
    private final boolean multiplied;
    private final List<String> names;

    /**
     * @param typed the whole line
     * @param names what it may have been read as
     */
    SteroidDose(String typed, List<String> names) {
        String line = Digits.plain(Normalizer.normalize(typed, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT));
        this.amounts = AMOUNT.matcher(line).results().map(SteroidDose::milligrams).toList();
        this.multiplied = WORD.matcher(DOT_OF_A_LETTER.matcher(line).replaceAll("")).results().map(MatchResult::group)
            .anyMatch(MORE::contains);
        this.names = names.stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
    }

    private static double milligrams(MatchResult amount) {
        String number = amount.group(1);
        double said = Double.parseDouble(number.matches(THOUSANDS) ? number.replace(".", "") : number);
        return amount.group(2) != null ? said / 1000 : amount.group(3) != null ? said * 1000 : said;
    }

    /** The most that one amount on the line may be worth is more than so many mg of prednisolone. */
    boolean above(int mg) {
        return amounts.stream().anyMatch(amount -> names.stream()
            .anyMatch(name -> WORTH.containsKey(name) && amount * WORTH.get(name) > mg));
    }

    /** Surely no more than so many mg a day: one amount, once; or none, of the steroid the band itself is told in. */
    boolean within(int mg) {
        boolean known = !names.isEmpty() && WORTH.keySet().containsAll(names);
        boolean toldInBand =
            amounts.isEmpty() && names.stream().allMatch(name -> Double.valueOf(1).equals(WORTH.get(name)));
        return known && !multiplied && (toldInBand || amounts.size() == 1 && !above(mg));
    }
}
