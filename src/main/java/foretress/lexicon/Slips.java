package foretress.lexicon;

/** Counts slips between two spellings: a letter too many, too few, another, or two swapped (optimal string alignment). */
final class Slips {
    private Slips() {}

    /** The number of slips, or {@code most + 1} as soon as it is sure to be more than {@code most}. */
    static int between(String a, String b, int most) {
        if (Math.abs(a.length() - b.length()) > most) {
            return most + 1;
        }
        int[][] rows = new int[3][b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            rows[0][j] = j;
        }
        int[] before = rows[2];
        int[] last = rows[0];
        int[] row = rows[1];
        int leastBefore = 0;
        for (int i = 1; i <= a.length(); i++) {
            int least = fill(row, last, before, a, b, i);
            if (Math.min(least, leastBefore) > most) {
                return most + 1;
            }
            leastBefore = least;
            int[] reused = before;
            before = last;
            last = row;
            row = reused;
        }
        return Math.min(last[b.length()], most + 1);
    }

    private static int fill(int[] row, int[] last, int[] before, String a, String b, int i) {
        row[0] = i;
        int least = i;
        for (int j = 1; j <= b.length(); j++) {
            boolean same = a.charAt(i - 1) == b.charAt(j - 1);
            int slips = Math.min(last[j - 1] + (same ? 0 : 1), 1 + Math.min(last[j], row[j - 1]));
            boolean swapped =
                i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
            row[j] = swapped ? Math.min(slips, before[j - 2] + 1) : slips;
            least = Math.min(least, row[j]);
        }
        return least;
    }
}
