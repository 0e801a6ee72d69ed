package foretress.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foretress.MovedClock;
import foretress.Walker;
import foretress.assessment.TestFact;
import foretress.assessment.Weight;
import foretress.bench.GivenTests;
import foretress.consent.Consents;
import foretress.intake.Answering;
import foretress.intake.Knocking;
import foretress.salon.OpenSalon;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Query;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** From the day of the visit to its end, through the real pages. */
@QuarkusTest
class DecisionTest {
    private static final LocalDate BORN = LocalDate.of(1965, 3, 4);

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject GivenTests tests;
    @Inject Decisions decisions;
    @Inject Consents consents;
    @Inject MovedClock clock;
    UUID visit;

    @BeforeEach
    void aVisitIsBooked() {
        salon.open();
        visit = make.visit(BORN);
    }

    @AfterEach
    void backToNow() {
        clock.reset();
    }

    private Answering client(Map<String, List<String>> told) {
        return knocking.come(visit, told).agree().all().readBack().sign("Ottilie Brandt");
    }

    private void theDayCame() {
        clock.move(Duration.ofDays(5));
    }

    private void skinTestNegative() {
        LocalDate day = today();
        tests.give(visit, TestFact.sound("skin-test", "negative", day.minusDays(3), day.minusDays(1)));
    }

