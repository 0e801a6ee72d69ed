package foretress.rights;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.stream.Stream;

/** The JSON Schema (draft 2020-12) of an exported record, made from the map. */
final class RecordSchema {
    static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";
    private static final JsonNodeFactory NODE = JsonNodeFactory.instance;

    private RecordSchema() {}

    static ObjectNode of(RecordMap map) {
        ObjectNode schema = object();
        schema.put("title", "Everything kept about one client");
        ObjectNode root = NODE.objectNode().put("$schema", DRAFT);
        root.setAll(schema);
        property(root, "format", NODE.objectNode().put("const", "foretress.record"));
        property(root, "version", NODE.objectNode().put("const", 1));
        property(root, "exported", moment());
        property(root, "salon", object("name", "address", "town", "phone", "email"));
        property(root, "records", list(text()).put("description", "ids of all records of the person"));
        ObjectNode kept = object();
        map.kept().forEach(table -> property(kept, table.table(), list(row(table))));
        property(root, "kept", kept);
        property(root, "trail", list(object("at", "act", "by")).put("description",
            "the audit trail's entries about these records; by is client, staff, server or nobody"));
        property(root, "files", list(file()));
        property(root, "leftOut", NODE.objectNode().put("type", "object")
            .put("description", "tables and columns that are not here, each with the reason")
            .set("additionalProperties", text()));
        return root;
    }

    private static ObjectNode row(RecordMap.Kept table) {
        ObjectNode row = object();
        table.columns().stream().filter(RecordMap.Column::exported)
            .forEach(column -> property(row, column.name(), value(column)));
        return row;
    }

    private static ObjectNode value(RecordMap.Column column) {
        return switch (column.form()) {
            case NUMBER -> either("integer");
            case YES_NO -> either("boolean");
            case MOMENT -> either("string").put("format", "date-time");
            case DATE -> either("string").put("format", "date");
            case WALL_TIME -> either("string").put("description", "date and hour on the salon's wall clock");
            case JSON ->
                NODE.objectNode().put("description", "as it was kept; {\"unreadable\": true} where it does not open");
            case WORDS -> NODE.objectNode().put("description", "a text; {\"unreadable\": true} where it does not open")
                .set("type", NODE.arrayNode().add("string").add("object").add("null"));
            case FILE -> either("string").put("description", "where the file lies in the ZIP");
            default -> either("string");
        };
    }

    private static ObjectNode file() {
        ObjectNode file = NODE.objectNode().put("type", "object").put("additionalProperties", false);
        file.set("required", NODE.arrayNode().add("file"));
        file.set("properties", NODE.objectNode().set("file", text()));
        ((ObjectNode) file.get("properties")).set("sha256", text().put("pattern", "^[0-9a-f]{64}$"));
        ((ObjectNode) file.get("properties")).set("bytes", NODE.objectNode().put("type", "integer").put("minimum", 0));
        ((ObjectNode) file.get("properties")).set("unreadable", NODE.objectNode().put("const", true));
        return file;
    }

    /** All of these are there, and nothing else. */
    private static ObjectNode object(String... texts) {
        ObjectNode object = NODE.objectNode().put("type", "object").put("additionalProperties", false);
        object.putObject("properties");
        object.putArray("required");
        Stream.of(texts).forEach(one -> property(object, one, text()));
        return object;
    }

    private static void property(ObjectNode object, String name, ObjectNode schema) {
        object.withObject("/properties").set(name, schema);
        object.withArray("/required").add(name);
    }

    private static ObjectNode list(ObjectNode of) {
        return NODE.objectNode().put("type", "array").set("items", of);
    }

    private static ObjectNode text() {
        return NODE.objectNode().put("type", "string");
    }

    private static ObjectNode moment() {
        return text().put("format", "date-time");
    }

    private static ObjectNode either(String type) {
        return NODE.objectNode().set("type", NODE.arrayNode().add(type).add("null"));
    }
}
