package foretress.knowledge;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the known word a misspelt one was probably meant to be. */
final class Nearest {
    private Nearest() {}

    /** A known word so few letters away that a slip is likely: one in three, at least one. */
    static Optional<String> to(String word, Collection<String> known) {
        int slips = Math.max(1, word.length() / 3);
        return known.stream()
            .filter(k -> !k.equals(word) && distance(word, k) <= slips)
            .min(Comparator.<String>comparingInt(k -> distance(word, k)).thenComparing(Comparator.naturalOrder()));
    }

    /** "; did you mean 'x'?" or nothing. */
    static String hint(String word, Collection<String> known) {
        return to(word, known).map("; did you mean '%s'?"::formatted).orElse("");
    }

    /** Letters to insert, drop or replace to get from one word to the other (Levenshtein's distance). */
    static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
