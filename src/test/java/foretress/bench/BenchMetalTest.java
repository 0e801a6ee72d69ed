package foretress.bench;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import foretress.Walker;
import foretress.assessment.Weight;
import foretress.intake.Assessments;
import foretress.intake.Intake;
import foretress.intake.KeptAssessment;
import foretress.intake.Knocking;
import foretress.intake.Refusals;
import foretress.salon.OpenSalon;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The incompatibility test over HTTP, from a restorer lotion to what may still be done. */
@QuarkusTest
class BenchMetalTest {
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject BenchRecords tests;
    @Inject Intake intake;
    @Inject Assessments assessments;
    @Inject Refusals refusals;
    @Inject MovedClock clock;
    @Inject MovedNanos nanos;
    UUID visit;

    @BeforeEach
    void aClientOnceUsedADarkeningLotion() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
        knocking
            .come(visit, Map.of("darkening-lotion", List.of("some-time-ago"), "treatments.what", List.of("restorer"),
                "treatments.when.precision", List.of("years-ago"), "treatments.when.ago", List.of("1-2"),
                "treatments.zone", List.of("whole")))
            .agree().all().readBack().sign("Ottilie Brandt");
    }

    @AfterEach
    void putTheClockBack() {
        clock.reset();
    }

    private AtTheBench petra() {
        return new AtTheBench(salon.as("petra"), visit);
    }

    /** So much later; nobody touched the device meanwhile, so Petra signs in again. */
    private AtTheBench after(Duration time, AtTheBench bench) {
        clock.move(time);
        nanos.move(time);
        return bench.on(salon.as("petra"));
    }

    private Weight standing() {
        return QuarkusTransaction.requiringNew()
            .call(() -> Weight.ofCode(Visit.<Visit>findById(visit).standing().orElseThrow()));
    }

    private AtTheBench everyTuft(AtTheBench bench, String sign) {
        for (String tuft : bench.tufts()) {
            bench.sees(tuft, sign);
        }
        return bench;
    }

    @Test
    void theOwedTestComesFirstAndSaysWhereToCut() {
        AtTheBench bench = petra().overview();
        bench.says("Comes first", "Incompatibility test");
        assertThat(bench.walker().page().select(".owed a.button.main").attr("href"))
            .endsWith("/bench/incompatibility-test");
        bench.walker().open("/visits/" + visit + "/bench/incompatibility-test").expect(200);
        bench.says("Oldest ends", "Control, own new growth");
        assertThat(bench.walker().page().select("input[name=from-B]").val()).isEqualTo("34");
        assertThat(bench.walker().page().select("input[name=to-B]").val()).isEqualTo("40");
        assertThat(bench.walker().page().select(".strand-svg")).isNotEmpty();
    }

    @Test
    @DisplayName("R45: a learner reads how to cut, a glass for each tuft, what each result would mean before the start, and how to throw it away")
    void aLearnerCanFollowIt() {
        AtTheBench bench = petra();
        bench.walker().open("/visits/" + visit + "/bench/incompatibility-test").expect(200);
        bench.says("Rinse styling product out", "slide the points of the scissors", "thick as a pencil lead",
            "at least 2 cm");
        assertThat(bench.walker().page().select("svg.drawn")).hasSize(1);
        bench.walker().send("form[action$=/incompatibility-test]", Map.of()).expect(200);
        bench.says("One small glass for each tuft, the control too", "distilled, or boiled and cooled", "28 % ammonia",
            "held open, 20 minutes", "About 20 ml a glass, 3 glasses");
        assertThat(bench.walker().page().select(".outcomes > li"))
            .as("what each result would mean stands before the start").hasSize(3);
        assertThat(bench.walker().page().select(".outcomes [data-weight=prevents]")).hasSize(2);
        assertThat(bench.walker().page().selectFirst("input[name=ml]").val()).isEqualTo("60");
        AtTheBench ended = petra().metalRunning();
        ended = everyTuft(after(Duration.ofMinutes(31), ended), "SLIGHTLY_LIGHTER").out();
        ended.says("with the tap running", "Never into a closed bottle");
    }

    @Test
    @DisplayName("R47: a test the client does not want is not begun by its address either: it leads to the talk about it")
    void aRefusedTestIsNotBegunByItsAddress() {
        Set<String> all = Arrays.stream(BenchKind.values()).map(BenchKind::code)
            .filter(code -> !code.equals("hair-length")).collect(Collectors.toSet());
        refusals.say(visit, all);
        Walker petra = salon.as("petra");
        String here = "/visits/" + visit;
        for (String test : all) {
            assertThat(petra.open(here + "/bench/" + test).at()).as(test).isEqualTo(here + "/refused");
            petra.post(here + "/bench/" + test, petra.fields("main form"));
            assertThat(petra.at()).as(test + ", sent from a page opened before").isEqualTo(here + "/refused");
        }
        assertThat(QuarkusTransaction.requiringNew().call(() -> tests.ofVisit(visit))).isEmpty();
        refusals.wantedAfterAll(visit, Set.of("incompatibility-test"), salon.stylist().id);
        assertThat(petra.open(here + "/bench/incompatibility-test").expect(200).at()).endsWith("/incompatibility-test");
        assertThat(petra.open(here + "/bench/test-cutting").at()).isEqualTo(here + "/refused");
    }

    @Test
    void nothingAtAllOnTheSuspectTuftPreventsAndTheTableOfAlternativesSaysSo() {
        assertThat(standing()).isEqualTo(Weight.TEST_FIRST);
        AtTheBench bench = petra().metalRunning();
        List<String> tufts = bench.tufts();
        bench = after(Duration.ofMinutes(31), bench);
        for (String tuft : tufts.subList(1, tufts.size())) {
            bench.sees(tuft, "SLIGHTLY_LIGHTER");
        }
        bench.sees(tufts.get(0), "NOTHING").out();
        assertThat(bench.walker().only("h1").text()).startsWith("No change at all");
        bench.says("What this result changes", "Permanent colour");
        assertThat(standing()).isEqualTo(Weight.PREVENTS);
        bench.overview();
        bench.says("Prevents");
        assertThat(bench.walker().page().select("tr:has(th:contains(ighlights)) [data-weight=prevents]")).isNotEmpty();
        assertThat(bench.walker().page().select("tr:has(th:contains(Cut)) [data-weight]").attr("data-weight"))
            .isNotEqualTo("prevents");
        KeptAssessment kept = QuarkusTransaction.requiringNew().call(() -> KeptAssessment.newest(visit).orElseThrow());
        assertThat(assessments.read(kept).finding("metal-test-nothing-happened")).isPresent();
    }

    @Test
    void bubblesCountAtOnceAndSayTakeThemOut() {
        AtTheBench bench = petra().metalRunning();
        bench.sees("A", "BUBBLES").says("Reaction on A. Take every tuft out now");
        assertThat(bench.walker().page().select(".urgent[role=alert]")).hasSize(1);
        assertThat(bench.walker().only("form[action$=/end] .button.main").text()).isEqualTo("The tufts are out");
        assertThat(standing()).isEqualTo(Weight.PREVENTS);
        bench.out();
        assertThat(bench.walker().only("h1").text()).startsWith("A reaction");
    }

    @Test
    void slightLighteningCountsOnlyWithTheLookAfterADay() {
        AtTheBench bench = petra().metalRunning();
        bench = after(Duration.ofMinutes(30), bench);
        everyTuft(bench, "SLIGHTLY_LIGHTER").out();
        assertThat(bench.walker().only("h1").text()).startsWith("Slightly lighter only");
        assertThat(standing()).isEqualTo(Weight.TEST_FIRST);
        Map<String, String> intact = Map.of("look-A", "intact", "look-B", "intact", "look-C", "intact");
        bench.walker().send("form[action$=/next-day]", intact).expect(422);
        bench.says("Only 0 hours have gone");
        bench = after(Duration.ofHours(24), bench.overview());
        bench.walker().open(bench.walker().page().select(".said a[href*=/bench/incompatibility-test/]").attr("href"));
        bench.walker().send("form[action$=/next-day]", intact).expect(200);
        bench.says("every tuft was intact", "What this result changes").overview().says("Test cutting");
        assertThat(metalFinding("metal-tested-cutting-owed")).isTrue();
    }

    @Test
    void aSalonThatWaitsLongerIsHeldToIt() {
        waits("48");
        try {
            AtTheBench bench = petra().metalRunning();
            bench = after(Duration.ofMinutes(30), bench);
            everyTuft(bench, "SLIGHTLY_LIGHTER").out();
            Map<String, String> intact = Map.of("look-A", "intact", "look-B", "intact", "look-C", "intact");
            bench = after(Duration.ofHours(24), bench.overview());
            bench.walker()
                .open(bench.walker().page().select(".said a[href*=/bench/incompatibility-test/]").attr("href"));
            bench.walker().send("form[action$=/next-day]", intact).expect(422);
            bench.says("Only 24 hours have gone");
            bench = after(Duration.ofHours(24), bench.overview());
            bench.walker()
                .open(bench.walker().page().select(".said a[href*=/bench/incompatibility-test/]").attr("href"));
            bench.walker().send("form[action$=/next-day]", intact).expect(200);
            assertThat(metalFinding("metal-tested-cutting-owed")).isTrue();
        } finally {
            waits("");
        }
    }

    private void waits(String hours) {
        assertThat(salon.as("edda").open("/policy").send(Map.of("incompatibility-test-hours", hours)).at())
            .isEqualTo("/policy?kept");
    }

    @Test
    void hairThatComesApartTheNextDayCountsBeforeTheDayIsOver() {
        AtTheBench bench = petra().metalRunning();
        bench = after(Duration.ofMinutes(30), bench);
        everyTuft(bench, "SLIGHTLY_LIGHTER").out();
        bench.walker()
            .send("form[action$=/next-day]", Map.of("look-A", "apart", "look-B", "intact", "look-C", "intact"))
            .expect(200);
        assertThat(bench.walker().only("h1").text()).startsWith("A reaction");
        assertThat(standing()).isEqualTo(Weight.PREVENTS);
    }

    @Test
    void aControlThatDoesNotLightenLeavesItOwed() {
        AtTheBench bench = petra().metalRunning();
        bench = after(Duration.ofMinutes(30), bench);
        everyTuft(bench, "NOTHING").out();
        assertThat(bench.walker().only("h1").text()).startsWith("Cannot be read");
        bench.says("The control did not lighten");
        assertThat(standing()).isEqualTo(Weight.TEST_FIRST);
    }

    @Test
    void aTuftThatWasNotCutLeavesItsStretchOwed() {
        AtTheBench bench = petra();
        bench.walker().open("/visits/" + visit + "/bench/incompatibility-test");
        List<Map.Entry<String, String>> fields =
            bench.walker().fields("main form").stream().filter(f -> !f.getKey().equals("cut-B")).toList();
        bench.walker().post("/visits/" + visit + "/bench/incompatibility-test", fields).expect(200);
        bench.walker().send("form[action$=/mix]", Map.of("strength", "20")).send("form[action$=/start]", Map.of());
        bench = after(Duration.ofMinutes(30), bench);
        everyTuft(bench, "SLIGHTLY_LIGHTER").out().says("Cannot be read", "A stretch has no tuft of its own");
    }

    @Test
    void tappingTwiceIsSeeingOnce() {
        AtTheBench bench = petra().metalRunning();
        List<Map.Entry<String, String>> fields = new ArrayList<>(bench.walker().fields("form[action$=/seen]"));
        fields.add(Map.entry("seen", "A:SMELL"));
        String action = bench.walker().page().selectFirst("form[action$=/seen]").attr("action");
        bench.walker().post(action, fields).post(action, fields);
        bench.sees("A", "SMELL");
        BenchRecord test = QuarkusTransaction.requiringNew().call(() -> tests.ofVisit(visit).get(0));
        assertThat(QuarkusTransaction.requiringNew().call(() -> tests.metal(test).seen())).hasSize(1);
    }

    private int tap(AtTheBench bench, String submission, String seen, String ago) {
        List<Map.Entry<String, String>> fields = new ArrayList<>(bench.walker().fields("form[action$=/seen]"));
        fields.removeIf(f -> f.getKey().equals("submission"));
        fields.addAll(List.of(Map.entry("submission", submission), Map.entry("seen", seen), Map.entry("ago", ago)));
        return bench.walker().post(bench.walker().page().selectFirst("form[action$=/seen]").attr("action"), fields)
            .response().statusCode();
    }

    @Test
    @DisplayName("R1: a tap that had to wait counts for its own moment, once, also when the tufts came out meanwhile; one that cannot be kept says so")
    void aTapThatHadToWait() {
        AtTheBench bench = after(Duration.ofMinutes(12), petra().metalRunning());
        AtTheBench late = bench.on(salon.as("petra"));
        AtTheBench forged = bench.on(salon.as("petra"));
        assertThat(tap(bench.on(salon.as("petra")), "x".repeat(65), "A:HEAT", "0")).isEqualTo(400);
        assertThat(tap(bench, "one", "A:SMELL", "120000")).isEqualTo(200);
        BenchRecord test = QuarkusTransaction.requiringNew().call(() -> tests.ofVisit(visit).get(0));
        assertThat(QuarkusTransaction.requiringNew().call(() -> tests.metal(test).seen().get(0).second()))
            .as("two minutes before now").isBetween(590L, 660L);
        bench.again();
        bench.out();
        bench = after(Duration.ofMinutes(3), bench);
        assertThat(tap(late, "two", "B:BUBBLES", "240000")).as("tapped before the tufts came out").isEqualTo(200);
        assertThat(standing()).isEqualTo(Weight.PREVENTS);
        assertThat(tap(forged, "three", "B:HEAT", "1000")).as("tapped after it").isEqualTo(409);
        assertThat(forged.walker().text()).contains("Not kept: B");
        assertThat(QuarkusTransaction.requiringNew().call(() -> tests.metal(test).seen())).hasSize(2);
    }

    @Test
    void whatSaysNothingNewMakesNoNewAssessment() {
        AtTheBench bench = petra().metalRunning();
        long before = assessed();
        bench.sees("A", "NOTHING").sees("B", "NOTHING");
        assertThat(assessed()).isEqualTo(before);
        bench.sees("A", "HEAT");
        assertThat(assessed()).isEqualTo(before + 1);
        bench.sees("A", "BUBBLES").out();
        assertThat(assessed()).isEqualTo(before + 1);
    }

    private long assessed() {
        return QuarkusTransaction.requiringNew().call(() -> KeptAssessment.count("visitId", visit));
    }

    private String whyField(AtTheBench bench) {
        return bench.walker().only("form[action$=/not-seen] input[name^=why-]").attr("name");
    }

    @Test
    void aTapInErrorStaysWithItsReasonAndCountsForNothing() {
        AtTheBench bench = petra().metalRunning();
        String tuft = bench.tufts().get(0);
        bench = after(Duration.ofMinutes(10), bench);
        bench.sees(tuft, "SLIGHTLY_LIGHTER");
        String why = whyField(bench);
        bench.walker().send("form[action$=/not-seen]", Map.of(why, "")).expect(422);
        bench.walker().send("form[action$=/not-seen]", Map.of(why, "an elbow")).expect(200);
        bench.says("Tapped in error: an elbow");
        assertThat(standing()).isEqualTo(Weight.TEST_FIRST);
        bench.sees(tuft, "SLIGHTLY_LIGHTER");
        assertThat(bench.walker().page().select("form[action$=/not-seen]")).hasSize(1);
    }

    @Test
    @DisplayName("R10: a tap that shuts a service is struck out by the owner with her password, and a reason alone opens nothing")
    void aReactionTappedInErrorIsTheOwnersToTakeBack() {
        AtTheBench bench = petra().metalRunning();
        bench.sees("A", "BUBBLES");
        String why = "why-" + firstSeen();
        assertThat(bench.walker().page().select("form[action$=/not-seen]")).isEmpty();
        bench.says("Only the owner can say that it was entered in error");
        String token = bench.walker().page().selectFirst("[name=csrf-token]").val();
        bench.walker().post(bench.walker().at() + "/not-seen",
            List.of(Map.entry("csrf-token", token), Map.entry("sight", why.substring(4)), Map.entry(why, "an elbow")))
            .expect(422);
        assertThat(standing()).isEqualTo(Weight.PREVENTS);
        AtTheBench edda = theOwner();
        edda.walker().send("form[action$=/not-seen]", Map.of(why, "an elbow")).expect(422);
        edda.says("This is not your password. Nothing was struck out.");
        assertThat(edda.walker().page().select("[name=" + why + "]").val()).as("what was typed is kept")
            .isEqualTo("an elbow");
        assertThat(edda.walker().page().select("[type=password]").val()).isEmpty();
        edda.walker().send("form[action$=/not-seen]", Map.of("password", "not hers")).expect(422);
        assertThat(standing()).isEqualTo(Weight.PREVENTS);
        edda.walker().send("form[action$=/not-seen]", Map.of("password", OpenSalon.PASSWORD)).expect(200);
        edda.says("Tapped in error: an elbow");
        assertThat(edda.walker().page().select(".urgent")).isEmpty();
        assertThat(standing()).isEqualTo(Weight.TEST_FIRST);
        edda.sees("A", "BUBBLES");
        assertThat(standing()).isEqualTo(Weight.PREVENTS);
    }

    private AtTheBench theOwner() {
        return new AtTheBench(salon.as("edda"), visit)
            .metalOf(QuarkusTransaction.requiringNew().call(() -> tests.ofVisit(visit).get(0).id()));
    }

    private String firstSeen() {
        return QuarkusTransaction.requiringNew()
            .call(() -> tests.sights(tests.ofVisit(visit).get(0)).get(0).id().toString());
    }

    @Test
    @DisplayName("R10: of two signs that each shut a service only the last one standing needs the owner")
    void whileAnotherSignShutsItOneMayGoWithAReason() {
        AtTheBench bench = petra().metalRunning();
        bench.sees("A", "BUBBLES").sees("A", "HEAT");
        assertThat(bench.walker().page().select("form[action$=/not-seen]")).hasSize(2);
        bench.walker().send("form[action$=/not-seen]", Map.of("why-" + firstSeen(), "an elbow")).expect(200);
        assertThat(standing()).isEqualTo(Weight.PREVENTS);
        assertThat(bench.walker().page().select("form[action$=/not-seen]")).isEmpty();
    }

    @Test
    @DisplayName("R10: a metal test whose reading shuts a service is struck out by the owner with her password only")
    void aReactionIsStruckOutByTheOwnerOnly() {
        AtTheBench bench = petra().metalRunning();
        String stale = bench.walker().page().selectFirst("form[action$=/strike]").attr("action");
        String token = bench.walker().page().selectFirst("[name=csrf-token]").val();
        bench.sees("A", "HEAT").out();
        assertThat(bench.walker().page().select("form[action$=/strike]")).as("no stylist opens it again").isEmpty();
        bench.walker().post(stale, List.of(Map.entry("csrf-token", token), Map.entry("why", "another client's hair")))
            .expect(422);
        bench.says("Only the owner", "another client's hair");
        assertThat(standing()).isEqualTo(Weight.PREVENTS);
        AtTheBench edda = theOwner();
        edda.walker().send("form[action$=/strike]", Map.of("why", "another client's hair")).expect(422);
        edda.says("This is not your password. Nothing was struck out.");
        assertThat(edda.walker().page().select("[name=why]").val()).isEqualTo("another client's hair");
        assertThat(standing()).isEqualTo(Weight.PREVENTS);
        edda.walker().send("form[action$=/strike]", Map.of("password", OpenSalon.PASSWORD)).expect(200);
        edda.says("Entered in error: another client's hair (Edda Wren");
        assertThat(standing()).isEqualTo(Weight.TEST_FIRST);
    }

    @Test
    void theBathIsWorkedOutOfTheBottleOnTheShelf() {
        AtTheBench bench = petra();
        bench.walker().open("/visits/" + visit + "/bench/incompatibility-test")
            .send("form[action$=/incompatibility-test]", Map.of());
        bench.walker().send("form[action$=/mix]", Map.of("strength", "40", "ml", "60")).expect(200);
        bench.says("Take 30 ml from the bottle of 12 % (40 volumes) and add 30 ml of water",
            "3 ml of ammonium hydroxide", "not stated");
        bench.walker().send("form[action$=/mix]", Map.of("strength", "10", "unit", "volumes")).expect(422);
        bench.says("6 % cannot be mixed from 3 %");
        assertThat(bench.walker().page().select("input[name=strength]").val()).isEqualTo("10");
        bench.walker().send("form[action$=/mix]", Map.of("recipe", "none")).expect(422);
        bench.says("Without ammonia the test is not done");
    }

    @Test
    void aWallClockThatJumpsDoesNotShortenIt() {
        AtTheBench bench = petra().metalRunning();
        clock.move(Duration.ofHours(2));
        bench = bench.on(salon.as("petra"));
        assertThat(bench.left()).isBetween(1600L, 1800L);
        clock.move(Duration.ofHours(-4));
        assertThat(bench.on(salon.as("petra")).left()).isBetween(1600L, 1800L);
    }

    private boolean metalFinding(String rule) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Visit found = Visit.findById(visit);
            return assessments.of(found, intake.said(found)).finding(rule).isPresent();
        });
    }
}
