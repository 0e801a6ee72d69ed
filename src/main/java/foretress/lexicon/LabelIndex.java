package foretress.lexicon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All spellings of all substances, by their folded letters and digits alone, and by likeness. */
final class LabelIndex {
    /** Slips forgiven, by the letters of the shorter of the two spellings: 1 from the first of these, 2 from the next, and so on. */
    private static final int[] SLIPS_FROM = {5, 12, 18, 26};
    /** With so few letters left one slip is forgiven only where the name stands alone and its first letter is right. */
    private static final int SHORT = 9;
    private static final int SHORTEST = 4;
    /** Another substance as near as this, in look-alikes, and it may be either. */
    private static final int MARGIN = 3;

    private final Map<String, Substance> byKey = new HashMap<>();
    private final Map<String, Substance> byCas = new HashMap<>();
    private final Map<Integer, List<Spelling>> byLength = new HashMap<>();
    private final Runnable compared;
    private int longestKey;
    private int mostTokens;

    private record Spelling(String key, int shapes, boolean placeFirst, Substance substance) {}

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
        byKey.forEach(this::addSpelling);
    }

    /** A spelling already taken by another substance goes to the one of the heavier risk. */
    private void add(String name, Substance substance) {
        List<String> tokens = LabelToken.of(name).stream().map(LabelToken::folded).toList();
        if (tokens.isEmpty()) {
            return;
        }
        List<String> bare = withoutNumberSign(tokens);
        put(String.join("", bare), tokens.size(), substance);
        put(String.join("", tokens), tokens.size(), substance);
        put(String.join("", tokens.stream().map(LabelIndex::inFull).toList()), tokens.size(), substance);
        if (bare.size() < tokens.size()) {
            put(String.join("", tokens.stream().map(t -> isNumberSign(t) ? "nr" : t).toList()), tokens.size(), substance);
        }
    }

    /** "No. 3" and "3" are the same number of a dye. */
    private static List<String> withoutNumberSign(List<String> tokens) {
        List<String> kept = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            boolean sign = isNumberSign(tokens.get(i)) && i + 1 < tokens.size() && LabelToken.isNumber(tokens.get(i + 1));
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
            default -> token;
        };
    }

    private void put(String key, int tokens, Substance substance) {
        Substance before = byKey.get(key);
        if (before == null || before.risk().compareTo(substance.risk()) < 0 && !before.name().equals(substance.name())) {
            byKey.put(key, substance);
        }
        longestKey = Math.max(longestKey, key.length());
        mostTokens = Math.max(mostTokens, tokens + 4);
    }

    private void addSpelling(String key, Substance substance) {
        boolean placeFirst = key.length() > 1 && "pmo".indexOf(key.charAt(0)) >= 0
            && substance.name().toLowerCase(java.util.Locale.ROOT).startsWith(key.charAt(0) + "-");
        byLength.computeIfAbsent(key.length(), l -> new ArrayList<>()).add(new Spelling(key, LookAlikes.shapes(key), placeFirst, substance));
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

    Optional<Substance> numbered(String cas) {
        return Optional.ofNullable(byCas.get(cas));
    }

    /**
     * The substance this is a damaged spelling of, if it can be no other: all digits alike, no more slips than its length allows,
     * and no other substance, and no neighbour of it in chemistry, about as near.
     *
     * @param alone whether it stands between separators; short names are looked for only there
     */
    Likeness alike(String key, boolean alone) {
        int most = most(key.length());
        if (most == 0 || key.length() > longestKey + SLIPS_FROM.length) {
            return Likeness.NONE;
        }
        Map<String, Near> nearest = new LinkedHashMap<>();
        int slips = most / LookAlikes.SLIP + 1;
        int shapes = LookAlikes.shapes(key);
        for (int length = key.length() - slips; length <= key.length() + slips; length++) {
            for (Spelling known : byLength.getOrDefault(length, List.of())) {
                compare(key, shapes, alone, known).ifPresent(near -> nearest.merge(known.substance().name(), near, Near::nearer));
            }
        }
        return nearest.isEmpty() ? Likeness.NONE : judged(key, nearest.values().stream().sorted(Comparator.comparingInt(Near::distance)).toList());
    }

    private record Near(Spelling spelling, int distance) {
        Near nearer(Near other) {
            return other.distance < distance ? other : this;
        }
    }

    private Optional<Near> compare(String key, int shapes, boolean alone, Spelling known) {
        compared.run();
        int shorter = Math.min(key.length(), known.key.length());
        int most = most(shorter);
        if (Integer.bitCount(known.shapes ^ shapes) > 2 * (most / LookAlikes.SLIP)) {
            return Optional.empty();
        }
        boolean little = shorter < SHORT || LabelWords.countsOnlyAlone(known.key);
        if (most == 0 || little && !(alone && key.charAt(0) == known.key.charAt(0))) {
            return Optional.empty();
        }
        int distance = LookAlikes.between(key, known.key, most);
        return distance > most ? Optional.empty() : Optional.of(new Near(known, distance));
    }

    private static int most(int letters) {
        int slips = 0;
        while (slips < SLIPS_FROM.length && letters >= SLIPS_FROM[slips]) {
            slips++;
        }
        return letters < SHORTEST ? 0 : slips * LookAlikes.SLIP + (letters < SHORT ? 1 : 2);
    }

    private static Likeness judged(String key, List<Near> nearest) {
        Near best = nearest.get(0);
        List<Substance> near = nearest.stream().filter(n -> n.distance < best.distance + MARGIN).map(n -> n.spelling.substance).toList();
        boolean another = near.size() > 1 || Neighbours.of(best.spelling.key, best.spelling.placeFirst).stream()
            .anyMatch(other -> LookAlikes.between(key, other, best.distance + MARGIN) < best.distance + MARGIN);
        return new Likeness(another ? Optional.empty() : Optional.of(best.spelling.substance), best.distance, near);
    }
}
