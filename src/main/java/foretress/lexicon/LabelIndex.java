package foretress.lexicon;

import foretress.lexicon.Substance.Risk;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All spellings of all substances, by their folded letters and digits alone, and by likeness. */
final class LabelIndex {
    private static final int ONE_SLIP_FROM = 8;
    private static final int TWO_SLIPS_FROM = 12;

    private final Map<String, Substance> byKey = new HashMap<>();
    private final Map<String, Substance> byCas = new HashMap<>();
    private final Map<Character, Map<Integer, List<String>>> alike = new HashMap<>();
    private int longestKey;
    private int mostTokens;

    LabelIndex(List<Substance> substances) {
        substances.forEach(s -> s.cas().ifPresent(cas -> byCas.putIfAbsent(cas.number(), s)));
        substances.forEach(s -> add(s.name(), s));
        substances.forEach(s -> s.otherNames().forEach(name -> add(name, s)));
    }

    /** A spelling already taken by another substance goes to the one of the heavier risk. */
    private void add(String name, Substance substance) {
        List<String> tokens = LabelToken.of(name).stream().map(LabelToken::folded).toList();
        if (tokens.isEmpty()) {
            return;
        }
        put(String.join("", withoutNumberSign(tokens)), tokens.size(), substance);
        put(String.join("", tokens.stream().map(LabelIndex::inFull).toList()), tokens.size(), substance);
    }

    /** "No. 3" and "3" are the same number of a dye. */
    static List<String> withoutNumberSign(List<String> tokens) {
        List<String> kept = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            boolean sign = isNumberSign(tokens.get(i)) && i + 1 < tokens.size() && LabelToken.isNumber(tokens.get(i + 1));
            if (!sign) {
                kept.add(tokens.get(i));
            }
        }
        return kept;
    }

    static boolean isNumberSign(String token) {
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
        if (before == null) {
            alike.computeIfAbsent(key.charAt(0), c -> new HashMap<>()).computeIfAbsent(key.length(), l -> new ArrayList<>()).add(key);
        }
        longestKey = Math.max(longestKey, key.length());
        mostTokens = Math.max(mostTokens, tokens + 2);
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
     * The substance this may be a misspelling of: first letter and all digits alike, one slip from {@value #ONE_SLIP_FROM}
     * letters on, two from {@value #TWO_SLIPS_FROM}; of several as near as each other the gravest. A harmless one is never
     * guessed: the word stays unknown.
     */
    Optional<Substance> alike(String key) {
        int most = key.length() >= TWO_SLIPS_FROM ? 2 : key.length() >= ONE_SLIP_FROM ? 1 : 0;
        if (most == 0 || key.length() > longestKey + most) {
            return Optional.empty();
        }
        Optional<Substance> best = Optional.empty();
        int least = most + 1;
        for (int length = key.length() - most; length <= key.length() + most; length++) {
            for (String known : alike.getOrDefault(key.charAt(0), Map.of()).getOrDefault(length, List.of())) {
                int slips = digits(known).equals(digits(key)) ? Slips.between(key, known, most) : most + 1;
                Substance other = byKey.get(known);
                if (slips < least || slips == least && slips <= most && best.get().risk().compareTo(other.risk()) < 0) {
                    least = slips;
                    best = Optional.of(other);
                }
            }
        }
        return best.filter(s -> s.risk() != Risk.NONE);
    }

    private static String digits(String key) {
        StringBuilder digits = new StringBuilder();
        key.chars().filter(c -> c >= '0' && c <= '9').forEach(c -> digits.append((char) c));
        return digits.toString();
    }
}
