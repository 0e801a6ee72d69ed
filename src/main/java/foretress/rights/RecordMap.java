package foretress.rights;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the store keeps anything about a person: every table with its path to the person, every column with how it is read, and what
 * is left out with the reason; and how each is erased. It stands in record-map.json; a table or column that is in neither list fails a
 * test, and so does a table that does not say what erasing does to it.
 *
 * @param leftOut reason by table
 * @param rows by table, which of its rows go when a person is erased: an SQL condition in which {@code :who} stands for the ids of
 *        all records of the person
 * @param stays by table, why erasing a person takes none of its rows
 */
public record RecordMap(List<Kept> kept, Map<String, String> leftOut, Map<String, String> rows,
    Map<String, String> stays) {
    private static final String AT = "/foretress/rights/record-map.json";
    private static final String STAYS = "stays: ";

    public RecordMap {
        kept = List.copyOf(kept);
        rows = Map.copyOf(rows);
        stays = Map.copyOf(stays);
    }

    /**
     * A table with a path to the person.
     *
     * @param path an SQL condition; {@code :who} stands for the ids of all records of the person
     * @param key SQL for the id of the client whose key seals its rows; empty where nothing is sealed
     */
    record Kept(String table, Chapter chapter, String path, Optional<String> key, List<Column> columns) {
        Kept {
            columns = List.copyOf(columns);
        }

        /** The column that tells its rows apart. */
        String id() {
            return columns.get(0).name();
        }

        /** The one that is exported as a file of its own. */
        Optional<Column> file() {
            return columns.stream().filter(one -> one.form() == Form.FILE).findFirst();
        }
    }

    /**
     * @param detail the media type of a file, blank where the row names it; why it is left out
     */
    record Column(String name, Form form, String detail) {
        boolean exported() {
            return form != Form.LEFT_OUT;
        }
    }

    /** How a column is read, by the words of the map. */
    enum Form {
        ID("id"), TEXT("text"), NUMBER("number"), YES_NO("yes-no"), DATE("date"), WALL_TIME("wall-time"),
        MOMENT("moment"), JSON("sealed json"), WORDS("sealed text"), FILE("sealed file"), LEFT_OUT("left out:");

        private final String said;

        Form(String said) {
            this.said = said;
        }

        static Column column(String name, String described) {
            for (Form form : values()) {
                if (described.equals(form.said) || described.startsWith(form.said + " ")) {
                    return new Column(name, form, described.substring(form.said.length()).strip());
                }
            }
            throw new IllegalStateException("the map of records says of %s: %s".formatted(name, described));
        }
    }

    Kept of(String table) {
        return kept.stream().filter(one -> one.table().equals(table)).findFirst().orElseThrow();
    }

    public static RecordMap read() {
        try (InputStream in = RecordMap.class.getResourceAsStream(AT)) {
            return of(new ObjectMapper().readTree(in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static RecordMap of(JsonNode map) {
        List<Kept> kept = new ArrayList<>();
        map.get("kept").properties().forEach(one -> kept.add(kept(one.getKey(), one.getValue())));
        Map<String, String> leftOut = new LinkedHashMap<>();
        map.get("leftOut").properties()
            .forEach(one -> leftOut.put(one.getKey(), one.getValue().get("why").asText()));
        Map<String, String> rows = new LinkedHashMap<>();
        Map<String, String> stays = new LinkedHashMap<>();
        for (String list : List.of("kept", "leftOut")) {
            map.get(list).properties().forEach(one -> erasing(one.getKey(), one.getValue(), rows, stays));
        }
        return new RecordMap(kept, leftOut, rows, stays);
    }

    /** A table that says nothing of erasing stands in neither. */
    private static void erasing(String table, JsonNode said, Map<String, String> rows, Map<String, String> stays) {
        String erase = said.path("erase").asText();
        if (erase.equals("rows")) {
            rows.put(table, said.get("path").asText());
        } else if (erase.startsWith(STAYS)) {
            stays.put(table, erase.substring(STAYS.length()));
        }
    }

    private static Kept kept(String table, JsonNode said) {
        List<Column> columns = new ArrayList<>();
        said.get("columns").properties()
            .forEach(one -> columns.add(Form.column(one.getKey(), one.getValue().asText())));
        return new Kept(table, Chapter.of(said.get("group").asText()), said.get("path").asText(),
            Optional.ofNullable(said.get("key")).map(JsonNode::asText), columns);
    }
}
