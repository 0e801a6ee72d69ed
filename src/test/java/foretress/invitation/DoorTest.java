package foretress.invitation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.notNullValue;

import foretress.MovedClock;
import foretress.Walker;
import foretress.salon.OpenSalon;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import foretress.web.RateLimiter;
import io.quarkus.arc.ManagedContext;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.eclipse.microprofile.config.ConfigProvider;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** B1 to B7: a link opens a blank door; a birth date opens the questions. */
@QuarkusTest
class DoorTest {
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Invitations invitations;
    @Inject MovedClock clock;
    @Inject RateLimiter brake;
    UUID visit;
    String link;

    @BeforeEach
    void aClientIsInvited() {
        salon.open();
        visit = make.visit(LocalDate.of(1990, 4, 3));
        link = "/i/" + invitations.issue(visit, Invitation.Way.SHOWN, "server").reveal();
    }

    @AfterEach
    void backToNow() {
        clock.reset();
    }

    private static Map<String, String> born(String day, String month, String year) {
        return Map.of("day", day, "month", month, "year", year);
    }

    private Walker atTheDoor() {
        return new Walker().open(link).expect(200);
    }

    private static Response comes(String from, String path) {
        return RestAssured.given().redirects().follow(false).header("X-Forwarded-For", from)
            .header("Accept", "text/html").get(path);
    }

    @Test
    @DisplayName("R62: a stranger without a link is held back, and shuts no client's door, not even from the same address")
    void strangersStandInNobodysWay() {
        int allowed = ConfigProvider.getConfig().getValue("foretress.door.knocks-per-address", Integer.class);
        clock.stop();
        for (int i = 0; i < allowed; i++) {
            brake.stranger(RateLimiter.Door.LINK, "203.0.113.77");
        }
        comes("203.0.113.77", "/i/no-such-link").then().statusCode(429).header("Retry-After", notNullValue());
        comes("203.0.113.77", link).then().statusCode(200);
        comes("203.0.113.78", "/i/no-such-link").then().statusCode(404);
        atTheDoor().send(born("3", "4", "1990")).expect(200);
    }

    @ParameterizedTest
    @ValueSource(strings = { "unknown", "a:b", "", ",", "\"", "[", "203.0.113.5, unknown", "%00", "::ffff:1.2.3.4:5" })
    @DisplayName("R63: whatever stands in X-Forwarded-For, the page comes")
    void anyForwardedAddressGetsThePage(String written) {
        comes(written, link).then().statusCode(200);
        comes(written, "/i/no-such-link").then().statusCode(404);
    }

    @Test
    void theWelcomeSaysNothingPersonal() {
        String page = new Walker().open(link).expect(200).page().html();
        assertThat(page).doesNotContain("Ottilie", "Brandt", "Petra", "1990", "olour with").contains("Español",
            "Alder &amp; Wren");
    }

    @Test
    void theRightBirthDateGivesACookieAndAnAddressWithoutTheToken() {
        Walker walker = atTheDoor().send(born("3", "4", "1990"));
        assertThat(walker.cookies()).containsKey("door");
        assertThat(walker.at()).startsWith("/answers").doesNotContain(link.substring(3));
        assertThat(walker.cookies().get("door")).matches("[A-Za-z0-9_-]{43}").isNotEqualTo(link.substring(3));
    }

    @Test
    @DisplayName("R6: who comes back with the link on the same browser goes on without being asked the birth date again")
    void theSameBrowserIsNotAskedTwice() {
        Walker inside = atTheDoor().send(born("3", "4", "1990"));
        assertThat(inside.open(link).expect(200).at()).startsWith("/answers");
        assertThat(inside.open(link + "/birth-date").expect(200).at()).startsWith("/answers");
    }

