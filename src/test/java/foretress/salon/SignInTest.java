package foretress.salon;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.notNullValue;

import foretress.MovedClock;
import foretress.Visitor;
import foretress.web.RateLimiter;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("B8–B11, B13, B14: staff sign in, and nobody else")
class SignInTest {
    private static final String PASSWORD = "kettle orbit walnut 7";

    @Inject Passwords passwords;
    @Inject MovedClock clock;
    private final String login = "petra-" + UUID.randomUUID();

    @BeforeEach
    void somebodyWorksHere() {
        QuarkusTransaction.requiringNew().run(() -> {
            var staff = new Staff("Petra Lind", login, Role.STYLIST, clock.instant());
            staff.proves(passwords.hash(PASSWORD));
            staff.persist();
        });
    }

    @AfterEach
    void backToNow() {
        clock.reset();
    }

    private Visitor visitor() {
        return new Visitor();
    }

    private Response signIn(Visitor visitor, String login, String password) {
        visitor.get("/sign-in");
        return visitor.post("/sign-in", Map.of("login", login, "password", password));
    }

    private Visitor signedIn() {
        Visitor visitor = visitor();
        signIn(visitor, login, PASSWORD).then().statusCode(303).header("Location", endsWith("/day"));
        return visitor;
    }

    private void assertSignedIn(Visitor visitor, boolean expected) {
        assertThat(visitor.get("/password").statusCode()).isEqualTo(expected ? 200 : 303);
    }

    @Test
    void theRightPasswordLetsIn() {
        assertSignedIn(signedIn(), true);
    }

    @Test
    void theLoginIsReadWithoutCaseThePasswordIsNot() {
        signIn(visitor(), login.toUpperCase(), PASSWORD).then().statusCode(303);
        signIn(visitor(), login, PASSWORD.toUpperCase()).then().statusCode(422);
    }

    @Test
    void aWrongPasswordKeepsTheLoginAndSaysWhatToDo() {
        signIn(visitor(), login, "wrong").then().statusCode(422).body(containsString("Please look again"))
            .body(containsString("value=\"" + login + "\"")).body(containsString("do not belong together"));
    }

    @Test
    void anUnknownLoginIsAnsweredLikeAWrongPassword() {
        String known = signIn(visitor(), login, "wrong password here").asString().replace(login, "X");
        String other = "nobody-" + UUID.randomUUID();
        String unknown = signIn(visitor(), other, "wrong password here").asString().replace(other, "X");
        assertThat(withoutToken(unknown)).isEqualTo(withoutToken(known));
    }

    private static String withoutToken(String page) {
        return page.replaceAll("name=\"csrf-token\" value=\"[^\"]*\"", "");
    }

    @Test
    void somebodyWhoLeftIsANobody() {
        Visitor visitor = signedIn();
        QuarkusTransaction.requiringNew().run(() -> Staff.byLogin(login).orElseThrow().leaves());
        assertSignedIn(visitor, false);
        signIn(visitor(), login, PASSWORD).then().statusCode(422);
    }

    @Test
    void theCookieIsForThisServerAndNoScript() {
        Visitor visitor = visitor();
        assertThat(signIn(visitor, login, PASSWORD).headers().getValues("Set-Cookie"))
            .filteredOn(c -> c.startsWith("staff="))
            .singleElement().asString().contains("HttpOnly", "SameSite=Lax", "Path=/");
    }

    @Test
    void aMadeUpOrAlteredCookieLetsNobodyIn() {
        Visitor visitor = signedIn();
        String cookie = visitor.cookie("staff");
        visitor.cookie("staff", (cookie.charAt(4) == 'A' ? "B" : "A") + cookie.substring(1));
        assertSignedIn(visitor, false);
    }

    @Test
    void signingOutEndsTheSessionForACopiedCookieToo() {
        Visitor visitor = signedIn();
        String copy = visitor.cookie("staff");
        visitor.get("/password");
        visitor.post("/sign-out", Map.of()).then().statusCode(303);
        visitor.cookie("staff", copy);
        assertSignedIn(visitor, false);
    }

    @Test
    void aScreenLeftAloneHalfAnHourIsSignedOut() {
        Visitor visitor = signedIn();
        clock.move(Duration.ofMinutes(29));
        assertSignedIn(visitor, true);
        clock.move(Duration.ofMinutes(29));
        assertSignedIn(visitor, true);
        clock.move(Duration.ofMinutes(31));
        assertSignedIn(visitor, false);
    }

    @Test
    void nobodyStaysLongerThanTwelveHours() {
        Visitor visitor = signedIn();
        for (int i = 0; i < 28; i++) {
            clock.move(Duration.ofMinutes(25));
            assertSignedIn(visitor, true);
        }
        clock.move(Duration.ofMinutes(25));
        assertSignedIn(visitor, false);
    }

    @Test
    void aChangedPasswordEndsAllOtherSessions() {
        Visitor elsewhere = signedIn();
        Visitor here = signedIn();
        here.get("/password");
        here.post("/password",
            Map.of("current", PASSWORD, "password", "lantern gravel ocean 4", "password-again",
                "lantern gravel ocean 4"))
            .then().statusCode(303);
        assertSignedIn(here, true);
        assertSignedIn(elsewhere, false);
        signIn(visitor(), login, PASSWORD).then().statusCode(422);
        signIn(visitor(), login, "lantern gravel ocean 4").then().statusCode(303);
    }

