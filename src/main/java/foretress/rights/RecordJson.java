package foretress.rights;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import foretress.ledger.AuditTrail;
import foretress.salon.Salon;
import foretress.visit.Visits;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;

/** A record as JSON, written as it is read; {@link RecordSchema} says what it looks like. */
@Singleton
class RecordJson {
    private static final Set<String> NOT_STAFF = Set.of("client", "server", "nobody");

    private final RecordRows rows;
    private final AuditTrail trail;
    private final Visits visits;
    private final ObjectMapper json;

    RecordJson(RecordRows rows, AuditTrail trail, Visits visits, ObjectMapper json) {
        this.rows = rows;
        this.trail = trail;
        this.visits = visits;
        this.json = json;
    }

    /** @param files what was written of the files before */
    void write(RecordMap map, List<UUID> who, Instant now, List<JsonNode> files, OutputStream out) throws IOException {
        try (JsonGenerator to = json.getFactory().createGenerator(out).useDefaultPrettyPrinter()) {
            to.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            to.writeStartObject();
            to.writeStringField("format", "foretress.record");
            to.writeNumberField("version", 1);
            to.writeStringField("exported", now.toString());
            to.writeObjectField("salon", salon());
            to.writeObjectField("records", who.stream().map(UUID::toString).toList());
            to.writeObjectFieldStart("kept");
            for (RecordMap.Kept table : map.kept()) {
                to.writeArrayFieldStart(table.table());
                rows.rows(table, who, row -> to.writeTree(row.values()));
                to.writeEndArray();
            }
            to.writeEndObject();
            writeTrail(who, to);
            to.writeObjectField("files", files);
            to.writeObjectField("leftOut", leftOut(map));
            to.writeEndObject();
        }
    }

    private static Map<String, String> salon() {
        Salon salon = Salon.the();
        return Map.of("name", salon.name, "address", salon.address, "town", salon.town, "phone", salon.phone, "email",
            salon.email);
    }

    /** Who among staff it was is theirs; that it was staff is hers to know (CJEU C-579/21, from memory). */
    private void writeTrail(List<UUID> who, JsonGenerator to) throws IOException {
        Set<String> subjects =
            visits.recordsOf(who).stream().map(id -> trail.pseudonym(id.toString())).collect(Collectors.toSet());
        to.writeArrayFieldStart("trail");
        boolean more = true;
        for (int page = 0; more; page++) {
            AuditTrail.Found found = trail.find(new AuditTrail.Asked(Optional.of(subjects), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty()), page);
            for (AuditTrail.Line line : found.lines()) {
                to.writeObject(Map.of("at", line.at().toString(), "act", line.what(), "by",
                    NOT_STAFF.contains(line.actor()) ? line.actor() : "staff"));
            }
            more = found.more();
        }
        to.writeEndArray();
    }

    private static Map<String, String> leftOut(RecordMap map) {
        Map<String, String> all = new TreeMap<>(map.leftOut());
        map.kept().forEach(table -> table.columns().stream().filter(column -> !column.exported())
            .forEach(column -> all.put(table.table() + "." + column.name(), column.detail())));
        return all;
    }
}
