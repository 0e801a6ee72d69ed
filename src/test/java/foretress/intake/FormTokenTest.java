package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import foretress.Walker;
import foretress.salon.OpenSalon;
import foretress.visit.VisitMaker;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("R1: a form can be sent as long as its session lives; after that with one press more, and no word typed twice")
class FormTokenTest {
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject MovedClock clock;

    @BeforeEach
    void open() {
        salon.open();
    }

    @AfterEach
    void backToNow() {
        clock.reset();
    }

    private static String token(Walker walker) {
        return walker.page().selectFirst("[name=csrf-token]").val();
    }

    /** The new client's form, filled in by somebody who takes her time. */
    private static List<Map.Entry<String, String>> booking(Walker walker, String family) {
        var fields = new ArrayList<Map.Entry<String, String>>(walker.fields("main form").stream()
            .filter(f -> !List.of("given", "family").contains(f.getKey())).toList());
        fields.add(Map.entry("given", "Ruth \"<b>&amp;"));
        fields.add(Map.entry("family", family));
        return fields;
    }

    private static void assertKept(Document page, String family) {
        assertThat(page.select("form[data-kept] [name=given]").val()).isEqualTo("Ruth \"<b>&amp;");
        assertThat(page.select("form[data-kept] [name=family]").val()).isEqualTo(family);
    }

    @Test
    void everyPageOfASessionCarriesTheSameTokenAndAnotherSessionAnother() {
        Walker petra = salon.as("petra");
        String first = token(petra.open("/desk/new-visit"));
        assertThat(token(petra.open("/desk"))).isEqualTo(first).isEqualTo(token(petra.open("/password")));
        assertThat(token(salon.as("petra").open("/desk"))).isNotEqualTo(first);
    }

    @Test
    void aSecondTabAndAPageThatLooksByItselfLeaveTheFirstTabsFormGood() {
        Walker petra = salon.as("petra");
        List<Map.Entry<String, String>> fields = booking(petra.open("/desk/new-visit"), "Tabs");
        for (int i = 0; i < 3; i++) {
            petra.open("/desk/new-visit").open("/day");
        }
        assertThat(petra.post("/desk/new-visit", fields).expect(422).page().select("form[data-kept]"))
            .as("only the date is missing").isEmpty();
        assertThat(petra.page().selectFirst("[name=family]").val()).isEqualTo("Tabs");
    }

    @Test
    void thirteenHoursLaterStaffSignInOnThatVeryPageAndSendWhatTheyTyped() {
        Walker petra = salon.as("petra").open("/desk/new-visit");
        List<Map.Entry<String, String>> fields = booking(petra, "Overnight");
        clock.move(Duration.ofHours(13));
        petra.post("/desk/new-visit", fields).expect(401);
        assertThat(petra.text()).contains("What you typed is kept");
        assertThat(petra.send(Map.of("login", "petra", "password", "wrong")).expect(422).text())
            .contains("What you typed is kept");
        petra.send(Map.of("login", "petra", "password", OpenSalon.PASSWORD)).expect(200);
        assertThat(petra.text()).contains("signed in as Petra Lind");
        assertKept(petra.page(), "Overnight");
        assertThat(petra.send(Map.of()).expect(422).page().select("form[data-kept]"))
            .as("the form itself, which lacks a date").isEmpty();
        assertThat(petra.page().selectFirst("[name=family]").val()).isEqualTo("Overnight");
    }

    @Test
    void aFormOfAnEarlierSignInIsShownAgainAndGoesThroughOnTheNextPress() {
        Walker petra = salon.as("petra").open("/desk/new-visit");
        List<Map.Entry<String, String>> fields = booking(petra, "Twice");
        petra.send(".who", Map.of()).send(Map.of("login", "petra", "password", OpenSalon.PASSWORD));
        assertKept(petra.post("/desk/new-visit", fields).expect(422).page(), "Twice");
        assertThat(petra.send(Map.of()).expect(422).page().select("form[data-kept]")).isEmpty();
        assertThat(petra.page().selectFirst("[name=family]").val()).isEqualTo("Twice");
    }

    @Test
    void aLostCookieAtSignInAsksForThePasswordAloneAgain() {
        Walker somebody = new Walker().open("/sign-in?to=/desk");
        somebody.cookies().clear();
        somebody.send(Map.of("login", "petra", "password", OpenSalon.PASSWORD)).expect(422);
        assertThat(somebody.page().html()).doesNotContain(OpenSalon.PASSWORD);
        assertThat(somebody.page().select("[name=login]").val()).isEqualTo("petra");
        assertThat(somebody.send(Map.of("password", OpenSalon.PASSWORD)).expect(200).at()).isEqualTo("/desk");
    }

