package foretress.assessment;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What a skin test can come to; the order of the constants is from better to worse, and of several looks the worst stands. */
public enum SkinTestOutcome {
    NEGATIVE,
    /** No more than a faint redness. */
    DOUBTFUL,
    POSITIVE;

    /** As rules, facts and the store write it. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** A doubtful one counts as a reaction. */
    public boolean reacted() {
        return this != NEGATIVE;
    }

    static boolean reacted(TestFact test) {
        return !test.outcome().equals(NEGATIVE.code());
    }

    static List<String> codes() {
        return Arrays.stream(values()).map(SkinTestOutcome::code).toList();
    }
}
