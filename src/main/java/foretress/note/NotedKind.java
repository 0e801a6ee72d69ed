package foretress.note;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What only staff can write down about a client. */
public enum NotedKind {
    /** A dermatologist's letter about a product. */
    LETTER,
    /** What a doctor or pharmacist said when a rule asked for it. */
    WORD,
    /** A cut to a length, made here or known of. */
    CUT,
    /** The band of new growth under a colour whose day is known. */
    GROWTH;

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<NotedKind> of(String code) {
        return Arrays.stream(values()).filter(kind -> kind.code().equals(code)).findFirst();
    }
}
