package foretress.knowledge;

import java.util.ArrayList;
import java.util.List;

/** Comma-separated values (RFC 4180) with the place of every field, one line a row. */
final class Csv {
    /** @param column of its first character, counted from 1 */
    record Field(String text, int column) {}

    record Row(int line, String lineText, List<Field> fields) {}

    private Csv() {}

    static List<Row> rows(String text) {
        List<Row> rows = new ArrayList<>();
        int line = 0;
        for (String one : text.split("\r?\n")) {
            line++;
            if (!one.isBlank()) {
                rows.add(new Row(line, one, fields(one)));
            }
        }
        return rows;
    }

    private static List<Field> fields(String line) {
        List<Field> fields = new ArrayList<>();
        var field = new StringBuilder();
        boolean quoted = false;
        int start = 1;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            boolean doubled = quoted && c == '"' && i + 1 < line.length() && line.charAt(i + 1) == '"';
            if (doubled) {
                field.append('"');
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                fields.add(new Field(field.toString().strip(), start));
                field.setLength(0);
                start = i + 2;
            } else {
                field.append(c);
            }
        }
        fields.add(new Field(field.toString().strip(), start));
        return fields;
    }
}
