package foretress.lexicon;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** All names of medicines by their sound, abbreviations by their letters; and what a damaged sound may be. */
final class MedicineNames {
    private static final Pattern ABBREVIATION = Pattern.compile("[A-Z0-9-]{2,8}");
    /** Names that end so are salts in German, and the medicine stands before it: Metoprololsuccinat. */
    private static final Pattern SALT_STUCK_ON =
        Pattern.compile("(.{5,}?)(hydrogensulfat|hydrochlorid|hydrobromid|dihydrochlorid"
            + "|succinat|tartrat|besilat|besylat|mesilat|maleat|fumarat|hemifumarat|citrat|carbonat|phosphat|sulfat|acetat"
            + "|propionat|dipropionat|valerat|furoat|natrium|kalium|calcium|magnesium|dihydrat|monohydrat|trihydrat|bromid|chlorid"
            + "|nitrat|embonat|decanoat|orotat|gluconat|cilexetil|medoxomil|axetil|proxetil|etexilat|mofetil|pivoxil)");
    /** And the metal before it: Natriumvalproat. */
    private static final Pattern METAL_STUCK_ON =
        Pattern.compile("(?:natrium|kalium|calcium|magnesium|lithium)(.{7,})");
    private static final int SHORTEST_JOINED = 6;
    /** Another name of another class so little farther off makes a slip doubtful. */
    private static final int MARGIN = 1;
    /** The same where the nearer one has no effect known to us: the heavier one is not lost to it. */
    private static final int WIDE_MARGIN = 3;
    private static final int ONE_MORE = 3;
    private static final int FAR_APART = 5;
    private static final int LONG_ENOUGH_FOR_ONE_MORE = 8;
    private static final Set<String> NO_EFFECT = Set.of("no-effect-known");
    private static final int LONG_ENOUGH_IN_ARABIC = 4;

    private static final String PARTING = "_";
    private static final String ACID = "_acid";

    private final Map<String, List<MedicineRow>> byKey = new LinkedHashMap<>();
    private final Map<String, List<MedicineRow>> byLetters = new HashMap<>();
    private final Map<Character, List<String>> bySound = new HashMap<>();
    private final Map<String, Set<String>> byConsonants = new HashMap<>();
    /** Words that stand second or later in a name: "fumarate". */
    private final Set<String> lastWords = new HashSet<>();
    private final Set<String> others = new HashSet<>();
    /** The same with those we know too. */
    private final Set<String> lookAlikes = new HashSet<>();

    MedicineNames(List<MedicineRow> rows, List<String> otherNames) {
        for (MedicineRow row : rows) {
            add(row.name(), row, rows);
            row.otherNames().forEach(name -> add(name, row, rows));
        }
        otherNames.forEach(name -> others.add(key(name)));
        lookAlikes.addAll(others);
        others.removeAll(byKey.keySet());
        List.copyOf(byKey.keySet()).stream().filter(key -> key.contains(PARTING) && !key.endsWith(ACID))
            .forEach(key -> byKey.putIfAbsent(key.replace(PARTING, ""), byKey.get(key)));
        byKey.keySet().forEach(this::addSound);
        others.forEach(this::addSound);
    }

    /** A name that stands in several classes has all of them under each of its spellings. */
    private void add(String name, MedicineRow row, List<MedicineRow> all) {
        List<TypedWord> words = TypedWord.of(name);
        lastWords.addAll(words.stream().skip(1).map(TypedWord::folded).toList());
        boolean letters = ABBREVIATION.matcher(name).matches();
        List<MedicineRow> known = letters ? byLetters.computeIfAbsent(letters(name), k -> new ArrayList<>())
            : byKey.computeIfAbsent(key(name), k -> new ArrayList<>());
        all.stream().filter(other -> other.name().equals(row.name()) && !known.contains(other)).forEach(known::add);
    }

    boolean endsAName(TypedWord word) {
        return lastWords.contains(word.folded());
    }

