package foretress.salon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;

import foretress.MovedClock;
import foretress.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("B8, B13: the first owner, and everybody's first password, come through a code that works once")
class SetUpTest {
    private static final String PASSWORD = "kettle orbit walnut 7";

    @Inject MovedClock clock;
    @Inject OpenSalon others;

    @BeforeEach
    void nobodyYet() {
        QuarkusTransaction.requiringNew().run(() -> {
            SetUpCode.deleteAll();
            Salon.deleteAll();
            Staff.update("role = ?1 where role = ?2", Role.STYLIST, Role.OWNER);
        });
    }

    @AfterEach
    void asOtherTestsExpect() {
        clock.reset();
        QuarkusTransaction.requiringNew().run(() -> {
            Salon.deleteAll();
            Staff.update("role = ?1 where login = ?2", Role.OWNER, "edda");
        });
        others.open();
    }

    private String ownersPath() {
        return "/set-up/" + QuarkusTransaction.requiringNew().call(() -> SetUpCode.forOwner(clock.instant()));
    }

    private static Map<String, String> filled() {
        HashMap<String, String> form = new HashMap<>(
            Map.of("name", "Alder & Wren", "address", "3 Millrace Lane", "town", "Tarnbeck", "phone", "01632 960 114",
                "email", "hello@alderandwren.example", "urgent-number", "999", "zone", "Europe/London", "jurisdiction",
                "uk", "paper-size", "A4",
                "languages", "es"));
        form.putAll(Map.of("hours-tuesday", "9:00-13:00, 14:00-18:00", "own-name", "Edda Wren", "login",
            "edda-" + UUID.randomUUID(),
            "password", PASSWORD, "password-again", PASSWORD));
        return form;
    }

    private static Response set(Visitor visitor, String path, Map<String, String> form) {
        visitor.get(path).then().statusCode(200);
        return visitor.post(path, form);
    }

    @Test
    void theOwnerSetsUpTheSalonAndIsIn() {
        var visitor = new Visitor();
        set(visitor, ownersPath(), filled()).then().statusCode(303).header("Location", endsWith("/desk"));
        visitor.get("/staff").then().statusCode(200).body(containsString("Edda Wren"));
        Salon salon = QuarkusTransaction.requiringNew().call(Salon::the);
        assertThat(salon.name).isEqualTo("Alder & Wren");
        assertThat(salon.zoneId().getId()).isEqualTo("Europe/London");
        assertThat(salon.languageTags()).containsExactly("es");
        assertThat(salon.week().toString()).contains("TUESDAY 09:00-13:00, 14:00-18:00", "MONDAY closed");
    }

    @Test
    void theCodeWorksOnce() {
        String path = ownersPath();
        set(new Visitor(), path, filled()).then().statusCode(303);
        new Visitor().get(path).then().statusCode(404);
    }

    @Test
    void lookingDoesNotUseItUp() {
        String path = ownersPath();
        for (int i = 0; i < 50; i++) {
            new Visitor().get(path).then().statusCode(200);
        }
        set(new Visitor(), path, filled()).then().statusCode(303);
    }

    @Test
    void theCodeRunsOutAfterADay() {
        String path = ownersPath();
        clock.move(Duration.ofHours(24));
        new Visitor().get(path).then().statusCode(404);
    }

    @Test
    void onlyItsHashIsKept() {
        String code = ownersPath().substring("/set-up/".length());
        assertThat(code).hasSize(43);
        assertThat(QuarkusTransaction.requiringNew().call(() -> SetUpCode.<SetUpCode>listAll().get(0).hash)).hasSize(64)
            .doesNotContain(code);
    }

    @Test
    void whatIsMissingIsNamedAndTheRestIsKept() {
        Map<String, String> form = filled();
        form.putAll(Map.of("phone", "ring me", "zone", "Tarnbeck/Local", "hours-friday", "late", "password-again",
            "another one entirely"));
        String page = set(new Visitor(), ownersPath(), form).then().statusCode(422).extract().asString();
        Document document = Jsoup.parse(page);
        assertThat(document.title()).startsWith("Please look again");
        assertThat(document.select(".mistakes a").eachAttr("href")).containsExactly("#phone", "#zone", "#hours-friday",
            "#password-again");
        for (String link : document.select(".mistakes a").eachAttr("href")) {
            assertThat(document.select(link)).as(link).hasSize(1);
        }
        assertThat(document.selectFirst("#name").val()).isEqualTo("Alder & Wren");
        assertThat(document.selectFirst("#hours-friday").val()).isEqualTo("late");
        assertThat(document.selectFirst("#password").val()).isEmpty();
        assertThat(page).contains("Friday: “late” cannot be read");
    }

