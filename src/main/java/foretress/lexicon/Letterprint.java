package foretress.lexicon;

/**
 * What two spellings can be told apart by without laying them side by side: how often each letter stands in a key, as bits that
 * a slip changes few of, and those of its digits that look like no letter, which no slip changes.
 *
 * <p>Letters that look alike are one, r, n and m are one (rn looks like m), c, l and d are left out (cl looks like d), and a
 * letter doubled is one letter: what {@link LookAlikes} counts 1 changes nothing here. A slip takes away at most one letter and
 * brings at most one, or parts or joins two that were doubled, so it changes at most two bits.
 *
 * @param marks a bit for each letter that occurs, one more if it occurs again, and for the commonest one more if it does so again
 */
record Letterprint(String key, long marks, int digits) {
    private static final int BITS_A_SLIP = 2;
    private static final String CL_AND_D = "cld";
    private static final int TWICE_FROM = 27;
    private static final int ANY_OTHER = 26;
    private static final int THRICE_FROM = 53;
    private static final String COMMONEST = "elmaoctsdhp";
    private static final int[] THRICE = new int[ANY_OTHER];

    static {
        for (int i = 0; i < COMMONEST.length(); i++) {
            THRICE[COMMONEST.charAt(i) - 'a'] = THRICE_FROM + i;
        }
    }

    static Letterprint of(String key) {
        long marks = 0;
        int digits = 0;
        char before = 0;
        for (int i = 0; i < key.length(); i++) {
            char letter = letter(key.charAt(i));
            if (LookAlikes.digit(letter)) {
                digits = digits * 31 + letter;
            } else if (letter != before && CL_AND_D.indexOf(letter) < 0) {
                marks = marked(marks, letter);
            }
            before = letter;
        }
        return new Letterprint(key, marks, digits);
    }

    private static char letter(char c) {
        char shape = LookAlikes.shape(c);
        return shape == 'r' || shape == 'n' ? 'm' : shape;
    }

    private static long marked(long marks, char letter) {
        if (letter < 'a' || letter > 'z') {
            return marks | 1L << ANY_OTHER;
        }
        int at = letter - 'a';
        long once = 1L << at;
        long twice = 1L << TWICE_FROM + at;
        if ((marks & once) == 0) {
            return marks | once;
        }
        boolean again = (marks & twice) != 0 && THRICE[at] > 0;
        return marks | twice | (again ? 1L << THRICE[at] : 0);
    }

    /** The most marks so many slips can change. */
    static int marksChangedBy(int slips) {
        return BITS_A_SLIP * slips;
    }

    /** False only where {@link LookAlikes#between} is sure to be more. */
    boolean mayBeWithin(Letterprint other, int distance) {
        return digits == other.digits
            && Long.bitCount(marks ^ other.marks) <= marksChangedBy(Math.max(0, distance) / LookAlikes.SLIP);
    }
}