    @Test
    void aClientWhoseDoorIsLostKeepsHerAnswersAndSendsThemOnceTheLinkIsOpenAgainAndTheCodeTyped() {
        UUID visit = make.visit(LocalDate.of(1965, 3, 4));
        Answering client = knocking.come(visit, Map.of()).agree();
        String topic = client.walker().at();
        ArrayList<Map.Entry<String, String>> form = new ArrayList<>(client.walker().fields("main form"));
        form.add(Map.entry("kept-here", "Ñandú — “yes”"));
        client.walker().cookies().clear();
        Document page = client.walker().post(topic, form).expect(403).page();
        assertThat(page.select("[name=kept-here]").val()).isEqualTo("Ñandú — “yes”");
        Walker again = knocking.come(visit, Map.of()).walker();
        client.walker().cookies().putAll(again.cookies());
        assertThat(again.at()).as("she has begun already, and this browser is a new one").isEqualTo("/code");
        page = client.walker().send(Map.of()).expect(403).page();
        assertThat(page.select("[name=kept-here]").val()).as("still here while the code is not typed")
            .isEqualTo("Ñandú — “yes”");
        again.send("form[action=/code]", Map.of("code", codeFromTheDesk(visit))).expect(200);
        client.walker().send(Map.of());
        assertThat(client.walker().page().select("form[data-kept]"))
            .as("taken, or shown a page of the way: %s", client.walker().text()).isEmpty();
        assertThat(client.walker().at()).as("the topic itself, which asks for what she left out").isEqualTo(topic);
        client.walker().expect(422);
    }

    private String codeFromTheDesk(UUID visit) {
        return salon.as("sanna").open("/desk/visits/" + visit).send("form[action$=/code]", Map.of()).expect(200)
            .only(".clock").text();
    }

    @Test
    void aCookieThatIsNoCookieOfOursOpensPagesAllTheSame() {
        for (String value : List.of("", "%", "not base64 !", "a".repeat(3000))) {
            assertThat(RestAssured.given().cookie("form", value).cookie("staff", value).cookie("door", value)
                .cookie("csrf-token", value)
                .get("/sign-in").statusCode()).as(value).isEqualTo(200);
        }
    }

    private static RequestSpecification sent(Walker walker, String family) {
        return RestAssured.given().redirects().follow(false).cookies(walker.cookies()).header("Accept", "text/html")
            .contentType("application/x-www-form-urlencoded; charset=UTF-8").formParam("family", family);
    }

    private static void assertNothingHappened(Response answer, int status) {
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(status);
        assertThat(answer.cookies()).doesNotContainKey("staff");
    }

    @Test
    void whatAnotherSiteSendsIsNeitherTakenNorKept() {
        Walker petra = salon.as("petra").open("/desk/new-visit");
        for (String site : List.of("cross-site", "same-site")) {
            Response answer = sent(petra, "Forged").header("Sec-Fetch-Site", site).formParam("csrf-token", token(petra))
                .post("/desk/new-visit");
            assertNothingHappened(answer, 403);
            assertThat(answer.asString()).doesNotContain("Forged");
        }
        assertThat(
            sent(petra, "Forged").header("Origin", "https://elsewhere.example").post("/desk/new-visit").asString())
            .doesNotContain("Forged");
    }

    @Test
    void whatNothingVouchesForIsKeptForALiveSessionAloneAndChangesNothing() {
        Walker petra = salon.as("petra").open("/desk");
        assertNothingHappened(sent(petra, "Quiet").post("/desk/new-visit"), 422);
        Response stranger = sent(new Walker(), "Quiet").post("/desk/new-visit");
        assertNothingHappened(stranger, 400);
        assertThat(stranger.asString()).doesNotContain("Quiet");
        assertNothingHappened(sent(new Walker(), "Quiet").formParam("login", "petra")
            .formParam("password", OpenSalon.PASSWORD).post("/sign-in"), 400);
    }

    @Test
    void anotherSessionsTokenIsNoneEvenForTheSamePerson() {
        Walker petra = salon.as("petra").open("/desk/new-visit");
        String stranger = token(salon.as("petra").open("/desk"));
        assertNothingHappened(sent(petra, "Borrowed").formParam("csrf-token", stranger).post("/desk/new-visit"), 422);
        Walker anonymous = new Walker().open("/sign-in");
        petra.cookies().putAll(anonymous.cookies());
        assertNothingHappened(sent(petra, "Tossed").formParam("csrf-token", token(anonymous)).post("/desk/new-visit"),
            422);
    }

    @Test
    void aFileIsAskedForAgainAndTheWordsBesideItAreKept() {
        Walker petra = salon.as("petra").open("/desk");
        Response answer = RestAssured.given().redirects().follow(false).cookies(petra.cookies())
            .header("Accept", "text/html").header("Sec-Fetch-Site", "same-origin")
            .multiPart("csrf-token", "stale").multiPart("words", "ear, left")
            .multiPart("photo", "spot.jpg", new byte[] { 1 }, "image/jpeg")
            .post("/visits/" + UUID.randomUUID() + "/bench/tests/" + UUID.randomUUID() + "/photo");
        FormElement form = (FormElement) Jsoup.parse(answer.asString()).selectFirst("form[data-kept]");
        assertThat(form.attr("enctype")).isEqualTo("multipart/form-data");
        assertThat(form.select("input[type=file]").attr("name")).isEqualTo("photo");
        assertThat(form.select("[name=words]").val()).isEqualTo("ear, left");
    }

    @Test
    void aFormTooLongToCarryIsRefusedPlainly() {
        Walker petra = salon.as("petra").open("/desk");
        RequestSpecification request = sent(petra, "Long").header("Sec-Fetch-Site", "same-origin");
        for (int i = 0; i < 5; i++) {
            request.formParam("words" + i, "x".repeat(300_000));
        }
        assertThat(request.post("/desk/new-visit").statusCode()).isEqualTo(400);
    }
}
