package foretress.rights;

import com.fasterxml.jackson.databind.JsonNode;
import foretress.web.CsvCell;
import java.util.List;
import java.util.stream.Collectors;

/** One table of a record as lines of CSV (RFC 4180), for a spreadsheet. */
final class RecordCsv {
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

    static String cell(String text) {
        String guarded = CsvCell.guarded(text);
        return guarded.matches("(?s).*[\",\r\n].*") ? CsvCell.quoted(guarded) : guarded;
    }
}
