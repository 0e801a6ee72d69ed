package foretress.questionnaire;

import java.util.Arrays;
import java.util.List;

/**
 * One medicine as the client typed it; what the name means is the lexicon's business.
 *
 * @param name as typed, never empty
 * @param dose how much, as a band
 * @param route how it is taken and where on the body
 * @param lastTaken how long ago
 */
public record Medicine(String name, Dose dose, Route route, LastTaken lastTaken) {
    /** Several are told on one page: what stands between the question's name and the field's; the first has nothing there. */
    public static final List<String> ROWS = List.of("", "2", "3");
    /** The code of what was not asked, in each of the three. */
    public static final String NOT_ASKED = Dose.NOT_ASKED.code();
    public static final List<String> DOSES = Arrays.stream(Dose.values()).map(Dose::code).toList();
    public static final List<String> ROUTES = Arrays.stream(Route.values()).map(Route::code).toList();
    public static final List<String> LAST_TAKEN = Arrays.stream(LastTaken.values()).map(LastTaken::code).toList();

    public enum Dose {
        LOW, HIGH, DONT_KNOW, NOT_ASKED;

        /** As posted and stored. */
        public String code() {
            return Code.of(this);
        }
    }

    /** {@code SKIN} may be where a skin test is done, {@code SKIN_ELSEWHERE} is not. */
    public enum Route {
        MOUTH, SKIN, SKIN_ELSEWHERE, SCALP, INHALED, INJECTION, EYE_NOSE, DONT_KNOW, NOT_ASKED;

        /** As posted and stored. */
        public String code() {
            return Code.of(this);
        }
    }

    /** Still taken, or up to so long ago. */
    public enum LastTaken {
        NOW, WEEK, MONTH, LONGER, DONT_KNOW, NOT_ASKED;

        /** As posted and stored. */
        public String code() {
            return Code.of(this);
        }
    }

    public Medicine {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a medicine has a name");
        }
    }

    /** @throws IllegalArgumentException for a code that stands in none of the three lists */
    public Medicine(String name, String dose, String route, String lastTaken) {
        this(name, of(Dose.class, dose), of(Route.class, route), of(LastTaken.class, lastTaken));
    }

    private static <E extends Enum<E>> E of(Class<E> type, String code) {
        return Code.in(type, code)
            .orElseThrow(() -> new IllegalArgumentException("no " + type.getSimpleName() + ": " + code));
    }
}