    @Test
    @DisplayName("R6: the link of another visit, a browser that was forgotten and the salon's tablet are asked")
    void anotherVisitAForgottenBrowserAndATabletAreAsked() {
        Walker inside = atTheDoor().send(born("3", "4", "1990"));
        String other =
            "/i/" + invitations.issue(make.visit(LocalDate.of(1970, 1, 2)), Invitation.Way.SHOWN, "server").reveal();
        assertThat(inside.open(other + "/birth-date").expect(200).page().select("#day")).isNotEmpty();
        String handed = "/i/" + invitations.handOver(visit, HandOverPurpose.WALK_IN, "server").reveal();
        assertThat(inside.open(handed + "/birth-date").expect(200).page().select("#day")).isNotEmpty();
        inside.open("/answers/stop").send("form[action$=forget]", Map.of());
        String fresh = "/i/" + invitations.issue(visit, Invitation.Way.SHOWN, "server").reveal();
        assertThat(inside.open(fresh + "/birth-date").expect(200).page().select("#day")).isNotEmpty();
    }

    @Test
    void fiftyLooksAndHeadsUseNothingUp() {
        for (int i = 0; i < 50; i++) {
            RestAssured.given().get(link).then().statusCode(200);
            RestAssured.given().head(link).then().statusCode(200);
            RestAssured.given().get(link + "/birth-date").then().statusCode(200);
        }
        assertThat(atTheDoor().send(born("3", "4", "1990")).cookies()).containsKey("door");
    }

    @Test
    void theDigitsOfAnyScriptAreRead() {
        assertThat(atTheDoor().send(born("٣", "4", "١٩٩٠")).cookies()).containsKey("door");
    }

    @Test
    void aDateThatIsNoneIsToldBesideItsFieldAndCountsForNothing() {
        Walker walker = atTheDoor();
        for (int i = 0; i < 7; i++) {
            walker.send(born("31", "4", "1990")).expect(422);
            assertThat(walker.only("#day").attr("aria-invalid")).isEqualTo("true");
            assertThat(walker.only("#day").val()).isEqualTo("31");
            assertThat(walker.only(".mistakes a").attr("href")).isEqualTo("#day");
            assertThat(walker.only(".mistakes a").text()).isEqualTo(walker.only("#day-mistake").text());
        }
        assertThat(walker.send(born("3", "4", "1990")).cookies()).containsKey("door");
    }

    @Test
    void fiveWrongDatesLockTheLinkAndTheSixthIsRefusedThoughRight() {
        Walker walker = atTheDoor();
        for (int day = 10; day < 14; day++) {
            walker.send(born("" + day, "4", "1990")).expect(422);
        }
        walker.send(born("14", "4", "1990")).expect(423);
        Walker again = atTheDoor().send(born("3", "4", "1990")).expect(423);
        assertThat(again.cookies()).doesNotContainKey("door");
    }

    @Test
    void theDeskSeesTheLockAndOpensTheLinkAgain() {
        Walker wrong = atTheDoor();
        for (int day = 10; day < 15; day++) {
            wrong.send(born("" + day, "4", "1990"));
        }
        Walker desk = salon.as("sanna").open("/desk");
        assertThat(desk.only(toDo()).text()).contains("Link locked after five wrong birth dates", "01632 960 333");
        desk.open("/desk/visits/" + visit).send("form[action$=unlock]", Map.of()).expect(200);
        assertThat(desk.text()).contains("takes birth dates again").doesNotContain("Locked");
        assertThat(desk.open("/desk").page().select(toDo())).isEmpty();
        assertThat(atTheDoor().send(born("3", "4", "1990")).cookies()).containsKey("door");
    }

    private String toDo() {
        return "li:has(a[href=/desk/visits/" + visit + "]):contains(Link locked)";
    }

