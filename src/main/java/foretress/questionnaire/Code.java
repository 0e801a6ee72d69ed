package foretress.questionnaire;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A constant's name as it is posted, stored and written in files: lower case, with hyphens. */
public final class Code {
    private Code() {}

    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The constant of this code; empty for every other code, and for none. */
    public static <E extends Enum<E>> Optional<E> in(Class<E> type, String code) {
        return Arrays.stream(type.getEnumConstants()).filter(one -> of(one).equals(code)).findFirst();
    }
}
