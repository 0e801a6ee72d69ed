package foretress.rights;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.knowledge.Knowledge;
import foretress.salon.Policies;
import foretress.salon.Salon;
import foretress.web.PublicAddress;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every consent of a person as a consent record: for each visit that answers are held, and each thing that was signed. */
@Singleton
class ConsentRecords {
    /** Under which signings of one kind stand. */
    private static final Map<String, ConsentRecord.Purpose> SIGNED =
        Map.of("service", ConsentRecord.Purpose.SERVICE, "skin-test", ConsentRecord.Purpose.SKIN_TEST);

    private final RecordRows rows;
    private final Policies policies;
    private final Knowledge knowledge;
    private final PublicAddress address;

    ConsentRecords(RecordRows rows, Policies policies, Knowledge knowledge, PublicAddress address) {
        this.rows = rows;
        this.policies = policies;
        this.knowledge = knowledge;
        this.address = address;
    }

    ArrayNode of(RecordMap map, List<UUID> who, String language, Instant now) throws IOException {
        List<JsonNode> held = read(map, "health_consent", who), signed = read(map, "signed_consent", who);
        Map<String, List<String>> services = read(map, "booked_service", who).stream()
            .collect(Collectors.groupingBy(one -> one.get("visit_id").asText(),
                Collectors.mapping(one -> knowledge.words(language).service(one.get("service_id").asText()),
                    Collectors.toList())));
        ArrayNode all = JsonNodeFactory.instance.arrayNode();
        for (JsonNode visit : read(map, "visit", who)) {
            String id = visit.get("id").asText();
            List<JsonNode> words = of(held, id);
            var about = new Visit(visit, services.getOrDefault(id, List.of("")), words);
            record(about, words, ConsentRecord.Purpose.HOLD_ANSWERS, now).ifPresent(all::add);
            of(signed, id).stream().map(one -> one.get("purpose").asText()).distinct().sorted()
                .forEach(purpose -> record(about, of(signed, id).stream()
                    .filter(one -> one.get("purpose").asText().equals(purpose)).toList(), SIGNED.get(purpose), now)
                    .ifPresent(all::add));
        }
        return all;
    }

    /** @param words what was said about holding answers: a no takes back what was signed too */
    private record Visit(JsonNode row, List<String> services, List<JsonNode> words) {}

    private Optional<ObjectNode> record(Visit visit, List<JsonNode> rows, ConsentRecord.Purpose purpose, Instant now) {
        List<ConsentHistory.Said> said = said(visit, rows, purpose);
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        JsonNode last = rows.get(rows.size() - 1);
        boolean held = purpose == ConsentRecord.Purpose.HOLD_ANSWERS;
        var about = new ConsentRecord.About(
            visit.row().get("id").asText() + "/" + purpose.name().toLowerCase(Locale.ROOT),
            visit.row().get("client_id").asText(), purpose, last.get("language").asText(),
            last.get(held ? "notice_version" : "text_version").asText(),
            held ? last.get("notice_sha256").asText() : "", visit.services());
        Optional<String> guardian = rows.stream().map(one -> one.path("guardian").path("name").asText(""))
            .filter(name -> !name.isEmpty()).findFirst();
        return Optional.of(ConsentRecord.of(about, controller(), guardian,
            ConsentHistory.of(said, Optional.of(ends(visit.row())), now)));
    }

    private static List<ConsentHistory.Said> said(Visit visit, List<JsonNode> rows, ConsentRecord.Purpose purpose) {
        if (purpose == ConsentRecord.Purpose.HOLD_ANSWERS) {
            return rows.stream().map(ConsentRecords::word).toList();
        }
        List<ConsentHistory.Said> signed = rows.stream().map(one -> new ConsentHistory.Said(
            Instant.parse(one.get("signed_at").asText()), true, one.get("mark_kind").asText(), one.get("id").asText()))
            .toList();
        return Stream.concat(signed.stream(), visit.words().stream().map(ConsentRecords::word)
            .filter(one -> !one.yes() && one.at().isAfter(signed.get(0).at()))).toList();
    }

    private static ConsentHistory.Said word(JsonNode row) {
        boolean yes = row.get("said").asText().equals("given");
        return new ConsentHistory.Said(Instant.parse(row.get("said_at").asText()), yes, yes ? "tick" : "link",
            row.get("id").asText());
    }

    private Instant ends(JsonNode visit) {
        return Instant.parse(visit.get("starts_at").asText()).atZone(ZoneId.of(visit.get("zone").asText()))
            .plusYears(policies.effective().retentionYears()).toInstant();
    }

    private ConsentRecord.Controller controller() {
        Salon salon = Salon.the();
        return new ConsentRecord.Controller(salon.name, salon.address + ", " + salon.town, salon.email, salon.phone,
            salon.jurisdiction, policies.effective().retentionYears(), address.link("/"));
    }

    private List<JsonNode> read(RecordMap map, String table, List<UUID> who) throws IOException {
        List<JsonNode> all = new ArrayList<>();
        rows.rows(map.of(table), who, row -> all.add(row.values()));
        return all;
    }

    private static List<JsonNode> of(List<JsonNode> rows, String visit) {
        return rows.stream().filter(one -> one.get("visit_id").asText().equals(visit)).toList();
    }
}
