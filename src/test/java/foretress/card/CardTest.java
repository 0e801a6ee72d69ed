package foretress.card;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import foretress.Walker;
import foretress.assessment.TestFact;
import foretress.bench.GivenTests;
import foretress.consent.ArchiveJudge;
import foretress.consent.Read;
import foretress.intake.Answering;
import foretress.intake.Knocking;
import foretress.ledger.Ledger;
import foretress.picture.Photos;
import foretress.salon.OpenSalon;
import foretress.visit.Booked;
import foretress.visit.Booking;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import foretress.visit.Visits;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What stays on a client's card and what the next visit knows of it, through the real pages. */
@QuarkusTest
class CardTest {
    private static final String CLOSING = "form[action$=/closing]";
    private static final LocalDate BORN = LocalDate.of(1965, 3, 4);

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject GivenTests tests;
    @Inject Visits visits;
    @Inject Ledger ledger;
    @Inject MovedClock clock;

    @BeforeEach
    void open() {
        salon.open();
    }

    @AfterEach
    void backToNow() {
        clock.reset();
    }

    private void said(UUID visit, Map<String, List<String>> told) {
        knocking.come(visit, told).agree().all().readBack().sign("Ottilie Brandt");
    }

    private UUID clientOf(UUID visit) {
        return QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).client.id);
    }

    /** A visit with a colour that was decided to go ahead. */
    private UUID decided() {
        UUID visit = make.visit(BORN);
        said(visit, Map.of());
        clock.move(Duration.ofDays(5));
        LocalDate day = LocalDate.ofInstant(clock.instant(),
            QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).zone()));
        tests.give(visit, TestFact.sound("skin-test", "negative", day.minusDays(3), day.minusDays(1)));
        Walker walker = salon.as("petra").open("/visits/" + visit + "/today");
        Answering asking = Answering.on(walker, Map.of());
        for (int i = 0; i < 40 && !walker.page().select("main form").isEmpty(); i++) {
            asking.page();
        }
        walker.open("/visits/" + visit + "/bench/porosity-test")
            .send(Map.of("roots", "AVERAGE", "mid-lengths", "AVERAGE", "ends", "AVERAGE"))
            .expect(200);
        walker.open("/visits/" + visit + "/decision").send("form[action$=/hand-over]", Map.of());
        walker.send(Map.of("day", "4", "month", "3", "year", "1965"));
        Answering.on(walker, Map.of()).readBack().sign("Ottilie Brandt");
        walker.send("form[action$=give-back]", Map.of()).send("main form",
            Map.of("login", "petra", "password", OpenSalon.PASSWORD));
        walker.send("form[action$=/decision]",
            Map.of("verdict-0", "proceed-with-changes", "conditions-0", "Ends left out for ten minutes."));
        return visit;
    }

    private UUID closed() {
        UUID visit = decided();
        salon.as("petra").open("/visits/" + visit + "/closing").send(CLOSING, said(Map.of()));
        return visit;
    }

    private static Map<String, String> said(Map<String, String> other) {
        Map<String, String> said =
            new HashMap<>(Map.of("course-0", "as-planned", "zone-0", "whole", "product-0", "Larkmoss", "shade-0", "4-0",
                "batch-0", "B117", "strength-0", "6 %", "minutes-0", "35", "strand", "good"));
        said.putAll(Map.of("wrong", "no", "condition", "Even and soft.", "notes", "Likes it lighter."));
        said.putAll(other);
        return said;
    }

    private State state(UUID visit) {
        return QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).state);
    }

    @DisplayName("R3: an empty form closes nothing, and nothing is chosen beforehand")
    @Test
    void nothingClosesUnsaid() {
        UUID visit = decided();
        Walker stylist = salon.as("petra").open("/visits/" + visit + "/closing").expect(200);
        assertThat(stylist.page().select("main input[checked]")).isEmpty();
        stylist.send(CLOSING, Map.of()).expect(422);
        assertThat(stylist.text()).contains("Say how it went, or that it was not done.",
            "Say whether something went wrong.");
        stylist.send(CLOSING, Map.of("course-0", "as-planned", "wrong", "yes", "product-0", "Larkmoss")).expect(422);
        assertThat(stylist.text()).contains("Say how the strand test came out", "Tick what it was.",
            "Say when it showed.", "Say what was done about it.", "Say where on the hair");
        assertThat(stylist.only("[name=product-0]").val()).as("what was typed stays").isEqualTo("Larkmoss");
        assertThat(state(visit)).isEqualTo(State.DECIDED);
        stylist.send(CLOSING, Map.of("course-0", "not-done", "wrong", "no", "product-0", "")).expect(200);
        assertThat(state(visit)).isEqualTo(State.CLOSED);
        assertThat(stylist.text()).contains("Not done", "Nothing went wrong, it was said")
            .doesNotContain("Strand test: none made");
    }

    @Test
    @DisplayName("who reads Spanish finds no English on the card, nor on any page that links lead to from it and from the tabs")
    void noEnglishIsLeftForWhoeverReadsSpanish() {
        UUID visit = closed();
        String card = "/clients/" + clientOf(visit) + "/card";
        Walker edda = salon.as("edda").open("/password").send("#language", Map.of("language", "es")).expect(200);
        try {
            var left = new EnglishLeft(edda, List.of("Ends left out for ten minutes.", "Even and soft.",
                "Likes it lighter.", "Alder & Wren"));
            assertThat(left.from(card, "/visits/" + visit, "/day", "/desk", "/owner")).isEmpty();
            assertThat(left.pages()).hasSizeGreaterThan(15);
            String printed = Read.body(edda.open(card + "/paper").response().asByteArray());
            assertThat(printed).contains("Ficha").doesNotContain("Record card", "Visit of", "Printed");
            assertThat(edda.open("/owner?act=ficha+le%C3%ADda").text()).contains("ficha leída")
                .doesNotContain("consulta leída");
        } finally {
            edda.open("/password").send("#language", Map.of("language", "en"));
        }
    }

    @DisplayName("R3: a closing is put right in a new version; the old one stays to be read, and of two tabs neither writes over the other")
    @Test
    void aClosingIsPutRight() {
        UUID visit = closed();
        Walker stylist = salon.as("petra").open("/visits/" + visit + "/closing").expect(200);
        assertThat(stylist.only("[name=minutes-0]").val()).isEqualTo("35");
        Walker other = salon.as("edda").open("/visits/" + visit + "/closing").expect(200);
        stylist.send(CLOSING, Map.of("minutes-0", "30")).expect(422);
        assertThat(stylist.text()).contains("Say why it is put right.");
        List<Map.Entry<String, String>> twice = new ArrayList<>(stylist.fields(CLOSING));
        twice.removeIf(field -> field.getKey().equals("why"));
        twice.add(Map.entry("why", "The clock said 30."));
        stylist.post("/visits/" + visit + "/closing", twice).expect(200);
        stylist.post("/visits/" + visit + "/closing", twice).expect(200);
        assertThat(stylist.text()).contains("Put right: The clock said 30.", "30 min", "Kept before", "35 min");
        assertThat(stylist.page().select("article.visit summary").eachText().stream()
            .filter(words -> words.startsWith("Kept before"))).as("sent twice is once").hasSize(1);
        other.send(CLOSING, Map.of("minutes-0", "40", "why", "I remember forty.")).expect(409);
        assertThat(other.text()).contains("Petra Lind kept another version while you were writing");
        assertThat(other.only("[name=minutes-0]").val()).isEqualTo("40");
        other.send(CLOSING, Map.of()).expect(200);
        assertThat(other.text()).contains("Put right: I remember forty.", "40 min", "30 min", "35 min");
    }

    @DisplayName("R56: planned product, strength and time stand in the form; what was different says what had been planned; one more line is one more line")
    @Test
    void thePlanStandsInTheForm() {
        UUID visit = decided();
        Walker stylist = salon.as("petra").open("/visits/" + visit + "/bench/strand-test")
            .send(Map.of("product", "Larkmoss 5-0", "strength", "20", "unit", "volumes", "minutes", "35"));
        stylist.open("/visits/" + visit + "/closing").expect(200);
        assertThat(stylist.only("[name=product-0]").val()).isEqualTo("Larkmoss 5-0");
        assertThat(stylist.only("[name=strength-0]").val()).isEqualTo("6 %");
        assertThat(stylist.only("[name=minutes-0]").val()).isEqualTo("35");
        assertThat(stylist.page().select(".differs")).isEmpty();
        stylist.send(CLOSING, Map.of("minutes-0", "30", "more", "1")).expect(200);
        assertThat(stylist.only(".differs").text()).contains("planned 35");
        assertThat(stylist.page().select("fieldset.used")).hasSize(2);
        stylist.send(CLOSING,
            Map.of("course-0", "changed", "zone-0", "regrowth", "zone-1", "ends", "product-1", "Larkmoss Soft",
                "ratio-1", "1 : 2", "grams-1", "20",
                "strand", "good", "wrong", "no", "condition", "Even."))
            .expect(200);
        assertThat(stylist.text()).contains("Roots, Larkmoss 5-0, 6 %, 30 min (planned 35)",
            "Ends, Larkmoss Soft, 1 : 2, 20 g", "Changed on the way");
    }

    @DisplayName("R47: what staff saw go wrong stands at the next visit, though the client says no; put right, it stands no more")
    @Test
    void whatWentWrongFeedsTheNextVisit() {
        UUID visit = decided();
        Walker stylist = salon.as("petra").open("/visits/" + visit + "/closing");
        stylist.send(CLOSING,
            said(Map.of("wrong", "yes", "wrong-kind", "swelling", "wrong-when", "two-days", "wrong-words",
                "Both eyelids.",
                "wrong-helped", "Told to see a doctor at once.")))
            .expect(200);
        assertThat(stylist.text()).contains("Something went wrong: Swelling. Within two days.", "Both eyelids.",
            "Told to see a doctor at once.");
        UUID next = another(clientOf(visit));
        said(next, Map.of());
        stylist.open("/visits/" + next).expect(200);
        assertThat(stylist.only("h1").text()).startsWith("Prevents");
        assertThat(stylist.text()).contains("Found at the visit of");
        stylist.open("/visits/" + visit + "/closing")
            .send(CLOSING, Map.of("wrong", "no", "why", "Written to the wrong client.")).expect(200);
        assertThat(stylist.open("/visits/" + next).only("h1").text()).doesNotStartWith("Prevents");
    }

    @DisplayName("photos before and after are kept only with leave, without where they were taken, and leave taken back takes them away")
    @Test
    void photosOfTheHair() {
        UUID visit = closed();
        Walker stylist = salon.as("petra").open("/visits/" + visit + "/hair").expect(200);
        assertThat(photo(stylist, visit, "BEFORE", "")).isEqualTo(422);
        assertThat(photo(stylist, visit, "", "yes")).isEqualTo(422);
        assertThat(photo(stylist, visit, "BEFORE", "yes")).isEqualTo(303);
        assertThat(photo(stylist, visit, "AFTER", "yes")).isEqualTo(303);
        stylist.open("/clients/" + clientOf(visit) + "/card").expect(200);
        assertThat(stylist.page().select("article.visit img").eachAttr("alt").get(0)).startsWith("Before");
        String href = stylist.page().selectFirst("article.visit img").attr("src");
        Response seen = stylist.open(href).expect(200).response();
        assertThat(seen.contentType()).isEqualTo("image/jpeg");
        assertThat(new String(seen.asByteArray(), StandardCharsets.ISO_8859_1)).doesNotContain(Photos.WHERE);
        salon.as("sanna").open(href).expect(403);
        stylist.open("/visits/" + visit + "/hair").send("form[action$=/remove]", Map.of()).expect(200);
        stylist.open(href).expect(404);
    }

    private static int photo(Walker walker, UUID visit, String moment, String leave) {
        return RestAssured.given().redirects().follow(false).cookies(walker.cookies())
            .header("Origin", RestAssured.baseURI + ":" + RestAssured.port)
            .header("Accept", "text/html").multiPart("csrf-token", walker.page().selectFirst("[name=csrf-token]").val())
            .multiPart("moment", moment)
            .multiPart("leave", leave).multiPart("photo", "IMG_1.jpg", Photos.withExif(40, 30, 6), "image/jpeg")
            .post("/visits/" + visit + "/hair/photo").statusCode();
    }

    private UUID another(UUID client) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Visit first = Visit.<Visit>find("client.id", client).firstResult();
            LocalDateTime wall =
                LocalDateTime.ofInstant(clock.instant(), first.zone()).plusDays(3).withHour(14).withMinute(0);
            return visits.book(new Booking(UUID.randomUUID().toString(), client, wall, first.zone(),
                wall.atZone(first.zone()).toInstant(),
                first.stylistId, List.of(new Booked("highlights", List.of("lighten", "tone"))))).id;
        });
    }

    @DisplayName("what was done is on the card and on the strand map, and the next visit knows it without asking")
    @Test
    void whatWasDoneBecomesHistory() {
        UUID client = clientOf(closed());
        clock.move(Duration.ofDays(90));
        Walker card = salon.as("petra").open("/clients/" + client + "/card").expect(200);
        assertThat(card.text()).contains("Whole hair, Larkmoss, shade 4-0, batch B117, 6 %, 35 min", "Even and soft.",
            "Ends left out for ten minutes.", "Petra Lind",
            "Consent 1", "Consent 2", "Porosity test: average");
        assertThat(card.page().select(".map").text()).contains("Lasting salon colour");
        UUID next = another(client);
        said(next, Map.of());
        Walker stylist = salon.as("petra").open("/visits/" + next).expect(200);
        assertThat(stylist.page().select(".map").text()).contains("Lasting salon colour");
        assertThat(stylist.text()).contains("What changed since the visit of");
        assertThat(salon.as("sanna").open("/clients/" + client + "/card").response().statusCode()).as("the desk")
            .isEqualTo(403);
    }

    @DisplayName("A31, D1: the card and one visit of it print as PDF/A-2b on A4, with the client's name and no word about health in its title")
    @Test
    void theCardPrints() throws IOException {
        UUID visit = closed();
        UUID client = clientOf(visit);
        Walker stylist = salon.as("petra");
        byte[] whole = stylist.open("/clients/" + client + "/card/paper").expect(200).response().asByteArray();
        byte[] one = stylist.open("/clients/" + client + "/card/paper/" + visit).expect(200).response().asByteArray();
        Files.createDirectories(Path.of("target/pictures"));
        Files.write(Path.of("target/pictures/card.pdf"), whole);
        Files.write(Path.of("target/pictures/card-visit.pdf"), one);
        assertThat(ArchiveJudge.brokenRules(whole)).isEmpty();
        assertThat(ArchiveJudge.brokenRules(one)).isEmpty();
        assertThat(Read.plain(Read.body(whole))).contains(Read.plain("Larkmoss, shade 4-0, batch B117, 6 %, 35 min"),
            Read.plain("Ends left out for ten minutes."));
        assertThat(Read.plain(Read.body(one))).contains(Read.plain("Answers"), Read.plain("Larkmoss"));
        assertThat(stylist.open("/clients/" + client + "/card/paper/" + make.visit(BORN)).response().statusCode())
            .as("another client's visit").isEqualTo(404);
    }

    @DisplayName("two records of one person become one: both histories stay, and the heavier finding stands")
    @Test
    void mergingKeepsBothHistoriesAndTheHeavierFinding() {
        UUID reacted = make.visit(BORN);
        said(reacted,
            Map.of("colour-reaction", List.of("yes"), "colour-reaction-what", List.of("swelling", "breathing")));
        UUID harmless = make.visit(BORN.plusYears(1));
        knocking.come(harmless, BORN.plusYears(1), Map.of()).agree().all().readBack().sign("Ottilie Brandt");
        Walker stylist = salon.as("petra").open("/visits/" + harmless).expect(200);
        assertThat(stylist.only("h1").text()).startsWith("Test first");
        stylist.open("/clients/" + clientOf(harmless) + "/merge?with=" + clientOf(reacted)).expect(200);
        assertThat(stylist.text()).contains("The birth dates differ", "Both records side by side",
            "What stands afterwards", "Prevents");
        String keep = clientOf(harmless).toString();
        stylist.send("form[action$=/merge]", Map.of("keep", keep)).expect(422);
        stylist.send("form[action$=/merge]", Map.of("keep", keep, "sure", "yes")).expect(200);
        assertThat(stylist.text()).contains("Both records are one now.", "Made of two records");
        assertThat(clientOf(reacted)).isEqualTo(clientOf(harmless));
        assertThat(stylist.page().select("article.visit")).hasSize(2);
        assertThat(stylist.text()).as("what was sealed for the other record is still read").contains("Prevents");
        stylist.open("/visits/" + harmless).expect(200);
        assertThat(stylist.only("h1").text()).startsWith("Prevents");
        assertThat(stylist.text()).contains("Found at the visit of");
        clock.move(Duration.ofDays(5));
        Walker owner = salon.as("edda").open("/visits/" + harmless + "/decision").expect(200);
        assertThat(owner.page().select("input[name=verdict-0]").eachAttr("value")).as("nobody can go against it")
            .containsExactly("postpone", "decline");
        assertThat(QuarkusTransaction.requiringNew().call(ledger::firstBroken)).isEmpty();
    }

    @Test
    void theSameMergeSentTwiceIsOne() {
        UUID one = clientOf(make.visit(BORN));
        UUID other = clientOf(make.visit(BORN));
        Walker stylist = salon.as("petra").open("/clients/" + one + "/merge?with=" + other).expect(200);
        List<Map.Entry<String, String>> fields = new ArrayList<>(stylist.fields("form[action$=/merge]"));
        fields.addAll(new HashMap<>(Map.of("keep", one.toString(), "sure", "yes")).entrySet());
        stylist.post("/clients/" + one + "/merge", fields).expect(200);
        stylist.post("/clients/" + one + "/merge", fields).expect(200);
        assertThat(stylist.at()).isEqualTo("/clients/" + one + "/card?said=merged");
        assertThat(stylist.open("/clients/" + other + "/card").text()).contains("Made of two records");
    }
}
