package foretress.web;

import java.util.regex.Pattern;

/** What may stand in a name. */
public final class NameCharacters {
    /**
     * Controls, line ends and the marks that turn the direction of letters (Unicode 16, UAX #9, 2.1 to 2.6): with them a name could be
     * printed as another one. Names in scripts that run from right to left need none of them.
     */
    private static final Pattern UNSEEN =
        Pattern.compile("[\\p{Cc}\\u2028\\u2029\\u061C\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069]");

    private NameCharacters() {}

    /** Whether every letter of it can be seen and stays where it was typed. */
    public static boolean plain(String name) {
        return !UNSEEN.matcher(name).find();
    }
}
