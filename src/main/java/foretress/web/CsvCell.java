package foretress.web;

/** One cell of a table for a spreadsheet (RFC 4180). */
public final class CsvCell {
    /** What begins with one of these a spreadsheet would reckon (OWASP, CSV Injection). */
    private static final String RECKONED = "=+-@\t\r\n";

    private CsvCell() {}

    /** With an apostrophe in front of what would be reckoned, which keeps it a text. */
    public static String guarded(String text) {
        return !text.isEmpty() && RECKONED.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    /** In quotation marks, those within doubled. */
    public static String quoted(String text) {
        return '"' + text.replace("\"", "\"\"") + '"';
    }
}
