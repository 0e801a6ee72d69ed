package foretress.bench;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import foretress.Walker;
import foretress.card.OldFiles;
import foretress.intake.Knocking;
import foretress.picture.Photos;
import foretress.salon.OpenSalon;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Elasticity, porosity, trials, length, photos and striking out, over HTTP. */
@QuarkusTest
class BenchHairTest {
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject BenchRecords tests;
    @Inject BenchFacts facts;
    @Inject OldFiles old;
    @Inject MovedClock clock;
    @Inject MovedNanos nanos;
    UUID visit;
    String bench;

    @BeforeEach
    void aClientHasAnswered() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
        bench = "/visits/" + visit + "/bench";
        knocking.come(visit, Map.of()).agree().all().readBack().sign("Ottilie Brandt");
    }

    @AfterEach
    void putTheClockBack() {
        clock.reset();
    }

    private static Map<String, String> hair(String part, String rest, String stretched, String ending) {
        return Map.of("part", part, "wet", "wet", "rest", rest, "stretched", stretched, "ending", ending);
    }

    private Walker pull(Walker walker, String part, String rest, String stretched, String ending) {
        return walker.send("form[action*=elasticity-test]", hair(part, rest, stretched, ending));
    }

    private List<BenchRecord> made() {
        return QuarkusTransaction.requiringNew().call(() -> tests.ofVisit(visit));
    }

    private List<String> outcomes() {
        return QuarkusTransaction.requiringNew()
            .call(() -> facts.tests(Visit.findById(visit)).stream().map(f -> f.test() + " " + f.outcome()).toList());
    }

    @Test
    void threePartsThatSpringBackPass() {
        Walker petra = salon.as("petra").open(bench + "/elasticity-test").expect(200);
        pull(petra, "ROOTS", "50", "65", "SPRANG_BACK").expect(200);
        assertThat(petra.text()).contains("Good so far", "A pass also needs hairs from: Mid-lengths, Ends");
        assertThat(outcomes()).isEmpty();
        pull(petra, "MID_LENGTHS", "50", "65", "SPRANG_BACK").expect(200);
        pull(petra, "ENDS", "50", "65,5", "SPRANG_BACK").expect(200);
        assertThat(outcomes()).containsExactly("elasticity-test pass", "elasticity-of-roots pass");
        pull(petra, "ENDS", "50", "55", "BROKE").expect(200);
        assertThat(petra.text()).contains("10 % longer", "Fail", "What this result changes");
        assertThat(outcomes()).containsExactly("elasticity-test fail", "elasticity-of-roots pass");
        assertThat(petra.open(bench).text()).contains("Prevents");
    }

    @Test
    @DisplayName("R45: how wet, how held, what each result would mean beforehand; a caution is enough, and more stretch is no better pass")
    void aLearnerCanFollowThePull() {
        Walker petra = salon.as("petra").open(bench + "/elasticity-test").expect(200);
        assertThat(petra.text()).contains("until it is wet through", "Tape both ends", "springs back from 60 %");
        assertThat(petra.page().select(".outcomes > li")).hasSize(3);
        pull(petra, "ROOTS", "50", "80", "SPRANG_BACK").expect(200);
        assertThat(petra.text()).contains("Pulled beyond the mark at 65 mm").doesNotContain("This is enough.");
        assertThat(petra.page().select(".outcomes")).isEmpty();
        pull(petra, "ENDS", "50", "62", "BROKE").expect(200);
        assertThat(petra.text()).contains("This is enough. Pull no more hairs");
    }

    @Test
    void lengthsThatCannotBeAreSaidWithBothValues() {
        Walker petra = salon.as("petra").open(bench + "/elasticity-test");
        pull(petra, "ENDS", "100", "94", "SPRANG_BACK").expect(422);
        assertThat(petra.text()).contains(
            "The stretched length (94 mm) is shorter than the rest length (100 mm). Measure again, or swap the two.");
        assertThat(petra.only("#stretched").val()).isEqualTo("94");
        assertThat(petra.page().select("input[name=part][value=ENDS]").hasAttr("checked")).isTrue();
        pull(petra, "ENDS", "100", "100", "SPRANG_BACK").expect(422);
        pull(petra, "ENDS", "100", "210", "SPRANG_BACK").expect(422);
        pull(petra, "ENDS", "ten", "12", "SPRANG_BACK").expect(422);
        assertThat(petra.text()).contains("“ten” is no length");
        assertThat(made()).isEmpty();
    }

    @Test
    void aHairSentTwiceIsKeptOnce() {
        Walker petra = salon.as("petra").open(bench + "/elasticity-test");
        ArrayList<Map.Entry<String, String>> first =
            new ArrayList<>(petra.fields("form[action*=elasticity-test]").stream()
                .filter(f -> List.of("csrf-token", "submission").contains(f.getKey())).toList());
        hair("ROOTS", "50", "65", "SPRANG_BACK").forEach((name, value) -> first.add(Map.entry(name, value)));
        petra.post(bench + "/elasticity-test", first).post(bench + "/elasticity-test", first);
        assertThat(made()).hasSize(1);
        String action = petra.page().selectFirst("form[action*=elasticity-test]").attr("action");
        ArrayList<Map.Entry<String, String>> second =
            new ArrayList<>(petra.fields("form[action*=elasticity-test]").stream()
                .filter(f -> List.of("csrf-token", "submission").contains(f.getKey())).toList());
        hair("ENDS", "50", "65", "SPRANG_BACK").forEach((name, value) -> second.add(Map.entry(name, value)));
        petra.post(action, second).expect(200).post(action, second).expect(200);
        assertThat(petra.page().select(".lines .said")).hasSize(2);
    }

    @Test
    void onePorousPartMakesItPorous() {
        Walker petra = salon.as("petra").open(bench + "/porosity-test").expect(200);
        assertThat(petra.text()).contains("What each would mean", "Sound roots may still be done.");
        petra.send(Map.of("roots", "AVERAGE")).expect(422);
        assertThat(petra.text()).contains("Ends: say how it feels and looks, or that you cannot tell.");
        assertThat(petra.page().select("input[name=roots][value=AVERAGE]").hasAttr("checked")).isTrue();
        petra.send(Map.of("roots", "AVERAGE", "mid-lengths", "CANNOT_TELL", "ends", "POROUS")).expect(200);
        assertThat(petra.only("h1").text()).startsWith("Porous");
        assertThat(outcomes()).containsExactly("porosity-test porous", "porosity-of-roots average");
    }

    @Test
    @DisplayName("R43: over-porous ends close colour on the whole head, and the page says which services stand otherwise")
    void overPorousEndsCloseTheWholeHead() {
        Walker petra = salon.as("petra").open(bench + "/porosity-test").expect(200);
        petra.send(Map.of("roots", "RESISTANT", "mid-lengths", "AVERAGE", "ends", "OVER_POROUS")).expect(200);
        assertThat(petra.only("h1").text()).startsWith("Over-porous");
        assertThat(outcomes()).containsExactly("porosity-test over-porous", "porosity-of-roots resistant");
        Element whole = petra.page().select("table tr:has(th:contains(Permanent colour, whole hair))").first();
        assertThat(whole.text()).contains("Prevents", "Over-porous hair");
    }

    @Test
    void aTestCuttingIsGoodOnlyAtItsFullTime() {
        Walker petra = cutting();
        Map<String, String> good = Map.of("colour", "AS_PLANNED", "condition", "AS_BEFORE", "bounce", "SPRANG_BACK");
        petra.send("form[action*=test-cutting]:has(#colour)", good).expect(200);
        assertThat(petra.text()).contains("says nothing yet");
        assertThat(outcomes()).isEmpty();
        petra = cutting();
        String running = petra.at();
        clock.move(Duration.ofMinutes(35));
        nanos.move(Duration.ofMinutes(35));
        petra = salon.as("petra").open(running);
        assertThat(petra.only("[data-left]").attr("data-left")).isEqualTo("0");
        petra.send("form[action*=test-cutting]:has(#colour)", good).expect(200);
        assertThat(petra.only("h1").text()).startsWith("Good");
        assertThat(outcomes()).containsExactly("test-cutting good");
    }

    private Walker cutting() {
        return salon.as("petra").open(bench + "/test-cutting").expect(200)
            .send(Map.of("product", "Larkmoss 4-0", "strength", "20", "unit", "volumes", "minutes", "35")).expect(200);
    }

    @Test
    void aTestCuttingNamesWhatIsMissing() {
        Walker petra = salon.as("petra").open(bench + "/test-cutting")
            .send(Map.of("product", "", "strength", "much", "minutes", "0")).expect(422);
        assertThat(petra.text()).contains("Name product and shade", "“much” is no strength",
            "“0” minutes is outside 1 to 180");
        petra.send(Map.of("product", "Larkmoss", "strength", "60", "unit", "percent", "minutes", "20")).expect(422);
        assertThat(petra.text()).contains("60 % is outside 0.1 to 50 %");
    }

    @Test
    void theLengthThatStaffMeasuredOutranksTheClients() {
        Walker petra =
            salon.as("petra").open(bench).send("form[action$=hair-length]", Map.of("cm", "long")).expect(422);
        assertThat(petra.text()).contains("“long” is no length between 1 and 300 cm");
        petra.send("form[action$=hair-length]", Map.of("cm", "52")).expect(200);
        assertThat(petra.text()).contains("52 cm, measured");
        assertThat(QuarkusTransaction.requiringNew().call(() -> facts.measuredLengthCm(Visit.findById(visit))))
            .contains(52);
        assertThat(petra.open("/visits/" + visit).text()).contains("52");
    }

    @Test
    void anErrorStaysStruckOutWithItsReasonAndCountsForNothing() {
        Walker petra = salon.as("petra").open(bench + "/elasticity-test");
        pull(petra, "ENDS", "50", "52", "BROKE");
        assertThat(outcomes()).containsExactly("elasticity-test fail");
        petra.send("form[action$=/strike]", Map.of("why", "")).expect(422);
        petra.send("form[action$=/strike]", Map.of("why", "another client's hair")).expect(200);
        assertThat(petra.text()).contains("Entered in error: another client's hair (Petra Lind");
        assertThat(outcomes()).isEmpty();
        assertThat(petra.open(bench).page().select(".struck")).hasSize(1);
    }

    @Test
    void onlyItsAuthorAndTheOwnerStrikeATestOut() {
        pull(salon.as("edda").open(bench + "/elasticity-test"), "ENDS", "50", "52", "BROKE");
        UUID id = made().get(0).id();
        Walker petra = salon.as("petra").open(bench + "/elasticity-test/" + id);
        assertThat(petra.page().select("form[action$=/strike]")).isEmpty();
        petra.post(bench + "/tests/" + id + "/strike",
            List.of(Map.entry("csrf-token", petra.page().selectFirst("[name=csrf-token]").val()),
                Map.entry("why", "not mine")))
            .expect(403);
        assertThat(made().get(0).struck()).isFalse();
    }

    /** Its first bytes are a PNG's, the rest is a page that runs: what an earlier version kept and served in a page. */
    @Test
    @DisplayName("R64: a photo kept as it was sent is drawn anew at the next start, or handed out as a download only")
    void photosOfEarlierVersionsAreDrawnAnewOnce() {
        Walker petra = salon.as("petra").open(bench + "/elasticity-test");
        pull(petra, "ENDS", "50", "65", "SPRANG_BACK");
        String action = petra.page().selectFirst("form[action$=/photo]").attr("action");
        send(petra, action, "hair.jpg", Photos.of("jpeg", 40, 30));
        send(petra, action, "hair.jpg", Photos.of("jpeg", 40, 30));
        BenchRecord test = made().get(0);
        byte[] polyglot = "\u0089PNG\r\n\u001a\n<script>alert(1)</script>".getBytes(StandardCharsets.ISO_8859_1);
        List<UUID> photos = old.makeAsSent(test.id(), Photos.withExif(40, 30, 6), polyglot);
        old.start();
        old.start();
        Response drawn = petra.open(bench + "/tests/" + test.id() + "/photo/" + photos.get(0)).expect(200).response();
        assertThat(new String(drawn.asByteArray(), StandardCharsets.ISO_8859_1)).doesNotContain(Photos.WHERE);
        assertThat(drawn.header("Content-Disposition")).startsWith("inline");
        Response kept = petra.open(bench + "/tests/" + test.id() + "/photo/" + photos.get(1)).expect(200).response();
        assertThat(kept.asByteArray()).isEqualTo(polyglot);
        assertThat(kept.contentType()).isEqualTo("application/octet-stream");
        assertThat(kept.header("Content-Disposition")).startsWith("attachment");
        assertThat(kept.header("Content-Security-Policy")).startsWith("sandbox");
    }

    @Test
    void aPhotoIsSealedAndShownAndNothingElseIsTaken() {
        Walker petra = salon.as("petra").open(bench + "/elasticity-test");
        pull(petra, "ENDS", "50", "65", "SPRANG_BACK");
        String action = petra.page().selectFirst("form[action$=/photo]").attr("action");
        byte[] sent = Photos.withExif(40, 30, 6);
        assertThat(send(petra, action, "hair.png", sent)).isEqualTo(303);
        assertThat(send(petra, action, "hair.png", "<script>".getBytes())).isEqualTo(422);
        petra.open(petra.at().replaceAll("\\?.*", ""));
        String photo =
            petra.open(bench + "/elasticity-test/" + made().get(0).id()).page().select("a[href*=/photo/]").attr("href");
        assertThat(petra.open(photo).response().contentType()).isEqualTo("image/jpeg");
        assertThat(new String(petra.response().asByteArray(), StandardCharsets.ISO_8859_1)).doesNotContain(Photos.WHERE,
            "Exif");
        assertThat(petra.response().header("Content-Security-Policy")).startsWith("sandbox");
        assertThat(petra.response().header("X-Content-Type-Options")).isEqualTo("nosniff");
        salon.as("sanna").open(photo).expect(403);
    }

    private static int send(Walker walker, String action, String name, byte[] bytes) {
        return RestAssured.given().redirects().follow(false).cookies(walker.cookies())
            .header("Origin", RestAssured.baseURI + ":" + RestAssured.port)
            .header("Accept", "text/html").multiPart("csrf-token", walker.page().selectFirst("[name=csrf-token]").val())
            .multiPart("photo", name, bytes, "image/png")
            .post(action).statusCode();
    }

    @Test
    void severalClocksRunAtOnceAndEveryBenchKnowsOfThem() {
        cutting();
        salon.as("petra").open(bench + "/strand-test")
            .send(Map.of("product", "Larkmoss 4-0", "strength", "20", "unit", "volumes", "minutes", "20")).expect(200);
        Walker petra = salon.as("petra").open(bench);
        assertThat(petra.page().select(".timers [data-left]").stream()
            .filter(t -> Integer.parseInt(t.attr("data-left")) > 0).count()).isGreaterThanOrEqualTo(2);
        assertThat(petra.page().select(".timers a").eachText()).anyMatch(t -> t.contains("Strand test"))
            .anyMatch(t -> t.contains("Test cutting"));
    }

    @Test
    void aPassOfAnEarlierVisitIsOwedAgainAndAFailStands() {
        Walker petra = salon.as("petra").open(bench + "/elasticity-test");
        for (String part : List.of("ROOTS", "MID_LENGTHS", "ENDS")) {
            pull(petra, part, "50", "65", "SPRANG_BACK");
        }
        UUID later = QuarkusTransaction.requiringNew().call(() -> {
            UUID other = make.visit(LocalDate.of(1965, 3, 4));
            Visit.<Visit>findById(other).client = Visit.<Visit>findById(visit).client;
            return other;
        });
        assertThat(QuarkusTransaction.requiringNew().call(() -> facts.tests(Visit.findById(later)).get(0).overtaken()))
            .isTrue();
        assertThat(QuarkusTransaction.requiringNew().call(() -> facts.tests(Visit.findById(visit)).get(0).overtaken()))
            .isFalse();
        assertThat(made().get(0).kind()).isEqualTo(BenchKind.ELASTICITY);
    }

    @Test
    void theDeskSeesNoBench() {
        salon.as("sanna").open(bench).expect(403);
        salon.as("sanna").open(bench + "/live").expect(403);
    }

    @Test
    @DisplayName("R45: a learner reads amounts, times, what to look for and what to do when it goes wrong, on the cut tuft as on the head")
    void aLearnerCanFollowATrial() {
        Walker petra = salon.as("petra").open(bench + "/test-cutting").expect(200);
        assertThat(petra.text()).contains("Weigh out 5 g", "on foil", "Every 5 minutes", "30 % mark",
            "the planned colour from end to end", "One of these is enough", "bubbles", "20 minutes");
        assertThat(petra.page().select("svg.drawn")).as("foil, and how a tuft is cut").hasSize(2);
        assertThat(petra.page().select(".outcomes > li")).as("what each result would mean").hasSize(2);
        petra = salon.as("petra").open(bench + "/strand-test").expect(200);
        assertThat(petra.text()).contains("does it burn, sting or itch", "Every 5 minutes",
            "longest time is never passed",
            "rinse all of it now", "call the emergency number");
        petra = salon.as("petra").open(bench + "/porosity-test").expect(200);
        assertThat(petra.text()).contains("hairline, the temple and the crown", "from the tip towards the scalp",
            "take the more porous one");
        assertThat(petra.page().select("svg.drawn")).hasSize(1);
    }

    @Test
    @DisplayName("R44: the bench offers the same gentler ways as the consultation, not a list; a device that has them asks for clocks alone")
    void theBenchOffersTheGentlerWays() {
        Walker petra = salon.as("petra").open(bench).expect(200);
        assertThat(petra.page().select("#instead .ways > li")).isNotEmpty();
        assertThat(petra.page().select("#instead .ways a").eachAttr("href")).allSatisfy(
            to -> assertThat(to).contains("/decision?plan="));
        String version = petra.only("[data-live]").attr("data-version");
        Walker again = salon.as("petra").ask(bench + "/live", "X-Version", version).expect(200);
        assertThat(again.page().select("#instead")).isEmpty();
        assertThat(again.only("[data-live]").attr("data-version")).isEqualTo(version);
    }
}
