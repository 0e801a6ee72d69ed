package foretress.bench;

/** What a pull says, from better to worse. */
public enum Strength {
    PASS, CAUTION, FAIL;

    Strength worse(Strength other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
