package foretress.lexicon;

import java.util.Arrays;

/**
 * How far a typed sound of a medicine's name is from a right one. A vowel for another counts {@value #VOWEL}, as do b for v and
 * m for n and k for s (a c), which are heard alike; a vowel, an l or an r too many or too few {@value #LOST_VOWEL}; every other slip {@value #SLIP},
 * two letters swapped among them. Weights by how such slips come about (from memory).
 */
final class MedicineSlips {
    static final int SLIP = 4;
    static final int LOST_VOWEL = 3;
    static final int VOWEL = 2;
    private static final int NEVER = 1_000;
    /** From so many letters on, slips may cost so much. */
    private static final int[][] ALLOWED = { { 6, 4 }, { 8, 5 }, { 9, 6 }, { 10, 7 }, { 11, 8 }, { 15, 10 } };

    private MedicineSlips() {}

    /** What slips in a name of so many letters may cost and still be forgiven; none in a short one. */
    static int allowed(int letters) {
        int allowed = 0;
        for (int[] from : ALLOWED) {
            allowed = letters >= from[0] ? from[1] : allowed;
        }
        return allowed;
    }

    /** The distance, or {@code most + 1} as soon as it is sure to be more than {@code most}. */
    static int between(String typed, String known, int most) {
        if (Math.abs(typed.length() - known.length()) * LOST_VOWEL > most) {
            return most + 1;
        }
        int[] before = new int[known.length() + 1];
        int[] last = new int[known.length() + 1];
        int[] row = new int[known.length() + 1];
        Arrays.fill(before, NEVER);
        for (int j = 1; j <= known.length(); j++) {
            last[j] = last[j - 1] + lost(known.charAt(j - 1));
        }
        int leastBefore = 0;
        for (int i = 1; i <= typed.length(); i++) {
            int least = fill(row, last, before, typed, known, i);
            if (Math.min(least, leastBefore) > most) {
                return most + 1;
            }
            leastBefore = least;
            int[] reused = before;
            before = last;
            last = row;
            row = reused;
        }
        return Math.min(last[known.length()], most + 1);
    }

    private static int fill(int[] row, int[] last, int[] before, String typed, String known, int i) {
        char a = typed.charAt(i - 1);
        row[0] = last[0] + lost(a);
        int least = row[0];
        for (int j = 1; j <= known.length(); j++) {
            char b = known.charAt(j - 1);
            int cost = Math.min(last[j - 1] + another(a, b), Math.min(last[j] + lost(a), row[j - 1] + lost(b)));
            boolean swapped = i > 1 && j > 1 && a == known.charAt(j - 2) && b == typed.charAt(i - 2);
            row[j] = swapped ? Math.min(cost, before[j - 2] + SLIP) : cost;
            least = Math.min(least, row[j]);
        }
        return least;
    }

    private static int lost(char c) {
        return isVowel(c) || c == 'r' || c == 'l' ? LOST_VOWEL : Character.isDigit(c) || c == '_' ? NEVER : SLIP;
    }

    private static int another(char a, char b) {
        if (a == b) {
            return 0;
        }
        if (Character.isDigit(a) || Character.isDigit(b) || a == '_' || b == '_') {
            return NEVER;
        }
        if (onKeys(a, b) || onKeys(b, a)) {
            return SLIP;
        }
        boolean alike = isVowel(a) && isVowel(b) || heardAlike(a, b) || heardAlike(b, a);
        return alike ? VOWEL : isVowel(a) == isVowel(b) ? SLIP : LOST_VOWEL + LOST_VOWEL;
    }

    /** A vowel and a consonant side by side on the keys of a telephone; v is how a w sounds. */
    private static boolean onKeys(char vowel, char consonant) {
        return switch (vowel) {
            case 'a' -> "sqv".indexOf(consonant) >= 0;
            case 'e' -> "sdrv".indexOf(consonant) >= 0;
            case 'o' -> "lpk".indexOf(consonant) >= 0;
            case 'i', 'u' -> consonant == 'k';
            default -> false;
        };
    }

    static boolean isVowel(char c) {
        return "aeiou".indexOf(c) >= 0;
    }

    private static boolean heardAlike(char a, char b) {
        return a == 'b' && b == 'v' || a == 'm' && b == 'n' || a == 'k' && b == 's';
    }
}
