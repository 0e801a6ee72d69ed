package foretress.api;

import java.util.Locale;

/** What a token may be used for. */
public enum Scope {
    /** Answers into findings, standings and a plan; strand maps. */
    ASSESS,
    /** Ingredient lists and typed medicines. */
    READ,
    /** What is computed at the bench. */
    BENCH;

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
