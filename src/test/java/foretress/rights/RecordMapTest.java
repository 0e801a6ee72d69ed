package foretress.rights;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Every table and column of the store has its path to the person, or the reason why it is no part of an export. */
@DisplayName("What is stored about a person is exported, or it is said why not")
class RecordMapTest {
    private static final Path DOCS = Path.of("docs/reference");
    /** Long texts that stand open in the store. */
    private static final Set<String> OPEN = Set.of();

    /** By table, its columns with their SQL types. */
    private static final Map<String, Map<String, String>> STORE = new TreeMap<>();
    private static final RecordMap MAP = RecordMap.read();

    @BeforeAll
    static void read() throws SQLException {
        String store = "jdbc:h2:mem:record-map;DB_CLOSE_DELAY=-1;CASE_INSENSITIVE_IDENTIFIERS=TRUE";
        Flyway.configure().dataSource(store, "sa", "").locations("filesystem:src/main/resources/db/migration").load()
            .migrate();
        try (Connection connection = DriverManager.getConnection(store, "sa", "");
            ResultSet columns = connection.createStatement().executeQuery(
                "select lower(table_name), lower(column_name), data_type from information_schema.columns"
                    + " where table_schema = 'PUBLIC' order by ordinal_position")) {
            while (columns.next()) {
                STORE.computeIfAbsent(columns.getString(1), any -> new LinkedHashMap<>()).put(columns.getString(2),
                    columns.getString(3));
            }
        }
        STORE.remove("flyway_schema_history");
    }

    @Test
    void everyTableIsExportedOrLeftOutWithAReason() {
        Set<String> said = new TreeSet<>(MAP.leftOut().keySet());
        for (RecordMap.Kept table : MAP.kept()) {
            assertThat(table.columns().stream().map(RecordMap.Column::name).toList()).as(table.table())
                .containsExactlyInAnyOrderElementsOf(STORE.get(table.table()).keySet());
        }
        assertThat(MAP.kept().stream().flatMap(table -> table.columns().stream()).filter(column -> !column.exported()))
            .allSatisfy(column -> assertThat(column.detail()).as(column.name()).hasSizeGreaterThan(5));
    }

    @Test
    @DisplayName("every table says what erasing a person does to it; what names a client or a visit never stays")
    void everyTableHasItsPathToErasure() {
        Set<String> said = new TreeSet<>(MAP.rows().keySet());
        said.addAll(MAP.stays().keySet());
        assertThat(said).isEqualTo(STORE.keySet());
        assertThat(MAP.rows().keySet()).doesNotContainAnyElementsOf(MAP.stays().keySet())
            .containsAll(MAP.kept().stream().map(RecordMap.Kept::table).toList());
        assertThat(MAP.stays().keySet()).noneMatch(table -> STORE.get(table).containsKey("client_id")
            || STORE.get(table).containsKey("visit_id"));
        assertThat(MAP.stays().values()).allSatisfy(why -> assertThat(why).hasSizeGreaterThan(5));
        assertThat(MAP.rows().values()).allSatisfy(path -> assertThat(path).contains(":who"));
    }

    @Test
    @DisplayName("a table that names a client or a visit is never left out as if it were about nobody, but for keys and search")
    void noTableWithAPathIsLeftOut() {
        assertThat(STORE.entrySet().stream()
            .filter(table -> table.getValue().keySet().stream().anyMatch(Set.of("client_id", "visit_id")::contains))
            .map(Map.Entry::getKey).filter(MAP.leftOut()::containsKey))
            .containsExactlyInAnyOrder("client_key", "client_word", "door_code");
    }

    @Test
    @DisplayName("a long text is sealed and opened for the export: none would be handed out as the letters it is sealed in")
    void longTextsAreOpened() {
        Set<String> closed = new TreeSet<>();
        MAP.kept().forEach(table -> table.columns().stream()
            .filter(column -> column.form() == RecordMap.Form.TEXT
                && STORE.get(table.table()).get(column.name()).equals("CHARACTER LARGE OBJECT"))
            .forEach(column -> closed.add(table.table() + "." + column.name())));
        assertThat(closed).isEqualTo(OPEN);
    }

    @Test
    void theSchemasInTheDocsAreThoseInTheZip() throws IOException {
        String record = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT)
            .writeValueAsString(RecordSchema.of(MAP)) + "\n";
        String consent = new String(RecordZip.consentSchema(), StandardCharsets.UTF_8);
        if (Boolean.getBoolean("reference.rewrite")) {
            Files.writeString(DOCS.resolve("record.schema.json"), record);
            Files.writeString(DOCS.resolve("consent-record.schema.json"), consent);
        }
        assertThat(DOCS.resolve("record.schema.json")).hasContent(record);
        assertThat(DOCS.resolve("consent-record.schema.json")).hasContent(consent);
    }

    @Test
    @DisplayName("both schemas are schemas themselves, by the published one of draft 2020-12")
    void theSchemasAreSchemas() throws IOException {
        JsonSchemaFactory schemas = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);
        JsonSchema draft = schemas.getSchema(SchemaLocation.of(RecordSchema.DRAFT));
        assertThat(draft.validate(RecordSchema.of(MAP))).isEmpty();
        assertThat(draft.validate(new ObjectMapper().readTree(RecordZip.consentSchema()))).isEmpty();
    }

    @Test
    @DisplayName("a spreadsheet reckons no cell: what begins like a formula gets an apostrophe")
    void noCellIsReckoned() {
        assertThat(RecordCsv.cell("=HYPERLINK(\"x\")")).isEqualTo("\"'=HYPERLINK(\"\"x\"\")\"");
        assertThat(RecordCsv.cell("+44 1632")).isEqualTo("'+44 1632");
        assertThat(RecordCsv.cell("-1")).isEqualTo("'-1");
        assertThat(RecordCsv.cell("@sum")).isEqualTo("'@sum");
        assertThat(RecordCsv.cell("\tx")).isEqualTo("'\tx");
        assertThat(RecordCsv.cell("a,b")).isEqualTo("\"a,b\"");
        assertThat(RecordCsv.cell("two\nlines")).isEqualTo("\"two\nlines\"");
        assertThat(RecordCsv.cell("Brandt")).isEqualTo("Brandt");
        assertThat(RecordCsv.cell("")).isEmpty();
    }
}