    private LocalDate today() {
        return clock.instant().atZone(QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).zone()))
            .toLocalDate();
    }

    private Walker as(String login) {
        return salon.as(login).open("/visits/" + visit + "/decision").expect(200);
    }

    /** Asks everything with a shelf life again, one topic a page. */
    private void askedAgain(Map<String, List<String>> told) {
        Walker stylist = salon.as("petra").open("/visits/" + visit + "/today").expect(200);
        Answering asking = Answering.on(stylist, told);
        for (int i = 0; i < 40 && !stylist.page().select("main form").isEmpty(); i++) {
            assertThat(stylist.page().select("main input[checked]").not("[type=hidden]")).as("chosen beforehand")
                .isEmpty();
            asking.page();
        }
        assertThat(stylist.text()).contains("Every answer with a shelf life is good for today.");
    }

    /** The client signs on the tablet that this member of staff hands over. */
    private Walker signedAgain(String login) {
        Walker tablet = as(login);
        tablet.send("form[action$=/hand-over]", Map.of());
        assertThat(tablet.open("/day").at()).as("the stylist is signed out").startsWith("/sign-in");
        tablet.open(tablet.addresses().stream().filter(path -> path.startsWith("/i/")).findFirst().orElseThrow());
        tablet.send(Map.of("day", "4", "month", "3", "year", "1965"));
        assertThat(tablet.at()).isEqualTo("/answers/read-back");
        Answering.on(tablet, Map.of()).readBack().sign("Ottilie Brandt");
        assertThat(tablet.at()).isEqualTo("/answers/done");
        tablet.send("form[action$=give-back]", Map.of()).send("main form",
            Map.of("login", login, "password", OpenSalon.PASSWORD));
        assertThat(tablet.at()).isEqualTo("/visits/" + visit + "/decision");
        return tablet;
    }

    private static Walker decide(Walker walker, String verdict, String... more) {
        Map<String, String> filled = new HashMap<>(Map.of("verdict-0", verdict));
        for (int i = 0; i < more.length; i += 2) {
            filled.put(more[i], more[i + 1]);
        }
        return walker.send("form[action$=/decision]", filled);
    }

    @Test
    @DisplayName("a decision about a visit nobody has answered for is refused beside the form, not with a fault")
    void nobodyDecidesBeforeTheClientBegan() {
        Walker petra = as("petra");
        petra.post("/visits/" + visit + "/decision",
            List.of(Map.entry("verdict-0", "decline"), Map.entry("submission", UUID.randomUUID().toString()),
                Map.entry("assessment", UUID.randomUUID().toString()), Map.entry("decided", "0")));
        assertThat(petra.response().statusCode()).isBetween(400, 499);
        assertThat(state()).isIn(State.BOOKED, State.INVITED);
        assertThatThrownBy(() -> decisions.record(visit, salon.stylist(),
            new Decisions.Wanted(UUID.randomUUID(), UUID.randomUUID(), 0, List.of(), java.util.Optional.empty())))
            .isInstanceOf(Refusal.Refused.class).hasMessageContaining("NOT_BEGUN");
    }

    private State state() {
        return QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).state);
    }

    private ServiceDecision decided() {
        return QuarkusTransaction.requiringNew()
            .call(() -> decisions.read(decisions.latest(visit).orElseThrow()).services().get(0));
    }

    @Test
    @DisplayName("a signed visit ahead gets no lighter when an earlier visit's consent is taken back: it weighs as before until the client was asked anew and has signed")
    void whatIsTakenBackElsewhereLightensNothingInSilence() {
        String earlier = knocking.link(visit);
        Answering.on(new Walker().open(earlier).send(Map.of("day", "4", "month", "3", "year", "1965")),
            Map.of("colour-reaction", List.of("yes"), "colour-reaction-what", List.of("hives", "swelling"))).agree()
            .all()
            .readBack().sign("Ottilie Brandt");
        make.is(visit, State.DECIDED);
        make.is(visit, State.CLOSED);
        visit = make.again(visit);
        client(Map.of());
        assertThat(standing()).startsWith("Prevents");
        Walker phone = new Walker().open(earlier).send("main form", Map.of("day", "4", "month", "3", "year", "1965"));
        phone.open("/answers/withdraw").send("main form", Map.of()).expect(200);
        assertThat(phone.at()).isEqualTo("/answers/withdraw/done");
        assertThat(standing()).startsWith("Prevents");
        assertThat(listed()).isEqualTo(Weight.PREVENTS.code());
        assertThat(salon.as("petra").open("/visits/" + visit).text())
            .contains("Consent to another visit was taken back", "it weighs as it did before");
        theDayCame();
        skinTestNegative();
        assertThat(as("petra").page().select("input[name=verdict-0]").eachAttr("value"))
            .as("nothing goes ahead").containsExactly("postpone", "decline");
        askedAgain(Map.of());
        assertThat(standing()).as("asked, not signed").startsWith("Prevents");
        assertThat(as("petra").text()).contains("A finding changed after the client signed.");
        signedAgain("petra");
        assertThat(standing()).doesNotStartWith("Prevents");
        assertThat(listed()).isNotEqualTo(Weight.PREVENTS.code());
        assertThat(salon.as("petra").open("/visits/" + visit).text())
            .doesNotContain("Consent to another visit was taken back");
    }

    private String standing() {
        return salon.as("petra").open("/visits/" + visit).only("h1").text();
    }

    private String listed() {
        return QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).standing().orElseThrow());
    }

    @DisplayName("staff reading negative, re-asked on the day, signed again, proceed, closed; the next visit knows what was done")
    @Test
    void aNegativeReadingIsAskedAgainSignedAgainAndGoesAhead() {
        client(Map.of());
        theDayCame();
        Walker before = as("petra");
        assertThat(before.text()).contains("asked again today", "Only the owner can go against this");
        assertThat(before.page().select("input[name=verdict-0]").eachAttr("value")).containsExactly("postpone",
            "decline");
        skinTestNegative();
        assertThat(as("petra").text()).contains("A finding changed after the client signed.",
            "A test came in or fell away");
        askedAgain(Map.of());
        assertThat(as("petra").text()).doesNotContain("asked again today")
            .contains("A finding changed after the client signed.");
        Walker tablet = signedAgain("petra");
        assertThat(tablet.text()).doesNotContain("Before anything can go ahead");
        assertThat(tablet.open("/answers").response().statusCode())
            .as("the client's door is shut on the salon's tablet").isEqualTo(403);
        assertThat(QuarkusTransaction.requiringNew().call(() -> consents.all(visit).size())).isEqualTo(2);
        tablet.open("/visits/" + visit + "/decision");
        boolean plain = tablet.page().select("input[name=verdict-0]").eachAttr("value").contains("proceed");
        decide(tablet, plain ? "proceed" : "proceed-with-changes", "conditions-0", "As the leaflet says.").expect(200);
        assertThat(tablet.text()).contains("The decision is recorded.", "Petra Lind");
        assertThat(state()).isEqualTo(State.DECIDED);
        assertThat(decided().verdict().goesAhead()).isTrue();
        theVisitIsClosed(tablet);
    }

    private void theVisitIsClosed(Walker tablet) {
        tablet.open("/visits/" + visit + "/closing").expect(200);
        tablet.send("form[action$=/closing]",
            Map.of("course-0", "as-planned", "product-0", "", "condition", "", "minutes-0", "long")).expect(422);
        assertThat(tablet.text()).contains("Name the product that this line belongs to",
            "“long” is not a number of minutes", "Say how the hair is at the end");
        tablet.send("form[action$=/closing]",
            Map.of("course-0", "as-planned", "zone-0", "whole", "product-0", "Larkmoss", "strength-0", "6 %",
                "minutes-0", "35", "strand", "good", "wrong", "no", "condition", "Even and soft.", "notes",
                "Likes it a shade lighter."));
        assertThat(state()).isEqualTo(State.CLOSED);
    }

    @DisplayName("answers kept for the day are asked again on the day, and one that changed shows what it changes")
    @Test
    void anAnswerOfTheDayThatChangedIsShown() {
        client(Map.of());
        theDayCame();
        skinTestNegative();
        askedAgain(Map.of("scalp-today", List.of("broken")));
        Walker done = salon.as("petra").open("/visits/" + visit + "/today").expect(200);
        assertThat(done.text()).contains("What changed since the client signed", "Prevents");
        assertThat(state()).isEqualTo(State.ANSWERING);
        assertThat(as("petra").text()).contains("An answer changed after the client signed.",
            "Nobody can go against this.");
    }

    @Test
    void answersOfTheDayAreNotTakenBeforeTheDay() {
        client(Map.of());
        Walker early = salon.as("petra").open("/visits/" + visit + "/today").expect(200);
        assertThat(early.page().select("main form")).isEmpty();
        assertThat(early.text()).contains("These questions are asked on the day of the visit");
    }

    @DisplayName("going against a finding: refused to a stylist, the owner proves again who they are and writes why")
    @Test
    void onlyTheOwnerGoesAgainstAFindingInTheWay() {
        client(Map.of());
        theDayCame();
        askedAgain(Map.of());
        Walker stylist = as("petra");
        forced(stylist, "proceed-with-changes").expect(403);
        assertThat(stylist.text()).contains("Only the owner can go against this", "Edda Wren", "Nothing was recorded");
        Walker owner = as("edda");
        decide(owner, "proceed-with-changes", "conditions-0", "Weaker mix.", "reason", "", "password",
            OpenSalon.PASSWORD).expect(422);
        assertThat(owner.text()).contains("Write why you go against the findings.");
        decide(owner, "proceed-with-changes", "conditions-0", "Weaker mix.", "reason",
            "Tested elsewhere last week, letter seen.", "password", "wrong").expect(422);
        assertThat(owner.text()).contains("This is not your password");
        assertThat(state()).isEqualTo(State.SIGNED);
        decide(owner, "proceed-with-changes", "conditions-0", "Weaker mix.", "reason",
            "Tested elsewhere last week, letter seen.", "password", OpenSalon.PASSWORD).expect(200);
        assertThat(owner.text()).contains("Reason: Tested elsewhere last week, letter seen.", "Against:");
        assertThat(decided().against()).extracting(ServiceDecision.Against::ruleId).contains("colour-owes-a-skin-test");
    }

    @DisplayName("R57: a visit closed without the test it owed, the finding gone against with its reason, and who did what stand on the owner's page, nobody else's")
    @Test
    void theOwnerSeesWhatWasDoneWithoutItsTest() {
        client(Map.of());
        theDayCame();
        askedAgain(Map.of());
        Walker owner = as("edda");
        decide(owner, "proceed-with-changes", "conditions-0", "Weaker mix.", "reason",
            "Tested elsewhere last week, letter seen.", "password", OpenSalon.PASSWORD).expect(200);
        theVisitIsClosed(owner);
        owner.open("/owner").expect(200);
        String here = "a[href=/visits/" + visit + "]";
        assertThat(owner.page().select("h2:contains(Closed without a test) + ul li:has(" + here + ")").text())
            .contains("Ottilie Brandt", "Skin test");
        assertThat(owner.page().select("h2:contains(Closed without a valid consent) + ul li:has(" + here + ")"))
            .as("she had signed").isEmpty();
        assertThat(owner.page().select("h2:contains(Findings gone against) + ul li:has(" + here + ")").text())
            .contains("Reason: Tested elsewhere last week, letter seen.", "Edda Wren");
        salon.as("petra").open("/owner").expect(403);
        salon.as("sanna").open("/owner").expect(403);
        owner.send("form.trail", Map.of("client", "ottilie brandt", "act", "gone against")).expect(200);
        assertThat(owner.page().select("#trail tbody tr")).isEmpty();
        owner.send("form.trail", Map.of("client", "ottilie brandt", "act", "decision against", "person", ""))
            .expect(200);
        assertThat(owner.page().select("#trail tbody tr").text()).contains("Edda Wren",
            "decision against findings recorded", "Ottilie Brandt");
        owner.send("form.trail", Map.of("client", "nobody of this name")).expect(200);
        assertThat(owner.page().select("#trail tbody tr")).isEmpty();
        owner.send("form.trail", Map.of("client", "", "act", "", "from", "2001-01-01", "until", "2001-01-02"))
            .expect(200);
        assertThat(owner.page().select("#trail tbody tr")).isEmpty();
    }

    /** A choice the page does not offer, sent all the same. */
    private Walker forced(Walker walker, String verdict) {
        ArrayList<Map.Entry<String, String>> fields =
            new java.util.ArrayList<>(walker.fields("form[action$=/decision]").stream()
                .filter(f -> !f.getKey().matches("verdict.*|conditions.*|reason|password")).toList());
        fields.add(Map.entry("verdict-0", verdict));
        fields.add(Map.entry("conditions-0", "Weaker mix."));
        fields.add(Map.entry("reason", "Because."));
        fields.add(Map.entry("password", OpenSalon.PASSWORD));
        return walker.post("/visits/" + visit + "/decision", fields);
    }

    @DisplayName("a finding that lasts is gone against by nobody, the owner included")
    @Test
    void nobodyGoesAgainstALastingFinding() {
        client(Map.of("colour-reaction", List.of("yes"), "colour-reaction-what", List.of("swelling", "breathing")));
        theDayCame();
        for (String login : List.of("petra", "edda")) {
            Walker walker = as(login);
            assertThat(walker.page().select("input[name=verdict-0]").eachAttr("value")).containsExactly("postpone",
                "decline");
            forced(walker, "proceed-with-changes").expect(403);
            assertThat(walker.text()).contains("Nobody can go against this");
        }
        assertThat(QuarkusTransaction.requiringNew().call(() -> decisions.all(visit))).isEmpty();
        assertThat(as("petra").open("/visits/" + visit + "?instead=open").page().select("details#instead[open]"))
            .as("what else could be done is in sight").hasSize(1);
    }

    @DisplayName("the desk and the client see that a visit is put off, and no reason")
    @Test
    void aVisitPutOffIsAllTheDeskSees() {
        client(Map.of("asthma", List.of("yes")));
        theDayCame();
        Walker stylist = as("petra");
        decide(stylist, "postpone", "until-0", "").expect(422);
        assertThat(stylist.text()).contains("Give a day after today.");
        decide(stylist, "postpone", "until-0", today().plusDays(30).toString(), "conditions-0",
            "After the canary has sung.").expect(200);
        Walker desk = salon.as("sanna").open("/desk/visits/" + visit).expect(200);
        assertThat(desk.text()).contains("Visit postponed, not before");
        assertThat(desk.page().text()).doesNotContain("canary");
        assertThat(desk.open("/visits/" + visit + "/decision").response().statusCode()).isEqualTo(403);
        Walker phone = knocking.come(visit, Map.of()).walker();
        assertThat(phone.page().text()).doesNotContain("canary");
    }

    @DisplayName("restorer lotion, the bench sees nothing at all: nobody can go against it, declined with an alternative")
    @Test
    void nothingAtAllAtTheBenchIsDeclinedWithAnAlternative() {
        client(Map.of("darkening-lotion", List.of("some-time-ago"), "treatments.what", List.of("restorer"),
            "treatments.when.precision", List.of("years-ago"), "treatments.when.ago", List.of("1-2"), "treatments.zone",
            List.of("whole")));
        theDayCame();
        tests.give(visit, TestFact.sound("incompatibility-test", "nothing-happened", today(), today()));
        Walker stylist = as("petra");
        assertThat(stylist.text()).contains("Prevents", "Nobody can go against this.");
        decide(stylist, "decline", "alternative-0", "cut-and-dry").expect(200);
        assertThat(stylist.text()).contains("Decline", "Proposed instead: Cut");
        assertThat(decided().verdict()).isEqualTo(Verdict.DECLINE);
        stylist.open("/visits/" + visit + "/closing").expect(200);
        assertThat(stylist.page().select("input[name=course-0]").eachAttr("value"))
            .as("nothing was decided to go ahead").containsExactly("not-done");
    }

    @DisplayName("a decision names its assessment: a newer one refuses it and shows the difference")
    @Test
    void aDecisionOnAnOutdatedAssessmentIsRefused() {
        client(Map.of());
        theDayCame();
        Walker stylist = as("petra");
        tests.give(visit, TestFact.sound("skin-test", "positive", today().minusDays(3), today().minusDays(1)));
        decide(stylist, "decline").expect(409);
        assertThat(stylist.text()).contains("A newer assessment holds", "Prevents");
        assertThat(QuarkusTransaction.requiringNew().call(() -> decisions.all(visit))).isEmpty();
        decide(stylist.open("/visits/" + visit + "/decision"), "decline").expect(200);
    }

    @Test
    @DisplayName("R1: what was typed about a decision in a second tab is still there when a newer assessment was looked at, and only the choice is made again")
    void whatWasTypedOutlivesANewerAssessment() {
        client(Map.of());
        theDayCame();
        Walker stylist = as("petra");
        tests.give(visit, TestFact.sound("skin-test", "positive", today().minusDays(3), today().minusDays(1)));
        decide(stylist, "postpone", "conditions-0", "Ask the “doctor” first", "until-0",
            today().plusDays(20).toString(), "alternative-0", "cut-and-dry").expect(409);
        stylist.send(Map.of("act", "look")).expect(200);
        assertThat(stylist.page().select("[name=conditions-0]").val()).isEqualTo("Ask the “doctor” first");
        assertThat(stylist.page().select("[name=until-0]").val()).isEqualTo(today().plusDays(20).toString());
        assertThat(stylist.page().select("[name=alternative-0] option[selected]").val()).isEqualTo("cut-and-dry");
        assertThat(stylist.page().select("[name=verdict-0][checked]")).isEmpty();
        decide(stylist, "postpone").expect(200);
        assertThat(stylist.text()).contains("The decision is recorded.", "Ask the “doctor” first");
    }

    @Test
    @DisplayName("R56: two answers that cannot both be right stand side by side, are asked again on the day, and neither is dropped")
    void contradictionsArePutBeforeTheStylist() {
        client(Map.of("skin-tested", List.of("yes"), "skin-test-before", List.of("yes"), "skin-test-result",
            List.of("reaction")));
        Walker petra = salon.as("petra").open("/visits/" + visit).expect(200);
        assertThat(petra.page().select(".pair").text()).contains("These two cannot both be right",
            "What the earlier skin test showed", "Reaction to hair colour: No", "both count");
        theDayCame();
        petra = salon.as("petra").open("/visits/" + visit);
        assertThat(petra.page().select(".ask").text()).contains("Past reactions");
        askedAgain(Map.of("colour-reaction", List.of("yes")));
        assertThat(salon.as("petra").open("/visits/" + visit).page().select(".pair:contains(Reaction to hair colour)"))
            .as("cleared up").isEmpty();
    }

    @Test
    @DisplayName("R56: the length staff measured stands wherever the client's stood, hers beside it")
    void theMeasuredLengthReplacesTheClients() {
        client(Map.of());
        Walker petra = salon.as("petra").open("/visits/" + visit + "/bench");
        petra.send("form[action$=/hair-length]", Map.of("cm", "37")).expect(200);
        petra.open("/visits/" + visit);
        assertThat(petra.page().select(".folded").text()).contains("37 cm, measured here; the client said:");
        assertThat(petra.page().select(".mapped > p").text()).contains("37 cm").contains("measured");
    }

    @DisplayName("another service is another consent: the client signs again before it goes ahead")
    @Test
    void anAdaptedServiceIsSignedAgain() {
        client(Map.of());
        theDayCame();
        askedAgain(Map.of());
        Walker stylist = as("petra");
        stylist.send("form[action$=/services]", Map.of("service-0", "cut-and-dry"));
        assertThat(stylist.text()).contains("Another service is planned than the one the client agreed to.",
            "booked as");
        Walker tablet = signedAgain("petra");
        decide(tablet, "proceed").expect(200);
        assertThat(decided().bookedId()).contains("colour-whole");
        assertThat(decided().serviceId()).isEqualTo("cut-and-dry");
    }

    @Test
    @DisplayName("two people decide on the same page: the first one's stands, the second is told, and keeps what was typed")
    void theSecondOfTwoDecisionsIsToldOfTheFirst() {
        client(Map.of());
        theDayCame();
        Walker petra = as("petra");
        Walker edda = as("edda");
        decide(petra, "decline").expect(200);
        decide(edda, "postpone", "until-0", today().plusDays(20).toString(), "conditions-0", "Rest first.").expect(409);
        assertThat(edda.text()).contains("decided or changed something", "Nothing was recorded");
        assertThat(decided().verdict()).isEqualTo(Verdict.DECLINE);
        edda.send(Map.of("act", "look")).expect(200);
        assertThat(edda.text()).contains("Petra Lind", "Decline");
        assertThat(edda.page().select("[name=conditions-0]").val()).isEqualTo("Rest first.");
        decide(edda, "postpone").expect(200);
        assertThat(decided().verdict()).isEqualTo(Verdict.POSTPONE);
    }

    @Test
    @DisplayName("a visit called off while a decision is on its way: told as a newer state, not as a fault, and nothing is kept")
    void theLoserOfARaceIsTold() throws Exception {
        client(Map.of());
        theDayCame();
        Walker petra = as("petra");
        Future<Walker> late = QuarkusTransaction.requiringNew().call(() -> {
            Visit held = Visit.findById(visit, LockModeType.PESSIMISTIC_WRITE);
            Future<Walker> posting = ForkJoinPool.commonPool().submit(() -> decide(petra, "postpone", "until-0",
                today().plusDays(20).toString(), "conditions-0", "Rest first."));
            untilSomebodyWaits();
            held.moveTo(State.CANCELLED);
            return posting;
        });
        late.get(30, TimeUnit.SECONDS).expect(409);
        assertThat(petra.page().select("[name=conditions-0]").val()).isEqualTo("Rest first.");
        assertThat(QuarkusTransaction.requiringNew().call(() -> decisions.all(visit))).isEmpty();
        assertThat(state()).isEqualTo(State.CANCELLED);
    }

    /** The other one has been let through the page's own check and stands before the visit's lock. */
    private static void untilSomebodyWaits() {
        Query waiting = Visit.getEntityManager().createNativeQuery(
            "select count(*) from information_schema.sessions where blocker_id = session_id()", Long.class);
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
        while ((Long) waiting.getSingleResult() == 0 && System.nanoTime() < end) {
            Thread.onSpinWait();
        }
    }

    @DisplayName("C14: no path sets a decision without a person")
    @Test
    void onlyAPersonDecides() throws IOException {
        assertThatThrownBy(() -> decisions.record(visit, null,
            new Decisions.Wanted(UUID.randomUUID(), UUID.randomUUID(), 0, List.of(), java.util.Optional.empty())))
            .isInstanceOf(NullPointerException.class);
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            assertThat(files.filter(f -> f.toString().endsWith(".java"))
                .filter(f -> says(f, "moveTo(State.DECIDED)") || says(f, "new KeptDecision(")))
                .extracting(f -> f.getFileName().toString()).containsExactly("Decisions.java");
        }
    }

    private static boolean says(Path file, String what) {
        try {
            return Files.readString(file).contains(what);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
