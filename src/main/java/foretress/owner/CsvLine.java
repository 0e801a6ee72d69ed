package foretress.owner;

import foretress.web.CsvCell;
import java.util.List;
import java.util.stream.Collectors;

/** A line of a table for a spreadsheet (RFC 4180). What a spreadsheet would take for a formula has an apostrophe in front. */
final class CsvLine {
    private CsvLine() {}

    static String of(List<String> cells) {
        return cells.stream().map(CsvLine::cell).collect(Collectors.joining(",")) + "\r\n";
    }

    private static String cell(String text) {
        String guarded = CsvCell.guarded(text);
        return guarded.matches("(?s).*[\",\r\n'].*") ? CsvCell.quoted(guarded) : guarded;
    }
}
