package foretress.note;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import foretress.Walker;
import foretress.assessment.Situation;
import foretress.assessment.Weight;
import foretress.hair.Growth;
import foretress.intake.Assessments;
import foretress.intake.Intake;
import foretress.intake.Knocking;
import foretress.ledger.Ledger;
import foretress.picture.Photos;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Topic;
import foretress.salon.ExampleLine;
import foretress.salon.OpenSalon;
import foretress.salon.ProductLine;
import foretress.salon.ProductLine.ParaGroup;
import foretress.salon.ProductLines;
import foretress.visit.Booked;
import foretress.visit.Booking;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import foretress.visit.Visits;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
@DisplayName("What only staff can write down: a letter, a doctor's word, a cut, the band of new growth")
class NotedTest {
    private static final LocalDate BORN = LocalDate.of(1965, 3, 4);
    private static final Map<String, List<String>> REACTED =
        Map.of("colour-reaction", List.of("yes"), "colour-reaction-what", List.of("itch-after"),
            "colour-reaction-soon", List.of("two-days"));
    private static final Map<String, List<String>> WOUND = Map.of("illness-lately", List.of("scalp-wound"));

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject ProductLines lines;
    @Inject Notes notes;
    @Inject NotedFacts facts;
    @Inject Assessments assessments;
    @Inject Intake intake;
    @Inject Visits visits;
    @Inject Ledger ledger;
    @Inject MovedClock clock;
    UUID visit;
    String at;

    @BeforeEach
    void open() {
        salon.open();
    }

    @AfterEach
    void putTheClockBack() {
        clock.reset();
    }

    private void comes(Map<String, List<String>> told) {
        visit = make.visit(BORN);
        at = "/visits/" + visit + "/noted";
        knocking.come(visit, told).agree().all().readBack().sign("Ottilie Brandt");
    }

