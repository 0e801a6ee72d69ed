package foretress.assessment;

/** Kleene's three values: unknown means that some reading of what is not known makes it true and, as far as we look, some makes it false. */
public enum Truth {
    FALSE, UNKNOWN, TRUE;

    static Truth of(boolean known) {
        return known ? TRUE : FALSE;
    }

    Truth and(Truth other) {
        return compareTo(other) <= 0 ? this : other;
    }

    Truth or(Truth other) {
        return compareTo(other) >= 0 ? this : other;
    }

    Truth not() {
        return values()[2 - ordinal()];
    }
}