    @Test
    void tooManyTriesWaitLongerAndLongerAndOthersDoNot() {
        clock.stop();
        for (int i = 0; i < RateLimiter.FREE_TRIES; i++) {
            signIn(visitor(), login, "wrong").then().statusCode(422);
        }
        signIn(visitor(), login, PASSWORD).then().statusCode(429).header("Retry-After", notNullValue())
            .body(containsString("seconds, then try again"));
        clock.move(Duration.ofSeconds(2));
        signIn(visitor(), login, PASSWORD).then().statusCode(303);
    }

    private void strangersTryUntilTheyWait() {
        for (int i = 0; i < 11; i++) {
            Visitor stranger = visitor().from("198.51.100." + i);
            assertThat(signIn(stranger, login, "wrong " + i).statusCode()).isIn(422, 429);
        }
        signIn(visitor(), login, PASSWORD).then().statusCode(429).header("Retry-After", notNullValue());
    }

    @Test
    @DisplayName("R62: eleven wrong passwords from strangers make an unknown device wait, and nobody on a device of their own")
    void aKnownDeviceKeepsAWayIn() {
        clock.stop();
        Visitor own = signedIn();
        strangersTryUntilTheyWait();
        own.post("/sign-out", Map.of());
        signIn(own, login, PASSWORD).then().statusCode(303);
    }

    @Test
    @DisplayName("R62: a device is one person's, and a new password makes it unknown")
    void aDeviceIsKnownForItsOwnPersonAndPassword() {
        clock.stop();
        Visitor own = signedIn();
        QuarkusTransaction.requiringNew()
            .run(() -> Staff.byLogin(login).orElseThrow().proves(passwords.hash("lantern gravel ocean 4")));
        for (int i = 0; i < 11; i++) {
            signIn(visitor(), login, "wrong");
        }
        signIn(own, login, "lantern gravel ocean 4").then().statusCode(429);
    }

    @Test
    @DisplayName("R62: a stolen device cookie guesses no faster than anybody")
    void aKnownDeviceWaitsForItsOwnWrongTries() {
        clock.stop();
        Visitor own = signedIn();
        for (int i = 0; i < RateLimiter.FREE_TRIES; i++) {
            signIn(own, login, "wrong").then().statusCode(422);
        }
        signIn(own, login, PASSWORD).then().statusCode(429);
    }

    @Test
    @DisplayName("R62: whoever is signed in proves it again whatever strangers do")
    void theProofInsideASessionHasItsOwnCount() {
        clock.stop();
        Visitor own = signedIn();
        strangersTryUntilTheyWait();
        own.get("/password");
        own.post("/password",
            Map.of("current", PASSWORD, "password", "lantern gravel ocean 4", "password-again",
                "lantern gravel ocean 4"))
            .then().statusCode(303);
    }

    @Test
    @DisplayName("R68: the host a request claims is not where it is sent on to")
    void aForgedHostGoesNowhere() {
        given().redirects().follow(false).header("Host", "elsewhere.example").get("/").then().statusCode(303)
            .header("Location", equalTo("/sign-in"));
    }

    @Test
    void aHashMadeWithLessEffortIsMadeAgain() {
        QuarkusTransaction.requiringNew()
            .run(() -> Staff.byLogin(login).orElseThrow().passwordHash = OldHash.of(PASSWORD));
        signIn(visitor(), login, PASSWORD).then().statusCode(303);
        String now = QuarkusTransaction.requiringNew().call(() -> Staff.byLogin(login).orElseThrow().passwordHash);
        assertThat(PasswordHash.parse(now).isOutdated()).isFalse();
        signIn(visitor(), login, PASSWORD).then().statusCode(303);
    }

    @Test
    void afterSigningInOneIsWhereOneWanted() {
        Visitor visitor = visitor();
        visitor.get("/password").then().statusCode(303).header("Location", endsWith("/sign-in?to=%2Fpassword"));
        visitor.get("/sign-in?to=%2Fpassword");
        visitor.post("/sign-in", Map.of("login", login, "password", PASSWORD, "to", "/password")).then()
            .header("Location", endsWith("/password"));
    }

    @Test
    void andNeverSentElsewhere() {
        for (String to : new String[] { "https://elsewhere.example", "//elsewhere.example", "/\\elsewhere.example",
            "javascript:alert(1)" }) {
            Visitor visitor = visitor();
            visitor.get("/sign-in");
            visitor.post("/sign-in", Map.of("login", login, "password", PASSWORD, "to", to)).then().header("Location",
                endsWith("/day"));
        }
    }

    @Test
    void aStylistMayNotDecideWhoWorksHere() {
        signedIn().get("/staff").then().statusCode(403);
    }

    @Test
    void aProgramWithoutASessionIsTold() {
        given().redirects().follow(false).accept("application/json").get("/staff").then().statusCode(406)
            .contentType("application/problem+json");
        given().redirects().follow(false).accept("*/*").get("/staff").then().statusCode(303);
    }
}
