package foretress.bench;

import java.util.Arrays;
import java.util.Optional;

/** What can be tried at the bench; the code is the test's id in knowledge, where it has one. */
public enum BenchKind {
    METAL("incompatibility-test"), ELASTICITY("elasticity-test"), POROSITY("porosity-test"), CUTTING("test-cutting"),
    STRAND("strand-test"),
    LENGTH("hair-length");

    private final String code;

    BenchKind(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<BenchKind> of(String code) {
        return Arrays.stream(values()).filter(kind -> kind.code.equals(code)).findFirst();
    }

    /** Its clock runs, and somebody watches it. */
    boolean isWatched() {
        return this == METAL || this == CUTTING || this == STRAND;
    }

    /** On the head itself too long is a harm, so the time without a server counts; a dish only gets longer by it. */
    boolean onTheHead() {
        return this == STRAND;
    }
}
