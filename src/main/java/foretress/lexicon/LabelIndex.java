package foretress.lexicon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All spellings of all substances, by their folded letters and digits alone, and by likeness. */
final class LabelIndex {
    /** Slips forgiven, by the letters of the shorter of the two spellings: 1 from the first of these, 2 from the next, and so on. */
    private static final int[] SLIPS_FROM = { 5, 10, 16, 24 };
    /** With so few letters left one slip is forgiven only where the name stands alone and its first letter is right. */
    private static final int SHORT = 9;
    private static final int SHORTEST = 4;
    /** A name in another tongue has no more words, its numbers among them. */
    private static final int MOST_WORDS = 9;
    private static final int SHORTEST_DAMAGED = 3;
    private static final int LONG_ENOUGH_FOR_A_FIRST_SLIP = 6;
    /** Another substance as near as this, in look-alikes, and it may be either. */
    private static final int MARGIN = 3;

    private final Map<String, Substance> byKey = new HashMap<>();
    private final Map<String, Substance> byCas = new HashMap<>();
    /** By the key that is the same in all tongues; none where it would be two substances. */
    private final Map<String, Substance> byNomenclature = new HashMap<>();
    /** Spellings that come of a broken line and are no measure for damaged ones. */
    private final Set<String> exactOnly = new java.util.HashSet<>();
    /** Spellings whose first letter is a word of its own, a place in the molecule: without it they are another name. */
    private final Set<String> placeApart = new java.util.HashSet<>();
    private final Set<String> ambiguous = new java.util.HashSet<>();
    private final List<SameLength> byLength = new ArrayList<>();
    /** By spelling, of those that damaged words were held against: made when first asked for. */
    private final Map<String, List<Letterprint>> neighbours = new ConcurrentHashMap<>();
    private final DamagedNumbers damagedNumbers = new DamagedNumbers(byCas.keySet());
    private final DamagedNomenclature damagedNomenclature;
    private final ColourIndex colourIndex = new ColourIndex(byKey);
    /** Plants by their everyday names, whatever part of them is meant. */
    private final Map<String, Substance> byPlant = new HashMap<>();
    private final List<Letterprint> plants;
    private final KeyTree forwards;
    private final KeyTree backwards;
    private final Runnable compared;
    private int longestKey;
    private int mostTokens;

    /**
     * @param placeFirst begins with a place on the ring (p-, m-, o-)
     * @param onlyAlone counts only between separators or known names
     */
    private record Spelling(String key, boolean placeFirst, boolean onlyAlone, boolean base, Substance substance) {}

    /** All spellings of one length, with what is held against a damaged one before anything else, side by side. */
    private static final class SameLength {
        private final List<Spelling> spellings = new ArrayList<>();
        private long[] marks = {};
        private int[] digits = {};

        void add(Spelling spelling) {
            Letterprint print = Letterprint.of(spelling.key);
            int size = spellings.size();
            marks = Arrays.copyOf(marks, size + 1);
            digits = Arrays.copyOf(digits, size + 1);
            marks[size] = print.marks();
            digits[size] = print.digits();
            spellings.add(spelling);
        }
    }

    /**
     * What a damaged spelling may be.
     *
     * @param substance the one it is, if it can be no other
     * @param distance in look-alikes, see {@link LookAlikes}
     * @param near all it might be; {@code substance} alone when that is known
     */
    record Likeness(Optional<Substance> substance, int distance, List<Substance> near) {
        static final Likeness NONE = new Likeness(Optional.empty(), 0, List.of());
    }

    /** @param compared run at each comparison of two spellings, for counting the work */
    LabelIndex(List<Substance> substances, Runnable compared) {
        this.compared = compared;
        substances.forEach(s -> s.cas().ifPresent(cas -> byCas.putIfAbsent(cas.number(), s)));
        substances.forEach(s -> add(s.name(), s));
        substances.forEach(s -> s.otherNames().forEach(name -> add(name, s)));
        ambiguous.forEach(byNomenclature::remove);
        damagedNomenclature = new DamagedNomenclature(byNomenclature);
        substances.forEach(s -> spellings(s).forEach(exactOnly::remove));
        byKey.forEach((key, substance) -> {
            if (!exactOnly.contains(key)) {
                addSpelling(key, substance);
            }
            if (key.contains("sulf")) {
                addSpelling(key.replace("sulf", "sulph"), substance);
            }
        });
        plants = byPlant.keySet().stream().map(Letterprint::of).toList();
        forwards = KeyTree.of(byKey.keySet());
        backwards = KeyTree.backwards(byKey.keySet());
    }

