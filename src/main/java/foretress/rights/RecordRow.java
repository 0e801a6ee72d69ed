package foretress.rights;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/**
 * One row about a person, opened.
 *
 * @param values by column, in the order of the map; what is a file stands as its place in the ZIP, what does not open any more as
 *     {@code {"unreadable": true}}
 */
record RecordRow(RecordMap.Kept table, ObjectNode values) {
    /** The earliest moment it tells of, for saying when it was. */
    Optional<String> moment() {
        return table.columns().stream().filter(one -> one.form() == RecordMap.Form.MOMENT)
            .map(one -> values.path(one.name()).asText("")).filter(text -> !text.isEmpty()).findFirst();
    }

    JsonNode of(String column) {
        return values.path(column);
    }
}
