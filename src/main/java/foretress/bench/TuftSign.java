package foretress.bench;

import java.util.Arrays;
import java.util.List;

/** What can be seen on a tuft in the bath. Any alarming one, alone, is a reaction: common practice, found on teaching pages. */
public enum TuftSign {
    BUBBLES(true), HEAT(true), SMELL(true), LIGHTER_AT_ONCE(true), LIGHTER_IN_PATCHES(true), COLOUR_TURNS(true),
    SOFTENS(true),
    COMES_APART(true),
    /** What clean hair does, slowly and evenly. */
    SLIGHTLY_LIGHTER(false),
    /** No change whatever, not even slight lightening: silver and bismuth are taught to look so. */
    NOTHING(false);

    public static final List<TuftSign> ALARMING = Arrays.stream(values()).filter(TuftSign::alarming).toList();

    private final boolean alarming;

    TuftSign(boolean alarming) {
        this.alarming = alarming;
    }

    public boolean alarming() {
        return alarming;
    }
}
