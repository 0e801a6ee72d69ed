package foretress.lexicon;

import java.util.Arrays;

/**
 * How far a damaged spelling is from a right one. A slip of the pen (a letter too many, too few, another, or two swapped) counts
 * {@value #SLIP}; what copying and reading by machine confuse (l, i and 1; o and 0; s and 5; b and 8; g and 9; z and 2; rn
 * and m; cl and d; a letter doubled or its double lost) counts 1. A digit is never guessed: one that is missing, added or another
 * makes two different names.
 */
final class LookAlikes {
    static final int SLIP = 4;
    private static final int NEVER = 1_000;

    private final String written;
    private final String known;
    private final int most;

    private LookAlikes(String written, String known, int most) {
        this.written = written;
        this.known = known;
        this.most = most;
    }

    /** The distance, or {@code most + 1} as soon as it is sure to be more than {@code most}. */
    static int between(String written, String known, int most) {
        return Math.abs(written.length() - known.length()) > most ? most + 1
            : new LookAlikes(written, known, most).distance();
    }

    /** Whether at most one slip parts the two, and one look-alike besides. */
    static boolean oneSlip(String written, String known) {
        return likely(written, known) && within(Letterprint.of(written), Letterprint.of(known));
    }

    static boolean oneSlip(Letterprint written, Letterprint known) {
        return likely(written.key(), known.key()) && within(written, known);
    }

    private static boolean likely(String written, String known) {
        return Math.abs(written.length() - known.length()) <= 2
            && (written.charAt(0) == known.charAt(0)
                || written.charAt(written.length() - 1) == known.charAt(known.length() - 1));
    }

    private static boolean within(Letterprint written, Letterprint known) {
        return written.mayBeWithin(known, SLIP + 1) && between(written.key(), known.key(), SLIP + 1) <= SLIP + 1;
    }

    private int distance() {
        int[] before = new int[known.length() + 1];
        int[] last = new int[known.length() + 1];
        int[] row = new int[known.length() + 1];
        Arrays.fill(before, NEVER);
        Arrays.fill(row, NEVER);
        for (int j = 1; j <= known.length(); j++) {
            last[j] = last[j - 1] + lost(j);
        }
        int leastBefore = 0;
        for (int i = 1; i <= written.length(); i++) {
            int least = fill(row, last, before, i);
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

    /** One row; outside a band as wide as the distance allows nothing can come of it. */
    private int fill(int[] row, int[] last, int[] before, int i) {
        int from = Math.max(1, i - most);
        int to = Math.min(known.length(), i + most);
        row[from - 1] = from == 1 ? last[0] + added(i) : NEVER;
        int least = row[from - 1];
        for (int j = from; j <= to; j++) {
            int cost = last[j - 1] + another(written.charAt(i - 1), known.charAt(j - 1));
            cost = Math.min(cost, row[j - 1] + lost(j));
            cost = j == to && to == i + most ? cost : Math.min(cost, last[j] + added(i));
            row[j] = Math.min(cost, pairs(row, last, before, i, j));
            least = Math.min(least, row[j]);
        }
        return least;
    }

    private int pairs(int[] row, int[] last, int[] before, int i, int j) {
        int cost = NEVER;
        char a = written.charAt(i - 1);
        char b = known.charAt(j - 1);
        if (i > 1 && j > 1 && a == known.charAt(j - 2) && b == written.charAt(i - 2) && !digit(a) && !digit(b)) {
            cost = before[j - 2] + SLIP;
        }
        if (i > 1 && b == 'm' && a == 'n' && written.charAt(i - 2) == 'r') {
            cost = Math.min(cost, before[j - 1] + 1);
        }
        if (j > 1 && a == 'm' && b == 'n' && known.charAt(j - 2) == 'r') {
            cost = Math.min(cost, last[j - 2] + 1);
        }
        if (i > 1 && b == 'd' && shape(a) == 'l' && written.charAt(i - 2) == 'c') {
            cost = Math.min(cost, before[j - 1] + 1);
        }
        if (j > 1 && a == 'd' && b == 'l' && known.charAt(j - 2) == 'c') {
            cost = Math.min(cost, last[j - 2] + 1);
        }
        return cost;
    }

    private int added(int i) {
        char c = written.charAt(i - 1);
        boolean doubled = i > 1 && written.charAt(i - 2) == c;
        return digit(c) ? NEVER : doubled ? 1 : SLIP;
    }

    private int lost(int j) {
        char c = known.charAt(j - 1);
        boolean doubled = j > 1 && known.charAt(j - 2) == c;
        return digit(c) ? NEVER : doubled ? 1 : SLIP;
    }

    private static int another(char a, char b) {
        if (a == b) {
            return 0;
        }
        if (digit(a) && digit(b)) {
            return NEVER;
        }
        if (shape(a) == shape(b)) {
            return 1;
        }
        return digit(a) || digit(b) ? NEVER : SLIP;
    }

    static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }

    /** One letter for all that look like it. */
    static char shape(char c) {
        return switch (c) {
            case 'i', '1' -> 'l';
            case '0' -> 'o';
            case '2' -> 'z';
            case '5' -> 's';
            case '8' -> 'b';
            case '9' -> 'g';
            default -> c;
        };
    }
}