    /** A spelling already taken by another substance goes to the one of the heavier risk. */
    private void add(String name, Substance substance) {
        List<String> tokens = words(name);
        if (tokens.isEmpty()) {
            return;
        }
        addNomenclature(Nomenclature.key(tokens), substance);
        if (substance.kind().equals("plant-dye") || PlantParts.namesAPart(words(substance.name()))) {
            byPlant.merge(PlantParts.learnt(tokens), substance, LabelIndex::graver);
        }
        List<String> bare = withoutNumberSign(tokens);
        if (tokens.get(0).length() == 1) {
            placeApart.addAll(List.of(String.join("", bare), String.join("", tokens)));
        }
        put(String.join("", bare), tokens.size(), substance);
        put(String.join("", tokens), tokens.size(), substance);
        put(String.join("", tokens.stream().map(LabelIndex::inFull).toList()), tokens.size(), substance);
        exactOnly.add(String.join("", tokens.stream().map(LabelIndex::metaApart).toList()));
        put(String.join("", tokens.stream().map(LabelIndex::metaApart).toList()), tokens.size(), substance);
        if (bare.size() < tokens.size()) {
            put(String.join("", tokens.stream().map(t -> isNumberSign(t) ? "nr" : t).toList()), tokens.size(),
                substance);
        }
    }

    private static List<String> words(String name) {
        return LabelToken.of(name).stream().map(LabelToken::folded).toList();
    }

    private static List<String> spellings(Substance substance) {
        return Stream.concat(Stream.of(substance.name()), substance.otherNames().stream())
            .map(name -> LabelToken.of(name).stream().map(LabelToken::folded).collect(Collectors.joining())).toList();
    }

    private void addNomenclature(String key, Substance substance) {
        Substance before = key.isEmpty() ? substance : byNomenclature.putIfAbsent(key, substance);
        if (before != null && !before.name().equals(substance.name())) {
            ambiguous.add(key);
        }
    }

    private static Substance graver(Substance one, Substance other) {
        return one.risk().compareTo(other.risk()) >= 0 ? one : other;
    }

    /** The substance these words name in one of the tongues of {@link Nomenclature}, or as a part of a plant. */
    Optional<Substance> inAnyTongue(List<String> words) {
        return Optional.ofNullable(byNomenclature.get(Nomenclature.key(words)))
            .or(() -> Optional.ofNullable(byPlant.get(PlantParts.plant(words))));
    }

    /** The same with a slip in one of the words. */
    Optional<Substance> inAnyTongueDamaged(List<String> words, List<String> mended) {
        return damagedNomenclature.read(words, mended).or(() -> damagedPlant(words));
    }

    private Optional<Substance> damagedPlant(List<String> words) {
        String plant = PlantParts.plant(words.stream().map(PlantParts::mended).toList());
        if (plant.length() < SLIPS_FROM[0]) {
            return Optional.empty();
        }
        Letterprint print = Letterprint.of(plant);
        Set<Substance> near = plants.stream()
            .filter(known -> known.key().equals(plant)
                || known.key().length() >= SLIPS_FROM[0] && LookAlikes.oneSlip(print, known))
            .map(known -> byPlant.get(known.key())).collect(Collectors.toSet());
        return near.size() == 1 ? near.stream().findFirst() : Optional.empty();
    }

    Set<String> ambiguousKeys() {
        return ambiguous;
    }

