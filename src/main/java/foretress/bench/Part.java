package foretress.bench;

import java.util.List;

/** A part of the hair that is tried by itself; the ends are the oldest. */
public enum Part {
    ROOTS, MID_LENGTHS, ENDS;

    public static final List<Part> ALL = List.of(values());
}
