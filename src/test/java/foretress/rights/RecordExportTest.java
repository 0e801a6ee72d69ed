package foretress.rights;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import foretress.MovedClock;
import foretress.Walker;
import foretress.intake.Answering;
import foretress.intake.Knocking;
import foretress.invitation.Codes;
import foretress.salon.OpenSalon;
import foretress.skintest.Chair;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Everything about one client in one act; what she asks about it; consent taken back once the visit is over. Through the real pages. */
@QuarkusTest
class RecordExportTest {
    private static final Map<String, String> BORN = Map.of("day", "4", "month", "3", "year", "1965");
    private static final RecordMap MAP = RecordMap.read();

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Chair chair;
    @Inject Codes codes;
    @Inject MovedClock clock;
    @Inject ObjectMapper json;
    @Inject RecordZip whole;
    UUID visit;

    @BeforeEach
    void aClientIsInvited() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
    }

    @AfterEach
    void backToNow() {
        clock.reset();
    }

    private Walker signed() {
        return knocking.come(visit, Map.of()).agree().all().readBack().sign("Ottilie Brandt").walker();
    }

    private void closed() {
        make.is(visit, State.DECIDED);
        make.is(visit, State.CLOSED);
    }

    private UUID client() {
        return QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).client.id);
    }

    private static Map<String, byte[]> unzipped(byte[] zip) throws IOException {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        try (var in = new ZipInputStream(new ByteArrayInputStream(zip), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                entries.put(entry.getName(), in.readAllBytes());
            }
        }
        return entries;
    }

    private Map<String, byte[]> exported() throws IOException {
        Walker edda = salon.as("edda").open("/clients/" + client() + "/record").expect(200);
        edda.send(Map.of("password", OpenSalon.PASSWORD)).expect(200);
        assertThat(edda.response().header("Content-Disposition")).startsWith("attachment; filename=\"record-20");
        Files.write(Path.of("target/record.zip"), edda.response().asByteArray());
        return unzipped(edda.response().asByteArray());
    }

    /** Ids of every row of this person in the store, by table. */
    private Map<String, Set<String>> stored() {
        UUID person = client();
        return QuarkusTransaction.requiringNew().call(() -> MAP.kept().stream()
            .collect(Collectors.toMap(RecordMap.Kept::table, table -> ids(table, person))));
    }

    private static Set<String> ids(RecordMap.Kept table, UUID person) {
        List<?> found = Visit.getEntityManager()
            .createNativeQuery("select cast(%s as varchar) from %s where %s".formatted(table.id(), table.table(),
                table.path().replace(":who", ":person")))
            .setParameter("person", person).getResultList();
        return found.stream().map(String::valueOf).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    @DisplayName("the owner exports all of it in one act: each stored row once, the signed bytes, a page in her language, JSON as its schema says")
    void theWholeRecord() throws IOException {
        visit = chair.planned(Map.of());
        chair.applied(visit);
        Walker phone = new Walker().open(knocking.link(visit)).send(BORN);
        phone.send("form[action=/code]", Map.of("code", codes.readOut(visit, "server")));
        phone.open("/answers/complaint").send(Map.of("words", "=You sent <my> answers on."));
        Map<String, byte[]> zip = exported();
        JsonNode record = json.readTree(new String(zip.get("record.json"), StandardCharsets.UTF_8));
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(json.readTree(new String(zip.get("schemas/record.schema.json"), StandardCharsets.UTF_8)))
            .validate(record)).isEmpty();
        stored().forEach((table, ids) -> assertThat(StreamSupport
            .stream(record.get("kept").get(table).spliterator(), false)
            .map(row -> row.get(MAP.of(table).id()).asText()).toList()).as(table)
            .containsExactlyInAnyOrderElementsOf(ids));
        for (String filled : List.of("client", "visit", "topic_answers", "signed_consent", "skin_test", "complaint",
            "assessment", "health_consent", "invitation")) {
            assertThat(record.get("kept").get(filled)).as(filled).isNotEmpty();
        }
        assertThat(record.toString()).contains("You sent <my> answers on.").doesNotContain("\"unreadable\"");
        JsonNode consent = record.get("kept").get("signed_consent").get(0);
        try (PDDocument pdf = Loader.loadPDF(zip.get(consent.get("pdf").asText()))) {
            assertThat(pdf.getNumberOfPages()).isPositive();
        }
        assertThat(record.get("trail")).isNotEmpty();
        readable(zip);
        JsonNode consents = json.readTree(new String(zip.get("consent-records.json"), StandardCharsets.UTF_8));
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(json.readTree(new String(zip.get("schemas/consent-record.schema.json"),
                StandardCharsets.UTF_8)))
            .validate(consents)).isEmpty();
        assertThat(consents.findValuesAsText("event_type")).contains("given");
        assertThat(new String(zip.get("csv/visit.csv"), StandardCharsets.UTF_8)).startsWith("id,")
            .contains(visit.toString());
    }

    private static void readable(Map<String, byte[]> zip) {
        String html = new String(zip.get("overview.html"), StandardCharsets.UTF_8);
        Document page = Jsoup.parse(html);
        assertThat(page.select("script, iframe, form")).isEmpty();
        assertThat(page.select("[src], [href]")).allSatisfy(one -> assertThat(zip)
            .containsKey(one.hasAttr("src") ? one.attr("src") : one.attr("href")));
        assertThat(page.select("html").attr("lang")).isEqualTo("en");
        assertThat(page.text()).contains("Everything kept about you", "What you agreed to",
            "=You sent <my> answers on.");
        assertThat(html).doesNotContain("<my>");
    }

    @Test
    @DisplayName("only the owner exports, and only with the password; the act stands in the trail")
    void whoMayExport() throws IOException {
        signed();
        String at = "/clients/" + client() + "/record";
        salon.as("petra").open(at).expect(403);
        salon.as("sanna").open(at).expect(403);
        Walker edda = salon.as("edda").open(at).expect(200);
        assertThat(edda.send(Map.of("password", "not it")).expect(422).text()).contains("That is not your password.");
        exported();
        assertThat(salon.as("edda").open("/owner").send("form.trail", Map.of("act", "exported")).text())
            .contains("everything about a client exported");
    }

    @Test
    @DisplayName("what was signed leaves once, under the salon's seal")
    void whatWasSignedIsSealed() throws IOException {
        byte[] copy = signed().open("/answers/copy").expect(200).response().asByteArray();
        List<byte[]> documents = exported().entrySet().stream()
            .filter(entry -> entry.getKey().startsWith("documents/")).map(Map.Entry::getValue).toList();
        assertThat(documents).singleElement().isEqualTo(copy);
    }

    @Test
    @DisplayName("the client gets it by her own link after a one-use code, and not before")
    void theClientGetsIt() throws IOException {
        Walker phone = signed();
        closed();
        phone.open("/answers/after").open("/answers/rights").expect(200);
        assertThat(phone.open("/answers/rights/record").at()).isEqualTo("/code?record=yes");
        phone.send("form[action=/code]", Map.of("code", "000000")).expect(422);
        assertThat(phone.open("/answers/rights/record").at()).isEqualTo("/code?record=yes");
        phone.send("form[action=/code]", Map.of("code", codes.readOut(visit, "server")));
        phone.open("/answers/rights/record").expect(200);
        assertThat(unzipped(phone.response().asByteArray())).containsKeys("overview.html", "record.json",
            "consent-records.json", "csv/client.csv");
    }

    @Test
    @DisplayName("what she asks about her data is due in a month; the owner reads, answers and closes it, and she reads the answer")
    void aRequest() {
        Walker phone = signed();
        closed();
        phone.open("/answers/rights").expect(200);
        assertThat(phone.send(Map.of("words", "")).expect(422).text()).contains("Choose what you want.",
            "Write what it is about.");
        phone.send(Map.of("kind", "correction", "words", "My telephone number is <wrong>.")).expect(200);
        assertThat(phone.text()).contains("We have your request", "Alder & Wren must answer by",
            "My telephone number is <wrong>.");
        assertThat(salon.as("sanna").open("/desk").text()).contains("A request about data: the owner answers it")
            .doesNotContain("telephone number is");
        salon.as("petra").open("/requests").expect(403);
        Walker edda = salon.as("edda").open("/requests").expect(200);
        String at = edda.page().select("a.row[href^=/requests/]").last().attr("href");
        assertThat(edda.open(at).text()).contains("My telephone number is <wrong>.", "Answer by");
        edda.send("form[action$=/close]", Map.of("answer", "")).expect(422);
        edda.send("form[action$=/close]", Map.of("answer", "It is put right.")).expect(200);
        assertThat(edda.text()).contains("Answered by Edda", "It is put right.");
        assertThat(phone.open("/answers/rights").text()).contains("Answered:", "It is put right.")
            .doesNotContain("must answer by");
    }

    @Test
    @DisplayName("GDPR 16: a contact corrected at the desk is shown beside what stood there before, until when and not in place of it")
    void whatStoodThereBefore() {
        Walker sanna = salon.as("sanna").open("/desk/clients/" + client()).expect(200);
        String before = sanna.only("input[name=family]").val();
        sanna.send("form[data-keep]", Map.of("family", "Brandt-" + before)).expect(200);
        assertThat(sanna.text()).contains("What stood here before, and until when");
        assertThat(sanna.only("section ul.lines li bdi").text()).contains(before).doesNotContain("Brandt-");
    }

    @Test
    void anExportThatFailsHalfWayIsNoWholeArchive() {
        var out = new ByteArrayOutputStream();
        assertThatThrownBy(() -> whole.write(UUID.randomUUID(), out)).isInstanceOf(RuntimeException.class);
        assertThat(out.size()).as("not even the end of an empty archive").isZero();
    }

    @Test
    void theMonthEndsOnTheSameDayOrOnTheLastOfAShorterOne() {
        assertThat(RequestKind.due(LocalDate.of(2026, 1, 31))).isEqualTo(LocalDate.of(2026, 2, 28));
        assertThat(RequestKind.due(LocalDate.of(2028, 1, 31))).isEqualTo(LocalDate.of(2028, 2, 29));
        assertThat(RequestKind.due(LocalDate.of(2026, 6, 15))).isEqualTo(LocalDate.of(2026, 7, 15));
    }

    @Test
    @DisplayName("GDPR 7(3): after the visit consent is taken back by the link, without a code, in one press; it is kept, the salon is told, and the answers serve no later visit")
    void takenBackAfterTheVisit() throws IOException {
        String link = knocking.link(visit);
        Answering.on(new Walker().open(link).send(BORN), Map.of()).agree().all().readBack().sign("Ottilie Brandt");
        closed();
        clock.move(Duration.ofDays(200));
        Walker other = new Walker().open(link).expect(200).send("main form", BORN);
        assertThat(other.at()).as("nothing that was answered, so no code").isEqualTo("/answers/after");
        assertThat(other.open("/answers/copy").at()).isEqualTo("/code");
        other.open("/answers/reaction").open(other.only("a.main").attr("href"))
            .send(Map.of("felt", "itch-after", "began", "unknown")).expect(200);
        other.open("/answers/withdraw").expect(200);
        assertThat(other.text()).contains("uses nothing you said", "stays locked away");
        other.send("main form", Map.of()).expect(200);
        assertThat(other.text()).contains("You took your consent back");
        assertThat(other.open("/answers/withdraw").at()).as("once").isEqualTo("/answers/after");
        assertThat(QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).state))
            .isEqualTo(State.WITHDRAWN);
        assertThat(salon.as("sanna").open("/desk").text()).contains("Consent was taken back after the visit");
        assertThat(salon.as("edda").open("/owner").text()).contains("consent taken back after the visit");
        JsonNode consents = json.readTree(new String(exported().get("consent-records.json"), StandardCharsets.UTF_8));
        assertThat(consents.findValuesAsText("event_type")).containsExactly("given", "withdrawn", "given",
            "withdrawn");
        UUID before = visit;
        visit = make.again(before);
        Walker again = knocking.come(visit, Map.of()).walker();
        assertThat(again.open("/answers/last-time").at()).as("nothing of last time is offered")
            .isNotEqualTo("/answers/last-time");
        signed();
        assertThat(salon.as("edda").open("/visits/" + visit).only("h1").text())
            .as("a reaction told before it weighs no more").doesNotStartWith("Prevents");
    }
}