    private Weight standing(String service) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Visit one = Visit.findById(visit);
            return assessments.of(one, intake.said(one)).standing(service).orElseThrow().weight();
        });
    }

    private List<Noted> kept() {
        return QuarkusTransaction.requiringNew().call(() -> notes.of(Visit.<Visit>findById(visit).client.id));
    }

    private ProductLine line(String name, String kind, ParaGroup group) {
        return QuarkusTransaction.requiringNew()
            .call(() -> lines.inUse().stream().filter(l -> l.name.equals(name)).findFirst()
                .orElseGet(
                    () -> lines.add(salon.stylist().id, ExampleLine.leaflet(name, kind, group, "acid violet 43"))));
    }

    private Walker send(String kind, Map<String, String> typed) {
        return salon.as("petra").open(at + "/" + kind).expect(200).send("form.form", typed);
    }

    private void plan(ProductLine line, String shade) {
        salon.as("petra").open("/desk/visits/" + visit + "/product")
            .send(Map.of("line", line.lineId.toString(), "shade", shade)).expect(200);
    }

    private Map<String, String> letter(ProductLine line, String outcome) {
        return new HashMap<>(Map.of("outcome", outcome, "line", line.lineId.toString(), "by", "Dr Invented", "written",
            today().minusDays(9).toString()));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(),
            QuarkusTransaction.requiringNew().call(() -> foretress.salon.Salon.the().zoneId()));
    }

    private Map<String, String> word(String about, String outcome, String who) {
        return Map.of("about", about, "outcome", outcome, "who", who, "by", "Practice Invented", "said",
            today().toString(), "way", "letter", "says", "The service of this visit, as the page asked");
    }

    @Test
    void aLetterTurnsADirectDyeWithoutPeroxideIntoRestrictsForAReactorAndNothingElse() {
        comes(REACTED);
        ProductLine rinse = line("Fernpool Rinse", "direct-dye", ParaGroup.NO);
        plan(rinse, "4-0");
        assertThat(standing("colour-direct")).isEqualTo(Weight.PREVENTS);
        Walker petra = send("letter", letter(rinse, "names-product")).expect(200);
        assertThat(petra.at()).isEqualTo(at);
        assertThat(petra.text()).contains("A dermatologist’s letter names the product", "Fernpool Rinse", "Dr Invented",
            "Restricts");
        assertThat(standing("colour-direct")).isEqualTo(Weight.RESTRICTS);
        for (String other : List.of("colour-whole", "colour-roots", "colour-demi", "lash-brow-tint")) {
            assertThat(standing(other)).as(other).isEqualTo(Weight.PREVENTS);
        }
        assertThat(petra.page().select("table tbody tr th").eachText())
            .containsExactlyInAnyOrder("Colour without developer", "Wash-out colour",
                "Fashion colour on lightened hair");
        plan(line("Other Rinse", "direct-dye", ParaGroup.NO), "4-0");
        assertThat(standing("colour-direct")).as("a letter names one product").isEqualTo(Weight.PREVENTS);
        assertThat(salon.as("petra").open(at).text()).contains("not planned with this very product");
    }

    @Test
    void aLetterOpensNoDyeOfTheGroupNoneWithPeroxideAndNoneNobodyKnowsOf() {
        comes(REACTED);
        for (ProductLine line : List.of(line("Larkmoss Foam", "oxidative-dye", ParaGroup.NO),
            line("Group Rinse", "direct-dye", ParaGroup.YES),
            line("Some Rinse", "direct-dye", ParaGroup.UNKNOWN))) {
            Walker petra = send("letter", letter(line, "names-product")).expect(422);
            assertThat(petra.only(".mistakes li").text()).startsWith(line.name + " holds peroxide");
            assertThat(petra.only("#by").val()).isEqualTo("Dr Invented");
            assertThat(petra.only("#line option[selected]").val()).isEqualTo(line.lineId.toString());
        }
        assertThat(kept()).isEmpty();
    }

    @Test
    void anotherShadeThanTheLettersIsNotOpenedAndALetterAgainstClosesIt() {
        comes(REACTED);
        ProductLine rinse = line("Fernpool Rinse", "direct-dye", ParaGroup.NO);
        plan(rinse, "6-0");
        Map<String, String> plum = letter(rinse, "names-product");
        plum.put("shade", "4-0");
        send("letter", plum).expect(200);
        assertThat(standing("colour-direct")).isEqualTo(Weight.PREVENTS);
        send("letter", letter(rinse, "names-product")).expect(200);
        assertThat(standing("colour-direct")).isEqualTo(Weight.RESTRICTS);
        send("letter", letter(rinse, "advises-against")).expect(200);
        assertThat(standing("colour-direct")).isEqualTo(Weight.PREVENTS);
    }

    @Test
    void aDoctorsWordLiftsTheDemandItWasAskedForAndAPharmacistsYesDoesNot() {
        comes(WOUND);
        assertThat(salon.as("petra").open(at).text()).contains("asks for a doctor’s word");
        Walker pharmacist = send("word", word("scalp-wound", "with-care", "pharmacist")).expect(422);
        assertThat(pharmacist.only(".mistakes li").text()).contains("A pharmacist’s yes opens nothing");
        assertThat(pharmacist.page().select("input[name=about][value=scalp-wound]").hasAttr("checked")).isTrue();
        assertThat(standing("perm-alkaline")).isEqualTo(Weight.TEST_FIRST);
        Walker petra = send("word", word("scalp-wound", "with-care", "doctor")).expect(200);
        assertThat(standing("perm-alkaline")).isEqualTo(Weight.RESTRICTS);
        assertThat(petra.text()).contains("A doctor said it may go ahead with care",
            "Scalp that was wounded or operated on");
        send("word", word("scalp-wound", "advised-against", "pharmacist")).expect(200);
        assertThat(standing("perm-alkaline")).isEqualTo(Weight.PREVENTS);
    }

    @Test
    void aYesOfLongAgoIsRefusedAndANoOfLongAgoIsKept() {
        comes(WOUND);
        Map<String, String> old = new HashMap<>(word("scalp-wound", "with-care", "doctor"));
        old.put("said", today().minusMonths(3).minusDays(1).toString());
        assertThat(send("word", old).expect(422).only(".mistakes li").text()).contains("more than 3 months ago");
        old.put("outcome", "advised-against");
        send("word", old).expect(200);
        assertThat(standing("perm-alkaline")).isEqualTo(Weight.PREVENTS);
    }

    @Test
    @DisplayName("R37: what a client passes on opens nothing; by letter or telephone it says what is meant, and until when")
    void whatAClientPassesOnOpensNothingAndAYesUntilTheDayBeforeTheServiceNeither() {
        comes(WOUND);
        Map<String, String> typed = new HashMap<>(word("scalp-wound", "with-care", "doctor"));
        typed.put("way", "client");
        assertThat(send("word", typed).expect(422).only(".mistakes li").text()).contains("opens nothing here");
        typed.put("way", "phone");
        typed.put("until", today().minusDays(1).toString());
        Walker over = send("word", typed).expect(422);
        assertThat(over.only(".mistakes li").text()).contains("That day is over");
        assertThat(over.only("#says").text()).contains("as the page asked");
        typed.put("until", today().toString());
        assertThat(send("word", typed).expect(200).text()).contains("By telephone", "as the page asked", "Until ");
        assertThat(standing("perm-alkaline")).as("the service is later than that").isEqualTo(Weight.TEST_FIRST);
        typed.put("until", today().plusYears(1).toString());
        Walker petra = send("word", typed).expect(200);
        assertThat(standing("perm-alkaline")).isEqualTo(Weight.RESTRICTS);
        assertThat(petra.page().select("form[action$=/paper]")).as("a letter can be added").isNotEmpty();
    }

    @Test
    @DisplayName("R37: a doctor's word on a medicine is asked for anew when the medicines are told otherwise")
    void aWordOnAMedicineIsAskedForAnewWhenTheMedicinesAreOthers() {
        comes(Map.of());
        takes("ciclosporin", "now");
        assertThat(salon.as("petra").open(at).text()).contains("asks for a doctor’s word");
        send("word", word("immune-medicine", "with-care", "doctor")).expect(200);
        assertThat(found()).contains("dye-with-immune-medicine").doesNotContain("skin-test-masked-by-immune-medicine");
        takes("ciclosporin", "week");
        assertThat(found()).contains("skin-test-masked-by-immune-medicine");
    }

    private void takes(String name, String last) {
        QuarkusTransaction.requiringNew().run(() -> {
            Visit one = Visit.findById(visit);
            Topic topic = intake.topics(one, intake.said(one)).stream()
                .filter(t -> t.questions().stream().anyMatch(q -> q.id().equals("medicines"))).findFirst()
                .orElseThrow();
            var list = new foretress.questionnaire.Answer.Medicines(List.of(new foretress.questionnaire.Medicine(name,
                foretress.questionnaire.Medicine.NOT_ASKED, "mouth", last)));
            intake.record(visit, topic, intake.said(one).with("medicines", list), "en");
        });
    }

    private List<String> found() {
        return QuarkusTransaction.requiringNew().call(() -> {
            Visit one = Visit.findById(visit);
            return assessments.of(one, intake.said(one)).findings().stream().map(f -> f.ruleId()).toList();
        });
    }

    @Test
    void aWordIsAskedForAnewWhenTheAnswerItIsAboutWasChanged() {
        comes(WOUND);
        send("word", word("scalp-wound", "with-care", "doctor")).expect(200);
        assertThat(standing("perm-alkaline")).isEqualTo(Weight.RESTRICTS);
        QuarkusTransaction.requiringNew().run(() -> {
            Visit one = Visit.findById(visit);
            Topic topic = intake.topics(one, intake.said(one)).stream()
                .filter(t -> t.questions().stream().anyMatch(q -> q.id().equals("illness-lately"))).findFirst()
                .orElseThrow();
            Answers changed = intake.said(one).with("illness-lately",
                new foretress.questionnaire.Answer.Chosen(List.of("scalp-wound", "fever")));
            intake.record(visit, topic, changed, "en");
        });
        assertThat(standing("perm-alkaline")).isEqualTo(Weight.TEST_FIRST);
    }

    @Test
    void aWordOfAnEarlierVisitIsAskedForAgainAndAYesOfThisOneLiftsWhatWasFoundThen() {
        comes(Map.of("g6pd", List.of("yes")));
        UUID first = visit;
        send("word", word("g6pd", "with-care", "doctor")).expect(200);
        again(first);
        assertThat(found()).contains("plant-colour-and-g6pd");
        assertThat(salon.as("petra").open(at).text()).contains("Given for another visit");
        send("word", word("g6pd", "with-care", "doctor")).expect(200);
        assertThat(found()).contains("plant-colour-with-g6pd").doesNotContain("plant-colour-and-g6pd");
        assertThat(standing("plant-colour")).as("R28: the skin test of its own is still to come")
            .isEqualTo(Weight.TEST_FIRST);
        assertThat(found()).contains("plant-colour-owes-a-skin-test");
    }

    @Test
    @DisplayName("R22: the product named for a smoothing visit tells what it works with; unnamed, any of it may be in there")
    void theProductOfASmoothingVisitTellsItsKind() {
        comes(Map.of());
        UUID first = visit;
        again(first, new Booked("straighten-keratin", List.of("straighten-keratin")));
        assertThat(standing("straighten-keratin")).isEqualTo(Weight.RESTRICTS);
        plan(line("Fernpool Sleek", "smoothing-glyoxylic", ParaGroup.NO), "one");
        assertThat(standing("straighten-keratin")).isEqualTo(Weight.PREVENTS);
        plan(line("Fernpool Calm", "smoothing-other", ParaGroup.NO), "one");
        assertThat(standing("straighten-keratin")).isLessThan(Weight.RESTRICTS);
        plan(line("Fernpool Bonus", "keratin", ParaGroup.NO), "one");
        assertThat(standing("straighten-keratin")).isEqualTo(Weight.RESTRICTS);
    }

    private void again(UUID first) {
        again(first, new Booked("plant-colour", List.of("plant-colour")));
    }

    private void again(UUID first, Booked service) {
        visit = QuarkusTransaction.requiringNew().call(() -> {
            Visit earlier = Visit.findById(first);
            LocalDateTime wall = today().plusDays(40).atTime(LocalTime.of(10, 0));
            return visits.book(new Booking(UUID.randomUUID().toString(), earlier.client.id, wall, earlier.zone(),
                wall.atZone(earlier.zone()).toInstant(),
                salon.stylist().id, List.of(service))).id;
        });
        at = "/visits/" + visit + "/noted";
        Map<String, List<String>> told =
            service.serviceId().equals("plant-colour") ? Map.of("g6pd", List.of("yes")) : Map.of();
        knocking.come(visit, told).agree().all().readBack().sign("Ottilie Brandt");
    }

    @Test
    void aCutAndAMeasuredBandReachTheStrandMap() {
        comes(Map.of());
        send("cut", Map.of("day", today().minusDays(30).toString(), "left", "12,5")).expect(200);
        send("growth", Map.of("coloured", today().minusDays(91).toString(), "cm", "3")).expect(200);
        QuarkusTransaction.requiringNew().run(() -> {
            Situation situation = assessments.situation(Visit.findById(visit), intake.said(Visit.findById(visit)));
            assertThat(situation.cuts()).containsExactly(new foretress.hair.Cut(today().minusDays(30), 12.5));
            // 3 cm in 91 days, 2.99 months: 1.003 cm a month, by the ruler 0.903 to 1.104.
            assertThat(situation.growth().lowest()).isBetween(0.90, 0.91);
            assertThat(situation.growth().highest()).isBetween(1.10, 1.11);
        });
        assertThat(salon.as("petra").open(at).text()).contains("12.5 cm left on", "3 cm grown from");
    }

    @ParameterizedTest
    @CsvSource({ "91, 12, cm a month; published growth lies between 0.5 and 1.4", "91, 0.5, cm a month",
        "55, 2, at least 8 weeks old; this one is 7", "91, two, “two” is no length" })
    void aBandThatNoHairGrowsIsASlipAndKeepsWhatWasTyped(int days, String cm, String said) {
        comes(Map.of());
        Walker petra = send("growth", Map.of("coloured", today().minusDays(days).toString(), "cm", cm)).expect(422);
        assertThat(petra.only(".mistakes li").text()).contains(said);
        assertThat(petra.only("#cm").val()).isEqualTo(cm);
        assertThat(QuarkusTransaction.requiringNew().call(() -> facts.growth(Visit.findById(visit)))).isEmpty();
    }

    @Test
    void whatIsMissingOrStillToComeIsSaidFieldByField() {
        comes(Map.of());
        assertThat(send("letter", Map.of()).expect(422).page().select(".mistakes li")).hasSize(3);
        assertThat(send("word", Map.of()).expect(422).page().select(".mistakes li")).hasSize(7);
        Walker petra = send("cut", Map.of("day", today().plusDays(1).toString(), "left", "400")).expect(422);
        assertThat(petra.page().select(".mistakes li").eachText()).hasSize(2).first().asString()
            .contains("still to come");
        assertThat(petra.only("#left").val()).isEqualTo("400");
    }

    @Test
    void aDoubleTapKeepsOneAndEachIsInTheLedger() {
        comes(Map.of());
        Walker petra = salon.as("petra").open(at + "/cut").expect(200);
        List<Map.Entry<String, String>> fields = new ArrayList<>(
            petra.fields("form.form").stream().filter(f -> !List.of("day", "left").contains(f.getKey())).toList());
        fields.add(Map.entry("day", today().minusDays(3).toString()));
        fields.add(Map.entry("left", "20"));
        petra.post(at + "/cut", fields).expect(200);
        petra.post(at + "/cut", fields).expect(200);
        assertThat(kept()).hasSize(1);
    }

    @Test
    void oneEnteredInErrorStaysStruckOutAndCountsNoMore() {
        comes(WOUND);
        send("word", word("scalp-wound", "with-care", "doctor")).expect(200);
        Walker petra = salon.as("petra").open(at);
        petra.send("form[action$=/strike]", Map.of("why", "")).expect(422);
        assertThat(petra.only(".mistakes li").text()).contains("why it was an error");
        petra.send("form[action$=/strike]", Map.of("why", "Said by somebody else’s doctor")).expect(200);
        assertThat(petra.text()).contains("Entered in error: Said by somebody else’s doctor",
            "A doctor said it may go ahead with care");
        assertThat(petra.page().select("form[action$=/strike]")).isEmpty();
        assertThat(standing("perm-alkaline")).isEqualTo(Weight.TEST_FIRST);
    }

    @Test
    void theLetterItselfIsAPhotoOrAPdfAndNothingElse() {
        comes(REACTED);
        send("letter", letter(line("Fernpool Rinse", "direct-dye", ParaGroup.NO), "advises-against")).expect(200);
        Walker petra = salon.as("petra").open(at);
        String action = petra.only("form[action$=/paper]").attr("action");
        assertThat(upload(petra, action, "letter.pdf", "a text that calls itself a PDF".getBytes())).isEqualTo(422);
        assertThat(upload(petra, action, "letter.pdf", "%PDF-1.7 an invented letter".getBytes())).isEqualTo(303);
        assertThat(upload(petra, action, "letter.jpg", Photos.withExif(40, 30, 1))).isEqualTo(303);
        petra.open(at).expect(200);
        String photo = petra.page().select("a[href*=/papers/]").last().attr("href");
        assertThat(new String(petra.open(photo).expect(200).response().asByteArray(), StandardCharsets.ISO_8859_1))
            .doesNotContain(Photos.WHERE);
        petra.open(at).expect(200);
        String href = petra.page().selectFirst("a[href*=/papers/]").attr("href");
        Response answer = RestAssured.given().redirects().follow(false).cookies(petra.cookies()).get(href);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.contentType()).isEqualTo("application/pdf");
        assertThat(answer.header("Content-Disposition")).as("R64: a page never shows it")
            .isEqualTo("attachment; filename=\"letter.pdf\"");
        assertThat(answer.header("Content-Security-Policy")).isEqualTo("sandbox; default-src 'none'");
        assertThat(answer.header("X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(answer.asByteArray()).asString().startsWith("%PDF-1.7");
        assertThat(
            RestAssured.given().redirects().follow(false).cookies(salon.as("sanna").cookies()).get(href).statusCode())
            .isEqualTo(403);
    }

    private static int upload(Walker walker, String action, String name, byte[] bytes) {
        String token = walker.page().selectFirst("form[action$=/paper] [name=csrf-token]").val();
        return RestAssured.given().redirects().follow(false).cookies(walker.cookies())
            .header("Origin", RestAssured.baseURI + ":" + RestAssured.port)
            .header("Accept", "text/html").multiPart("csrf-token", token)
            .multiPart("paper", name, bytes, "application/pdf").post(action).statusCode();
    }

    @Test
    void theDeskSeesNoneOfIt() {
        comes(Map.of());
        salon.as("sanna").open(at).expect(403);
        salon.as("sanna").open(at + "/word").expect(403);
    }

    @Test
    void aGrowthThatWasMeasuredTooEarlyNarrowsNothing() {
        assertThat(Growth.plausible(12, LocalDate.of(2026, 1, 1), LocalDate.of(2026, 4, 1))).isFalse();
        assertThat(Growth.plausible(3, LocalDate.of(2026, 1, 1), LocalDate.of(2026, 4, 1))).isTrue();
        assertThat(Growth.plausible(0.9, LocalDate.of(2026, 1, 1), LocalDate.of(2026, 4, 1)))
            .as("0.3 a month, 0.4 by the ruler").isFalse();
        assertThat(Growth.plausible(1.2, LocalDate.of(2026, 1, 1), LocalDate.of(2026, 4, 1)))
            .as("0.4 a month, 0.5 by the ruler").isTrue();
    }
}
