package foretress.rights;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.consent.SealedPapers;
import foretress.vault.Unreadable;
import foretress.vault.Vault;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import javax.sql.DataSource;

/** Reads what the map names about a person, one row at a time, so that memory does not grow with the record. */
@Singleton
class RecordRows {
    private static final JsonNodeFactory NODE = JsonNodeFactory.instance;

    /** What is done with each row. */
    @FunctionalInterface
    interface Each<T> {
        void take(T one) throws IOException;
    }

    /**
     * A file of a record, and where it lies in the ZIP.
     *
     * @param bytes empty when it does not open any more
     */
    record PersonalFile(String at, Optional<byte[]> bytes) {}

    private final DataSource store;
    private final Vault vault;
    private final SealedPapers papers;
    private final ObjectMapper json;

    RecordRows(DataSource store, Vault vault, SealedPapers papers, ObjectMapper json) {
        this.papers = papers;
        this.store = store;
        this.vault = vault;
        this.json = json;
    }

    /** @param who ids of all records of the person, at least one */
    void rows(RecordMap.Kept table, List<UUID> who, Each<RecordRow> each) throws IOException {
        List<RecordMap.Column> read = table.columns().stream()
            .filter(one -> one.exported() && one.form() != RecordMap.Form.FILE).toList();
        walk(table, who, read, (UUID id, ResultSet row) -> each.take(new RecordRow(table, values(table, id, row))));
    }

    void files(RecordMap.Kept table, List<UUID> who, Each<PersonalFile> each) throws IOException {
        if (table.file().isEmpty()) {
            return;
        }
        RecordMap.Column file = table.file().orElseThrow();
        List<RecordMap.Column> read = new ArrayList<>(List.of(file));
        table.columns().stream().filter(one -> one.name().equals("media_type")).forEach(read::add);
        walk(table, who, read, (UUID id, ResultSet row) -> each
            .take(new PersonalFile(place(file, id, row),
                opened(table, file, id, row).map(bytes -> givenOut(table, id, bytes)))));
    }

    /** What was signed leaves under the salon's seal. */
    private byte[] givenOut(RecordMap.Kept table, UUID id, byte[] bytes) {
        return table.table().equals("signed_consent") ? papers.sealed(id, bytes) : bytes;
    }

    @FunctionalInterface
    private interface EachRow {
        void take(UUID id, ResultSet row) throws SQLException, IOException;
    }

    private void walk(RecordMap.Kept table, List<UUID> who, List<RecordMap.Column> read, EachRow each)
        throws IOException {
        String columns = read.stream().map(RecordMap.Column::name).collect(Collectors.joining(", "));
        String row = "select %s%s from %s where %s = ?".formatted(columns,
            table.key().map(key -> ", " + key + " as key_id").orElse(""), table.table(), table.id());
        try (Connection connection = store.getConnection(); PreparedStatement one = connection.prepareStatement(row)) {
            for (UUID id : ids(connection, table, who)) {
                one.setObject(1, id);
                try (ResultSet found = one.executeQuery()) {
                    if (found.next()) {
                        each.take(id, found);
                    }
                }
            }
        } catch (SQLException e) {
            throw new IllegalStateException("%s could not be read".formatted(table.table()), e);
        }
    }

    private static List<UUID> ids(Connection connection, RecordMap.Kept table, List<UUID> who) throws SQLException {
        String places = String.join(", ", Collections.nCopies(who.size(), "?"));
        String order = table.columns().stream().filter(one -> one.form() == RecordMap.Form.MOMENT).findFirst()
            .map(one -> one.name() + ", ").orElse("") + table.id();
        try (PreparedStatement select = connection.prepareStatement("select %s from %s where %s order by %s"
            .formatted(table.id(), table.table(), table.path().replace(":who", places), order))) {
            for (int i = 0; i < who.size(); i++) {
                select.setObject(i + 1, who.get(i));
            }
            List<UUID> ids = new ArrayList<>();
            try (ResultSet rows = select.executeQuery()) {
                while (rows.next()) {
                    ids.add(rows.getObject(1, UUID.class));
                }
            }
            return ids;
        }
    }

    private ObjectNode values(RecordMap.Kept table, UUID id, ResultSet row) throws SQLException {
        ObjectNode values = NODE.objectNode();
        for (RecordMap.Column column : table.columns()) {
            if (column.exported()) {
                values.set(column.name(),
                    column.form() == RecordMap.Form.FILE ? NODE.textNode(place(column, id, row))
                        : value(table, column, id, row));
            }
        }
        return values;
    }

    private JsonNode value(RecordMap.Kept table, RecordMap.Column column, UUID id, ResultSet row) throws SQLException {
        String at = column.name();
        if (row.getString(at) == null) {
            return NODE.nullNode();
        }
        return switch (column.form()) {
            case NUMBER -> NODE.numberNode(row.getLong(at));
            case YES_NO -> NODE.booleanNode(row.getBoolean(at));
            case MOMENT -> NODE.textNode(row.getObject(at, OffsetDateTime.class).toInstant().toString());
            case WALL_TIME -> NODE.textNode(row.getObject(at, Timestamp.class).toLocalDateTime().toString());
            case JSON, WORDS -> opened(table, column, id, row).map(bytes -> said(column, bytes))
                .orElseGet(() -> NODE.objectNode().put("unreadable", true));
            default -> NODE.textNode(row.getString(at));
        };
    }

    private JsonNode said(RecordMap.Column column, byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        try {
            return column.form() == RecordMap.Form.JSON ? json.readTree(text) : NODE.textNode(text);
        } catch (JsonProcessingException e) {
            return NODE.textNode(text);
        }
    }

    private Optional<byte[]> opened(RecordMap.Kept table, RecordMap.Column column, UUID id, ResultSet row)
        throws SQLException {
        String place = table.table() + "." + column.name() + "." + id;
        try {
            return Optional.of(
                vault.openOnce(row.getObject("key_id", UUID.class), place, row.getString(column.name())));
        } catch (Unreadable gone) {
            return Optional.empty();
        }
    }

    private static String folder(RecordMap.Column file) {
        return file.detail().equals("application/pdf") ? "documents/" : "photos/";
    }

    private static String place(RecordMap.Column file, UUID id, ResultSet row) throws SQLException {
        return folder(file) + id + ending(file.detail().isEmpty() ? row.getString("media_type") : file.detail());
    }

    static String ending(String mediaType) {
        return switch (mediaType) {
            case "image/jpeg" -> ".jpg";
            case "image/png" -> ".png";
            case "application/pdf" -> ".pdf";
            default -> ".bin";
        };
    }
}