    @Test
    void aPasswordMadeOfTheSalonsNameIsRefused() {
        Map<String, String> form = filled();
        form.putAll(Map.of("password", "Alder & Wren, Tarnbeck", "password-again", "Alder & Wren, Tarnbeck"));
        set(new Visitor(), ownersPath(), form).then().statusCode(422).body(containsString("anybody here could guess"));
    }

    @Test
    void aFieldSentTwiceIsAForgery() {
        var visitor = new Visitor();
        String path = ownersPath();
        visitor.get(path);
        visitor.post(path, filled(), "login", "another").then().statusCode(400);
    }

    @Test
    void aNewMemberOfStaffChoosesTheirOwnPassword() {
        var owner = new Visitor();
        set(owner, ownersPath(), filled()).then().statusCode(303);
        owner.get("/staff");
        String login = "juno-" + UUID.randomUUID();
        String page = owner.post("/staff", Map.of("own-name", "Juno Marsh", "login", login, "role", "STYLIST")).then()
            .statusCode(201)
            .extract().asString();
        String path = Jsoup.parse(page).selectFirst(".handed code").text().replaceAll("^https?://[^/]+", "");
        var juno = new Visitor();
        juno.get(path).then().statusCode(200).body(containsString("Hello Juno Marsh"));
        juno.post(path, Map.of("password", PASSWORD, "password-again", PASSWORD)).then().statusCode(303)
            .header("Location", endsWith("/day"));
        juno.get("/password").then().statusCode(200);
        new Visitor().get(path).then().statusCode(404);
    }

    @Test
    void aNewCodeEndsTheOldPasswordAndEverySession() {
        var owner = new Visitor();
        set(owner, ownersPath(), filled());
        Staff staff = QuarkusTransaction.requiringNew().call(() -> {
            var juno = new Staff("Juno Marsh", "juno-" + UUID.randomUUID(), Role.DESK, clock.instant());
            juno.persist();
            return juno;
        });
        String path = "/set-up/" + QuarkusTransaction.requiringNew()
            .call(() -> SetUpCode.forStaff(Staff.byId(staff.id).orElseThrow(), clock.instant()));
        var juno = new Visitor();
        set(juno, path, Map.of("password", PASSWORD, "password-again", PASSWORD)).then().statusCode(303);
        juno.get("/password").then().statusCode(200);
        owner.get("/staff");
        owner.post("/staff/" + staff.id + "/code", Map.of()).then().statusCode(201);
        juno.get("/password").then().statusCode(303);
        juno.get("/sign-in");
        juno.post("/sign-in", Map.of("login", staff.login, "password", PASSWORD)).then().statusCode(422);
    }

    @Test
    void theOwnerCannotShutThemselvesOut() {
        var owner = new Visitor();
        Map<String, String> form = filled();
        set(owner, ownersPath(), form);
        Staff self = QuarkusTransaction.requiringNew().call(() -> Staff.byLogin(form.get("login")).orElseThrow());
        owner.get("/staff");
        owner.post("/staff/" + self.id + "/leave", Map.of()).then().statusCode(404);
    }

    @Test
    void theParticularsCanBeChangedLater() {
        var owner = new Visitor();
        set(owner, ownersPath(), filled());
        Document page = Jsoup.parse(owner.get("/salon").asString());
        assertThat(page.selectFirst("#phone").val()).isEqualTo("01632 960 114");
        assertThat(page.selectFirst("#hours-tuesday").val()).isEqualTo("09:00–13:00, 14:00–18:00");
        assertThat(page.select("option[selected]").text()).isEqualTo("Europe/London");
        Map<String, String> form = filled();
        form.putAll(Map.of("phone", "01632 960 115", "version", page.selectFirst("input[name=version]").val()));
        owner.post("/salon", form).then().statusCode(303);
        assertThat(QuarkusTransaction.requiringNew().call(Salon::the).phone).isEqualTo("01632 960 115");
        owner.get("/salon");
        owner.post("/salon", form).then().statusCode(422).body(containsString("Somebody else changed this meanwhile"));
    }

    @Test
    @DisplayName("R11: the owner names the days on which the salon is shut, and the planner knows them")
    void closedDaysAreParticularsToo() {
        var owner = new Visitor();
        set(owner, ownersPath(), filled());
        Map<String, String> form = filled();
        form.putAll(Map.of("closed-days", "Christmas", "version",
            Jsoup.parse(owner.get("/salon").asString()).selectFirst("input[name=version]").val()));
        owner.post("/salon", form).then().statusCode(422).body(containsString("We cannot read “Christmas”"));
        form.put("closed-days", "2026-12-24 to 2026-12-26");
        owner.get("/salon");
        owner.post("/salon", form).then().statusCode(303);
        assertThat(Jsoup.parse(owner.get("/salon").asString()).selectFirst("#closed-days").val())
            .isEqualTo("2026-12-24 to 2026-12-26");
        assertThat(QuarkusTransaction.requiringNew().call(() -> Salon.the().hours().closed())).hasSize(3);
    }
}
