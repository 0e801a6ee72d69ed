package foretress.consent;

import java.util.Locale;

/** Which way words run, and how a name that runs the other way is kept from turning its neighbours. */
enum Direction {
    LEFT_TO_RIGHT, RIGHT_TO_LEFT;

    private static final String FIRST_STRONG_ISOLATE = "\u2068";
    private static final String POP_ISOLATE = "\u2069";
    private static final String LEFT_EMBEDDING = "\u202A";
    private static final String RIGHT_EMBEDDING = "\u202B";
    private static final String POP_EMBEDDING = "\u202C";

    /** The direction a language is written in, read off its own name. */
    static Direction ofLanguage(Locale language) {
        return of(language.getDisplayLanguage(language));
    }

    /** The direction of the first letter that has one; left to right when none has. */
    static Direction of(String text) {
        return text.codePoints().filter(Direction::strong).mapToObj(Direction::ofLetter).findFirst()
            .orElse(LEFT_TO_RIGHT);
    }

    /** The value as it may stand inside a sentence of this direction (Unicode Bidirectional Algorithm, isolates). */
    String isolate(String value) {
        String plain = value.replaceAll("[\u2066-\u2069]", "");
        boolean foreign = plain.codePoints().filter(Direction::strong).anyMatch(letter -> ofLetter(letter) != this);
        return foreign ? FIRST_STRONG_ISOLATE + plain + POP_ISOLATE : plain;
    }

    /** The same text for a printer that knows embeddings but not the newer isolates. */
    static String embedded(String text) {
        var out = new StringBuilder();
        int at = 0;
        for (int start; (start = text.indexOf(FIRST_STRONG_ISOLATE, at)) >= 0;) {
            int end = text.indexOf(POP_ISOLATE, start);
            String inner = text.substring(start + 1, end < 0 ? text.length() : end);
            out.append(text, at, start).append(of(inner) == RIGHT_TO_LEFT ? RIGHT_EMBEDDING : LEFT_EMBEDDING)
                .append(inner).append(POP_EMBEDDING);
            at = end < 0 ? text.length() : end + 1;
        }
        return out.append(text.substring(at)).toString();
    }

    private static boolean strong(int letter) {
        return switch (Character.getDirectionality(letter)) {
            case Character.DIRECTIONALITY_LEFT_TO_RIGHT, Character.DIRECTIONALITY_RIGHT_TO_LEFT,
                Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC -> true;
            default -> false;
        };
    }

    private static Direction ofLetter(int letter) {
        return Character.getDirectionality(letter) == Character.DIRECTIONALITY_LEFT_TO_RIGHT ? LEFT_TO_RIGHT
            : RIGHT_TO_LEFT;
    }
}
