package foretress.questionnaire;

import java.util.List;

/**
 * One medicine as the client typed it; what the name means is the lexicon's business.
 *
 * @param name as typed, never empty
 * @param dose band, one of {@link #DOSES}
 * @param route how it is taken and where on the body, one of {@link #ROUTES}; {@code skin} may be where a skin test is done,
 *     {@code skin-elsewhere} is not
 * @param lastTaken one of {@link #LAST_TAKEN}
 */
public record Medicine(String name, String dose, String route, String lastTaken) {
    public static final String NOT_ASKED = "not-asked";
    public static final List<String> DOSES = List.of("low", "high", Question.DONT_KNOW, NOT_ASKED);
    public static final List<String> ROUTES = List.of("mouth", "skin", "skin-elsewhere", "scalp", "inhaled",
        "injection", "eye-nose", Question.DONT_KNOW, NOT_ASKED);
    public static final List<String> LAST_TAKEN =
        List.of("now", "week", "month", "longer", Question.DONT_KNOW, NOT_ASKED);

    public Medicine {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a medicine has a name");
        }
    }
}
