package foretress.rights;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import foretress.rights.ConsentHistory.Event;
import foretress.rights.ConsentHistory.Kind;
import foretress.rights.ConsentHistory.Said;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What became of a consent, and its record (ISO/IEC TS 27560 parts, Kantara receipt keys) against the schema that is shipped. */
class ConsentHistoryTest {
    private static final Instant T = Instant.parse("2026-06-01T10:00:00Z");
    private static final Instant FAR = Instant.parse("2040-01-01T00:00:00Z");
    private static final ConsentRecord.Controller SALON = new ConsentRecord.Controller("Alder & Wren",
        "3 Millrace Lane, Tarnbeck", "hello@alderandwren.example", "01632 960 114", "uk", 6, "https://salon.example/");

    private static Said said(int minute, boolean yes) {
        return new Said(T.plus(Duration.ofMinutes(minute)), yes, yes ? "tick" : "link",
            new UUID(7, minute).toString());
    }

    private static List<Kind> kinds(Instant now, Said... said) {
        return ConsentHistory.of(List.of(said), Optional.of(T.plus(Duration.ofDays(365))), now).stream()
            .map(Event::kind).toList();
    }

    @Test
    void theFirstYesGivesASecondRenewsANoWithdraws() {
        assertThat(kinds(T, said(0, true), said(1, true), said(2, false), said(3, true)))
            .containsExactly(Kind.GIVEN, Kind.RENEWED, Kind.WITHDRAWN, Kind.GIVEN);
    }

    @Test
    void aNoBeforeAnyYesRefusesAndEndsNothing() {
        assertThat(kinds(FAR, said(0, false))).containsExactly(Kind.REFUSED);
        assertThat(kinds(FAR, said(0, true), said(1, false), said(2, false)))
            .containsExactly(Kind.GIVEN, Kind.WITHDRAWN, Kind.REFUSED);
    }

    @Test
    void whatStandsExpiresWhenItsTimeIsOverAndNotASecondBefore() {
        Instant end = T.plus(Duration.ofDays(365));
        assertThat(kinds(end.minusSeconds(1), said(0, true))).containsExactly(Kind.GIVEN);
        assertThat(kinds(end, said(0, true))).containsExactly(Kind.GIVEN, Kind.EXPIRED);
    }

    @Test
    @DisplayName("every event of a random history appears once and in order, in records the schema takes")
    void aRandomHistory() throws IOException {
        JsonSchema schema = schema();
        var json = new ObjectMapper();
        for (int seed = 0; seed < 1000; seed++) {
            var random = new Random(seed);
            List<Said> words = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(8); i++) {
                words.add(said(i * 10 + random.nextInt(10), random.nextBoolean()));
            }
            List<Said> shuffled = new ArrayList<>(words);
            Collections.shuffle(shuffled, random);
            Instant now = random.nextBoolean() ? FAR : T.plus(Duration.ofHours(3));
            List<Event> events = ConsentHistory.of(shuffled, Optional.of(T.plus(Duration.ofDays(40))), now);
            assertThat(events.stream().filter(one -> one.kind() != Kind.EXPIRED).map(Event::on))
                .as("seed " + seed).containsExactlyElementsOf(words.stream().map(Said::on).toList());
            assertThat(events).isSortedAccordingTo(Comparator.comparing(Event::at));
            boolean over = now.equals(FAR) && words.get(words.size() - 1).yes();
            assertThat(events.stream().filter(one -> one.kind() == Kind.EXPIRED)).hasSize(over ? 1 : 0);
            ArrayNode records = json.createArrayNode().add(record(events));
            assertThat(schema.validate(records)).as("seed " + seed).isEmpty();
            assertThat(StreamSupport.stream(records.get(0).get("events").spliterator(), false)
                .map(one -> one.get("event_time").asText())).hasSize(events.size());
        }
    }

    @Test
    @DisplayName("a record without one of its parts, with a word too much or an event of no known kind is refused")
    void theSchemaRefusesWhatIsNoRecord() throws IOException {
        JsonSchema schema = schema();
        var json = new ObjectMapper();
        ObjectNode whole = record(ConsentHistory.of(List.of(said(0, true)), Optional.empty(), FAR));
        assertThat(schema.validate(json.createArrayNode().add(whole))).isEmpty();
        for (String part : List.of("header", "processing", "parties", "events", "receipt")) {
            assertThat(schema.validate(json.createArrayNode().add(whole.deepCopy().without(part)))).as(part)
                .isNotEmpty();
        }
        for (String key : List.of("version", "jurisdiction", "consentTimestamp", "collectionMethod",
            "consentReceiptID", "language", "piiPrincipalId", "piiControllers", "policyUrl", "services",
            "sensitive")) {
            ObjectNode less = whole.deepCopy();
            ((ObjectNode) less.get("receipt")).remove(key);
            assertThat(schema.validate(json.createArrayNode().add(less))).as(key).isNotEmpty();
        }
        ObjectNode odd = whole.deepCopy();
        ((ObjectNode) odd.get("events").get(0)).put("event_type", "forgotten");
        assertThat(schema.validate(json.createArrayNode().add(odd))).isNotEmpty();
        assertThat(schema.validate(json.createArrayNode().add(whole.deepCopy().put("more", 1)))).isNotEmpty();
    }

    private static JsonSchema schema() throws IOException {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(new ObjectMapper().readTree(RecordZip.consentSchema()));
    }

    private static ObjectNode record(List<Event> events) {
        return ConsentRecord.of(
            new ConsentRecord.About("visit/hold_answers", new UUID(1, 2).toString(),
                ConsentRecord.Purpose.HOLD_ANSWERS, "en", "2026-11-30.4", "ab".repeat(32), List.of("Colour")),
            SALON, Optional.of("Hanne Brandt"), events);
    }
}