    private void addSound(String key) {
        bySound.computeIfAbsent(first(key), c -> new ArrayList<>()).add(key);
        byConsonants.computeIfAbsent(Scripts.consonants(key), c -> new LinkedHashSet<>()).add(key);
    }

    /** Names that begin with a vowel are looked for among all of these. */
    private static char first(String key) {
        return MedicineSlips.isVowel(key.charAt(0)) ? 'a' : key.charAt(0) == 'b' ? 'v' : key.charAt(0);
    }

    private static String letters(String written) {
        return LetterFolding.folded(written).replace("-", "").replace(".", "");
    }

    static String key(String name) {
        return MedicineKey.ofParts(TypedWord.of(name).stream().map(TypedWord::part).toList());
    }

    /** What these words together are the name of: none where it is none, and none for an abbreviation that may be a word. */
    List<MedicineRow> named(List<TypedWord> words) {
        if (words.size() > 1) {
            List<MedicineRow> rows = heard(MedicineKey.ofParts(words.stream().map(TypedWord::part).toList()));
            return rows.isEmpty() ? splitInTwo(words) : rows;
        }
        List<MedicineRow> spelt = spelt(words.get(0));
        List<MedicineRow> rows = spelt.isEmpty() ? heard(MedicineKey.ofParts(List.of(words.get(0).part()))) : spelt;
        return rows.isEmpty() ? withoutSalt(words.get(0)) : rows;
    }

    /** In capitals; without a vowel it can be no word, and the letters may be small. */
    private List<MedicineRow> spelt(TypedWord word) {
        String letters = letters(word.written());
        boolean noWord = letters.chars().noneMatch(c -> MedicineSlips.isVowel((char) c) || c == 'y');
        return noWord || word.inCapitals() ? byLetters.getOrDefault(letters, List.of()) : List.of();
    }

    private List<MedicineRow> heard(String key) {
        return byKey.getOrDefault(key, List.of());
    }

    private List<MedicineRow> withoutSalt(TypedWord word) {
        return Stream.of(SALT_STUCK_ON, METAL_STUCK_ON).map(stuck -> stuck.matcher(word.folded()))
            .filter(Matcher::matches)
            .map(salt -> heard(key(salt.group(1)))).filter(rows -> !rows.isEmpty()).findFirst().orElse(List.of());
    }

    /** "Hydroxy chloroquine" with nothing but a blank in it. */
    private List<MedicineRow> splitInTwo(List<TypedWord> words) {
        return together(words).map(this::heard).orElse(List.of());
    }

    private static Optional<String> together(List<TypedWord> words) {
        boolean one = words.stream().skip(1).allMatch(TypedWord::joined)
            && words.stream().noneMatch(TypedWord::isNumber);
        String all = String.join("", words.stream().map(TypedWord::folded).toList());
        return one && all.length() >= SHORTEST_JOINED ? Optional.of(key(all)) : Optional.empty();
    }

    /**
     * What damaged words may be.
     *
     * @param rows of every name as near; none where these stand in different classes, or one is a medicine we say nothing about
     */
    record Slip(int distance, List<MedicineRow> rows) {
        static final Slip NONE = new Slip(Integer.MAX_VALUE, List.of());
    }

    Slip slip(List<TypedWord> words) {
        List<MedicineKey.Part> parts = words.stream().map(TypedWord::part).toList();
        boolean acid = words.size() == 2 && parts.stream().filter(MedicineKey.Part::isAcid).count() == 1;
        Optional<String> key = words.size() == 1 || acid ? Optional.of(MedicineKey.ofParts(parts)) : together(words);
        Slip near = key.map(this::slip).orElse(Slip.NONE);
        boolean one = words.size() == 1 && LetterFolding.isAscii(words.get(0).folded());
        Slip unevened = near.rows().isEmpty() && one ? unevened(words.get(0)) : near;
        Slip heard = near == Slip.NONE && unevened.rows().isEmpty() && one ? farther(key.get()) : unevened;
        boolean arabic = words.stream().allMatch(word -> Scripts.isArabic(word.folded()));
        return heard.rows().isEmpty() && arabic && key.isPresent() ? inArabic(key.get()) : heard;
    }

