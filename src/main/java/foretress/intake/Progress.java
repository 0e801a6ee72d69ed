package foretress.intake;

/**
 * How far the client has come.
 *
 * @param at the page now shown, counted from 1
 * @param of all pages there are to come, reading back and signing included
 */
public record Progress(int at, int of) {}