    /** "No. 3" and "3" are the same number of a dye. */
    private static List<String> withoutNumberSign(List<String> tokens) {
        List<String> kept = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            boolean sign =
                isNumberSign(tokens.get(i)) && i + 1 < tokens.size() && LabelToken.isNumber(tokens.get(i + 1));
            if (!sign) {
                kept.add(tokens.get(i));
            }
        }
        return kept;
    }

    private static boolean isNumberSign(String token) {
        return token.equals("no") || token.equals("nr") || token.equals("num");
    }

    private static String inFull(String token) {
        return switch (token) {
            case "p" -> "para";
            case "m" -> "meta";
            case "o" -> "ortho";
            case "a" -> "alpha";
            default -> token;
        };
    }

    /** "Meta" broken off at the end of a line is read as a place on the ring. */
    private static String metaApart(String token) {
        return token.startsWith("meta") && token.length() > "metal".length() ? "m" + token.substring(4) : token;
    }

    private void put(String key, int tokens, Substance substance) {
        Substance before = byKey.get(key);
        if (before == null
            || before.risk().compareTo(substance.risk()) < 0 && !before.name().equals(substance.name())) {
            byKey.put(key, substance);
        }
        longestKey = Math.max(longestKey, key.length());
        mostTokens = Math.max(mostTokens, tokens + 4);
    }

    private void addSpelling(String key, Substance substance) {
        boolean placeFirst = key.length() > 1 && "pmo".indexOf(key.charAt(0)) >= 0
            && substance.name().toLowerCase(java.util.Locale.ROOT).startsWith(key.charAt(0) + "-");
        while (byLength.size() <= key.length()) {
            byLength.add(new SameLength());
        }
        byLength.get(key.length()).add(
            new Spelling(key, placeFirst, LabelWords.countsOnlyAlone(key), substance.kind().equals("base"), substance));
    }

    int longestKey() {
        return longestKey;
    }

    int mostTokens() {
        return mostTokens;
    }

    Optional<Substance> named(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    /** One past the last token of the longest name that begins at this one; {@code at} where none does. */
    int endOfName(List<LabelToken> tokens, int at) {
        var key = new StringBuilder();
        int best = at;
        for (int end = at; end < tokens.size() && end < at + mostTokens && key.length() <= longestKey; end++) {
            if (end > at && tokens.get(end).before().compareTo(LabelToken.Gap.BREAK) > 0) {
                break;
            }
            key.append(tokens.get(end).folded());
            best = named(key.toString()).isPresent() ? end + 1 : best;
        }
        return Math.max(best, endInAnyTongue(tokens, at, best));
    }

    private int endInAnyTongue(List<LabelToken> tokens, int at, int known) {
        int last = at + 1;
        while (last < tokens.size() && last < at + MOST_WORDS && tokens.get(last).before() == LabelToken.Gap.INSIDE) {
            last++;
        }
        for (int end = last; end > known; end--) {
            if (inAnyTongue(tokens.subList(at, end).stream().map(LabelToken::folded).toList()).isPresent()) {
                return end;
            }
        }
        return known;
    }

    /** All names, to be walked through from where one may begin. */
    KeyTree forwards() {
        return forwards;
    }

    /** All names, to be walked through from where one may end, towards the beginning. */
    KeyTree backwards() {
        return backwards;
    }

    /** All whose number a damaged one may be. */
    List<Substance> numberedLike(String written) {
        return damagedNumbers.all(written).stream().map(byCas::get).toList();
    }

    Optional<Substance> numbered(String cas) {
        return Optional.ofNullable(byCas.get(cas));
    }

    /**
     * The substance this is a damaged spelling of, if it can be no other: all digits alike, no more slips than its length allows,
     * no other substance about as near, and no neighbour of it in chemistry nearer.
     *
     * @param alone whether it stands between separators; short names are looked for only there
     */
    Likeness alike(String key, boolean alone) {
        Set<Substance> numbers = colourIndex.near(key);
        if (!numbers.isEmpty()) {
            return new Likeness(numbers.stream().filter(s -> numbers.size() == 1).findFirst(), 1, List.copyOf(numbers));
        }
        int most =
            key.length() < (alone ? SHORTEST_DAMAGED : SHORT) ? 0 : Math.max(LookAlikes.SLIP, most(key.length()));
        if (most == 0 || key.length() > longestKey + SLIPS_FROM.length) {
            return Likeness.NONE;
        }
        Map<String, Near> nearest = new LinkedHashMap<>();
        int slips = most / LookAlikes.SLIP + 1;
        Letterprint print = Letterprint.of(key);
        for (int length = Math.max(SHORTEST, key.length() - slips);
            length <= key.length() + slips && length < byLength.size(); length++) {
            compare(key, print, alone, byLength.get(length), most(Math.min(key.length(), length)), nearest);
        }
        return nearest.values().stream().noneMatch(Near::likely) ? Likeness.NONE
            : judged(key, nearest.values().stream().sorted(Comparator.comparingInt(Near::distance)).toList());
    }

    /** Most spellings are told apart by their letterprints alone. */
    private void compare(String key, Letterprint print, boolean alone, SameLength known, int most,
        Map<String, Near> nearest) {
        int atMost = Letterprint.marksChangedBy(Math.max(most, LookAlikes.SLIP) / LookAlikes.SLIP);
        long marks = print.marks();
        int digits = print.digits();
        for (int i = 0; i < known.marks.length; i++) {
            compared.run();
            if (known.digits[i] == digits && Long.bitCount(known.marks[i] ^ marks) <= atMost) {
                compare(key, alone, known.spellings.get(i), nearest);
            }
        }
    }

    private void compare(String key, boolean alone, Spelling known, Map<String, Near> nearest) {
        int letters = Math.min(key.length(), known.key.length());
        int most = most(letters, known);
        boolean little = letters < SHORT || known.onlyAlone;
        if (most == 0 || little && !alone || saidFree(key, known.key)) {
            return;
        }
        int distance = LookAlikes.between(key, known.key, most);
        if (distance <= most) {
            nearest.merge(known.substance.name(),
                new Near(known, distance,
                    !little || key.charAt(0) == known.key.charAt(0) || startsWithASlip(key, known)),
                Near::nearer);
        }
    }

    /** "arfum", "Iinalool", "ooumarin": the first letter may be the slip, if nothing else is. */
    private boolean startsWithASlip(String key, Spelling known) {
        if (placeApart.contains(known.key)) {
            return false;
        }
        int length = known.key.length();
        boolean lost = key.equals(known.key.substring(1)) || key.substring(1).equals(known.key);
        boolean another = key.length() == length && key.substring(2).equals(known.key.substring(2));
        boolean alike = LookAlikes.shape(key.charAt(0)) == LookAlikes.shape(known.key.charAt(0));
        int enough = known.base ? LONG_ENOUGH_FOR_A_FIRST_SLIP : LONG_ENOUGH_FOR_A_FIRST_SLIP + 1;
        boolean swapped = another && key.charAt(0) == known.key.charAt(1) && key.charAt(1) == known.key.charAt(0);
        return alike || length >= LONG_ENOUGH_FOR_A_FIRST_SLIP && (lost || swapped) || length >= enough && another;
    }

    /** "Parabenfree" is no misspelt paraben. */
    private static boolean saidFree(String key, String known) {
        return LabelWords.FREE_DAMAGED.stream().anyMatch(free -> key.endsWith(free) && !known.endsWith(free));
    }

    /** @param likely not a short name with another first letter: that one only makes others doubtful */
    private record Near(Spelling spelling, int distance, boolean likely) {
        Near nearer(Near other) {
            return other.distance < distance ? other : this;
        }
    }

    /** Four letters are enough for a harmless base: a slip in it is put before the stylist all the same. */
    private static int most(int letters, Spelling known) {
        boolean base = known.base && letters < SLIPS_FROM[0] && letters >= SHORTEST_DAMAGED;
        return base ? LookAlikes.SLIP : most(letters);
    }

    private static int most(int letters) {
        int slips = 0;
        while (slips < SLIPS_FROM.length && letters >= SLIPS_FROM[slips]) {
            slips++;
        }
        return letters < SHORTEST ? 0 : slips * LookAlikes.SLIP + (letters < SHORT ? 1 : 2);
    }

    private Likeness judged(String key, List<Near> all) {
        List<String> names = all.stream().map(n -> n.spelling.substance.name()).toList();
        List<Near> nearest = all.stream()
            .filter(n -> names.size() == 1 || !Groups.isGroupOf(n.spelling.substance.name(), names)).toList();
        if (nearest.stream().noneMatch(Near::likely)) {
            return Likeness.NONE;
        }
        Near best = nearest.stream().filter(Near::likely).findFirst().orElseThrow();
        List<Substance> near =
            nearest.stream().filter(n -> n.distance < best.distance + MARGIN).map(n -> n.spelling.substance).toList();
        boolean another = near.size() > 1 || aNeighbourIsNearer(key, best);
        return new Likeness(another ? Optional.empty() : Optional.of(best.spelling.substance), best.distance, near);
    }

    private boolean aNeighbourIsNearer(String key, Near best) {
        Letterprint print = Letterprint.of(key);
        int nearer = best.distance - 1;
        for (Letterprint other : neighbours.computeIfAbsent(best.spelling.key, k -> neighbours(best.spelling))) {
            if (print.mayBeWithin(other, nearer) && LookAlikes.between(key, other.key(), nearer) <= nearer) {
                return true;
            }
        }
        return false;
    }

    private static List<Letterprint> neighbours(Spelling spelling) {
        return Neighbours.of(spelling.key, spelling.placeFirst).stream().map(Letterprint::of).toList();
    }
}
