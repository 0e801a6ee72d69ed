package foretress.questionnaire;

/**
 * One medicine as the client typed it; what the name means is the lexicon's business.
 *
 * @param name as typed, never empty
 * @param dose band: low, high, dont-know, or not-asked
 * @param route how it is taken: mouth, skin, scalp, inhaled, injection, eye-nose, dont-know, or not-asked
 * @param lastTaken now, week, month, longer, dont-know, or not-asked
 */
public record Medicine(String name, String dose, String route, String lastTaken) {
    public static final String NOT_ASKED = "not-asked";

    public Medicine {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a medicine has a name");
        }
    }
}
