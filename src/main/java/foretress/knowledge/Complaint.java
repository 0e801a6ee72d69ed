package foretress.knowledge;

/**
 * What is wrong in a knowledge file, and where. It prints as the place, the message, the line and carets under the letters meant.
 *
 * @param line counted from 1
 * @param column counted from 1, in characters
 * @param width how many characters are meant, at least 1
 */
public record Complaint(String file, int line, int column, int width, String message, String lineText) {

    /** The place and the message, on one line. */
    public String headline() {
        return "%s:%d:%d  %s".formatted(file, line, column, message);
    }

    @Override
    public String toString() {
        return headline() + "\n    " + lineText + "\n    " + " ".repeat(column - 1) + "^".repeat(Math.max(1, width));
    }
}
