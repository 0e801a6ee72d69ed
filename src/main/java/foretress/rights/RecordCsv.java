package foretress.rights;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.Collectors;

/** One table of a record as lines of CSV (RFC 4180), for a spreadsheet. */
final class RecordCsv {
    /** A cell that begins with one of these would be reckoned by a spreadsheet (OWASP, CSV Injection). */
    private static final String RECKONED = "=+-@\t\r\n";

    private RecordCsv() {}

    /** What has a value of one line; what is made of parts stands in the JSON only. */
    static List<RecordMap.Column> columns(RecordMap.Kept table) {
        return table.columns().stream().filter(one -> one.exported() && one.form() != RecordMap.Form.JSON).toList();
    }

    static String head(RecordMap.Kept table) {
        return columns(table).stream().map(RecordMap.Column::name).collect(Collectors.joining(",")) + "\r\n";
    }

    static String line(RecordRow row) {
        return columns(row.table()).stream().map(one -> cell(row.of(one.name()))).collect(Collectors.joining(","))
            + "\r\n";
    }

    private static String cell(JsonNode value) {
        String text = value.isNull() ? "" : value.isObject() ? "unreadable" : value.asText();
        return value.isNumber() ? text : cell(text);
    }

    /** An apostrophe in front keeps it a text; a quotation mark within is doubled. */
    static String cell(String text) {
        String kept = !text.isEmpty() && RECKONED.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
        return kept.matches("(?s).*[\",\r\n].*") ? '"' + kept.replace("\"", "\"\"") + '"' : kept;
    }
}