    /** B6: 100 tries at once; no more than five are judged, so the right one among the rest is no help. */
    @Test
    void ofAHundredTriesAtOnceAtMostFiveAreJudged() throws Exception {
        List<Callable<Invitations.Knock>> tries = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            LocalDate guess = LocalDate.of(1950, 1, 1).plusDays(i);
            tries.add(() -> invitations.knock(link.substring(3), guess, "en"));
        }
        ExecutorService threads = Executors.newFixedThreadPool(12);
        try {
            int judged = 0, locked = 0;
            for (Future<Invitations.Knock> one : threads.invokeAll(tries)) {
                if (one.get() instanceof Invitations.Knock.Wrong) {
                    judged++;
                }
                if (one.get() instanceof Invitations.Knock.Locked) {
                    locked++;
                }
            }
            assertThat(judged).isEqualTo(Invitation.TRIES - 1); // the fifth locks
            assertThat(judged + locked).isEqualTo(100);
        } finally {
            threads.shutdown();
        }
    }

    /** B3: same status, same body, same length, whatever is the matter with the token. */
    @Test
    void wrongExpiredRevokedReplacedAndCancelledLinksLookAlike() {
        String wrong = look("/i/" + Token.fresh().reveal());
        String short_ = look("/i/x");
        String fresh = "/i/" + invitations.issue(visit, Invitation.Way.SHOWN, "server").reveal();
        String replaced = look(link);
        invitations.revoke(visit, "server");
        String revoked = look(fresh);
        String late = "/i/" + invitations.issue(visit, Invitation.Way.SHOWN, "server").reveal();
        clock.move(Duration.ofDays(60));
        String expired = look(late);
        assertThat(List.of(short_, replaced, revoked, expired)).containsOnly(wrong);
    }

    private static String look(String path) {
        Response response = RestAssured.given().get(path);
        assertThat(response.statusCode()).isEqualTo(404);
        return response.asString();
    }

    @Test
    void withoutADateOnFileTheClientGivesItAndTheDeskConfirms() {
        UUID unknown = make.visitOfSomebodyWithoutBirthDate();
        String door = "/i/" + invitations.issue(unknown, Invitation.Way.SHOWN, "server").reveal();
        Walker client = new Walker().open(door).send(born("7", "2", "1981"));
        assertThat(client.cookies()).containsKey("door");
        Walker desk = salon.as("sanna").open("/desk/visits/" + unknown);
        assertThat(desk.text()).contains("The client gave 7 February 1981");
        desk.send("form[action$=birth-date]", Map.of());
        assertThat(desk.text()).contains("7 February 1981, confirmed").doesNotContain("The client gave");
    }

    @Test
    void spanishIsSpokenFromTheFirstTapOnAndKeptForTheMails() {
        Walker walker = new Walker().open(link).send("form.tongues", Map.of("language", "es"));
        assertThat(walker.page().selectFirst("html").attr("lang")).isEqualTo("es");
        assertThat(walker.text()).contains("¿Cuándo nació?", "abril");
        walker.send(born("3", "4", "1990"));
        assertThat(QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).client.language))
            .isEqualTo("es");
    }

    @Test
    @DisplayName("A14: a language changed behind the door is at once that of the notice, and what is agreed to is kept in it")
    void theNoticeIsReadInTheLanguageChangedTo() {
        Walker walker = new Walker().open(link).send(born("3", "4", "1990"));
        walker.open("/language?to=" + walker.at()).send("main form", Map.of("language", "es"));
        assertThat(walker.at()).isEqualTo("/answers/notice");
        assertThat(walker.only("h1").text()).isEqualTo("Antes de contestar");
        walker.send("main form", Map.of("agree", "yes"));
        assertThat(QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).client.language))
            .isEqualTo("es");
    }

    @Test
    void aFieldSentTwiceIsRefusedAndAFormWithoutItsTokenIsShownAgain() {
        Walker walker = atTheDoor();
        ArrayList<Map.Entry<String, String>> doubled = new ArrayList<>(walker.fields("main form"));
        doubled.add(Map.entry("day", "3"));
        doubled.add(Map.entry("day", "4"));
        walker.post(link + "/birth-date", doubled).expect(400);
        new Walker().post(link + "/birth-date", List.of(Map.entry("day", "3"))).expect(422)
            .only("form[data-kept] [name=day][value=3]");
    }

    @Test
    void withoutADoorTheAnswersPointToTheLink() {
        Walker walker = new Walker().open("/answers/stop").expect(403);
        assertThat(walker.text()).contains("Please open your link");
    }

    @Test
    void revokingShutsTheBrowserThatIsInAlready() {
        Walker client = atTheDoor().send(born("3", "4", "1990")).open("/answers/stop").expect(200);
        invitations.revoke(visit, "server");
        client.open("/answers/stop").expect(403);
    }

    @Test
    void aBrowserThatWasInBeforeTheFirstAnswersAndGaveNoneShowsACodeLikeAnyOther() {
        Walker first = atTheDoor().send(born("3", "4", "1990")).open("/answers/stop").expect(200);
        Walker second = atTheDoor().send(born("3", "4", "1990")).open("/answers/stop").expect(200);
        UUID door = QuarkusTransaction.requiringNew().call(() -> ClientSession
            .<ClientSession>find("cookieHash", Token.hash(first.cookies().get("door"))).firstResult().id);
        begin(door);
        assertThat(first.open("/answers/stop").expect(200).at()).isEqualTo("/answers/stop");
        assertThat(second.open("/answers/stop").at()).isEqualTo("/code");
    }

    @Test
    void onlyOneOfTwoBrowsersBegins() {
        atTheDoor().send(born("3", "4", "1990"));
        atTheDoor().send(born("3", "4", "1990"));
        List<UUID> both = QuarkusTransaction.requiringNew()
            .call(() -> ClientSession.<ClientSession>list("visit.id", visit).stream().map(door -> door.id).toList());
        begin(both.get(0));
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> begin(both.get(1)))
            .isInstanceOf(jakarta.persistence.OptimisticLockException.class);
        begin(both.get(0));
    }

    @Inject Guest guest;

    private void begin(UUID door) {
        ManagedContext context = io.quarkus.arc.Arc.container().requestContext();
        context.activate();
        try {
            guest.cameThrough(QuarkusTransaction.requiringNew().call(() -> ClientSession.findById(door)));
            guest.begin();
        } finally {
            context.terminate();
        }
    }

    @Test
    void theDesksCodeWorksOnceForFiveTriesAndFifteenMinutes() {
        make.is(visit, foretress.visit.State.ANSWERING);
        Walker client = atTheDoor().send(born("3", "4", "1990")).open("/code").expect(200);
        String code = codeFromTheDesk();
        clock.move(Duration.ofMinutes(16));
        client.send("form[action=/code]", Map.of("code", code)).expect(422);
        String guessed = codeFromTheDesk();
        for (int i = 0; i < 5; i++) {
            client.send("form[action=/code]", Map.of("code", "0000000" + i)).expect(422);
        }
        client.send("form[action=/code]", Map.of("code", guessed)).expect(422);
        String fresh = codeFromTheDesk();
        client.send("form[action=/code]", Map.of("code", fresh));
        assertThat(client.open("/answers/stop").expect(200).at()).isEqualTo("/answers/stop");
        Walker third = atTheDoor().send(born("3", "4", "1990")).open("/code");
        third.send("form[action=/code]", Map.of("code", fresh)).expect(422);
    }

    @Test
    @DisplayName("A27: a right code whose answer was lost on the way lets the same browser in when it is sent again")
    void aRightCodeSentAgainLetsTheSameBrowserIn() {
        make.is(visit, foretress.visit.State.ANSWERING);
        Walker client = atTheDoor().send(born("3", "4", "1990")).open("/code").expect(200);
        List<Map.Entry<String, String>> sent = new ArrayList<>(client.fields("form[action=/code]"));
        sent.removeIf(field -> field.getKey().equals("code"));
        sent.add(Map.entry("code", codeFromTheDesk()));
        client.post("/code", sent).post("/code", sent);
        assertThat(client.open("/answers/stop").expect(200).at()).isEqualTo("/answers/stop");
        assertThat(client.addresses()).filteredOn("/answers"::equals).hasSizeGreaterThanOrEqualTo(2);
    }

    private String codeFromTheDesk() {
        return salon.as("sanna").open("/desk/visits/" + visit).send("form[action$=/code]", Map.of()).expect(200)
            .only(".clock").text();
    }

    @Test
    void aBorrowedPhoneForgets() {
        Walker client = atTheDoor().send(born("3", "4", "1990")).open("/answers/stop");
        String cookie = client.cookies().get("door");
        client.send("form[action$=forget]", Map.of()).expect(200);
        assertThat(client.response().header("Clear-Site-Data")).contains("cache");
        assertThat(client.cookies()).doesNotContainKey("door");
        client.cookies().put("door", cookie);
        client.open("/answers/stop").expect(403);
    }
}