    private Slip unevened(TypedWord word) {
        return MedicineKey.unevened(Scripts.latin(word.folded())).stream().map(this::slip)
            .filter(slip -> !slip.rows().isEmpty()).findFirst().orElse(Slip.NONE);
    }

    private Slip slip(String key) {
        int most = MedicineSlips.allowed(key.length());
        if (most == 0 || others.contains(key)) {
            return Slip.NONE;
        }
        Map<String, Integer> near = new LinkedHashMap<>();
        int least = most + 1;
        for (String known : bySound.getOrDefault(first(key), List.of())) {
            int distance = MedicineSlips.between(key, known, most + WIDE_MARGIN);
            near.put(known, distance);
            boolean allowed = distance <= MedicineSlips.allowed(Math.min(key.length(), known.length()));
            least = allowed ? Math.min(least, distance) : least;
        }
        return least > most ? Slip.NONE : new Slip(least, sure(near, least));
    }

    /** One slip more is forgiven where no other medicine we know the name of, of whatever kind, is anywhere near. */
    private Slip farther(String key) {
        if (key.length() < LONG_ENOUGH_FOR_ONE_MORE || others.contains(key)) {
            return Slip.NONE;
        }
        int farthest = MedicineSlips.allowed(key.length()) + ONE_MORE;
        Map<String, Integer> near = new LinkedHashMap<>();
        bySound.getOrDefault(first(key), List.of()).stream()
            .filter(known -> known.length() >= LONG_ENOUGH_FOR_ONE_MORE)
            .forEach(known -> near.put(known, MedicineSlips.between(key, known, farthest + FAR_APART)));
        int least = near.values().stream().mapToInt(d -> d).min().orElse(farthest + 1);
        List<MedicineRow> rows = least > farthest ? List.of() : either(within(near, least + FAR_APART));
        boolean one = rows.stream().map(MedicineRow::name).distinct().count() == 1;
        return one ? new Slip(least, rows) : Slip.NONE;
    }

    private List<MedicineRow> sure(Map<String, Integer> near, int least) {
        List<MedicineRow> rows = either(within(near, least + MARGIN));
        List<String> wide = within(near, least + WIDE_MARGIN);
        boolean heavier = NO_EFFECT.equals(kinds(rows)) && (either(wide).isEmpty() || oneLooksLikeAnother(wide));
        return heavier ? List.of() : rows;
    }

    private boolean oneLooksLikeAnother(List<String> near) {
        return near.stream().anyMatch(lookAlikes::contains)
            && near.stream().flatMap(key -> heard(key).stream()).map(MedicineRow::name).distinct().count() > 1;
    }

    private static List<String> within(Map<String, Integer> near, int most) {
        return near.entrySet().stream().filter(e -> e.getValue() <= most).map(Map.Entry::getKey).toList();
    }

    private Slip inArabic(String key) {
        String consonants = Scripts.consonants(key);
        Set<String> keys = consonants.length() < LONG_ENOUGH_IN_ARABIC ? Set.of()
            : byConsonants.getOrDefault(consonants, Set.of());
        return keys.isEmpty() ? Slip.NONE : new Slip(0, either(keys));
    }

    /** As near to two names of different classes, it could be either: then it is neither. */
    private List<MedicineRow> either(Collection<String> keys) {
        Set<MedicineRow> all = new LinkedHashSet<>();
        Set<Set<String>> kinds = new HashSet<>();
        for (String key : keys) {
            all.addAll(heard(key));
            kinds.add(kinds(heard(key)));
        }
        return kinds.size() == 1 ? List.copyOf(all) : List.of();
    }

    private static Set<String> kinds(List<MedicineRow> rows) {
        Set<String> kinds = new HashSet<>();
        rows.forEach(row -> kinds.add(row.kind()));
        return kinds;
    }
}
