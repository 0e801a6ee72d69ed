package foretress.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThanOrEqualTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
@DisplayName("B7, B17, B18: every answer carries the headers that keep it private and ours")
class HeadersTest {
    private static Response get(String path) {
        return given().redirects().follow(false).get(path);
    }

    @ParameterizedTest
    @ValueSource(strings = { "/", "/sign-in", "/language", "/staff", "/no/such/page", "/q/health/ready", "/q/nothing",
        "/css/base.css",
        "/js/keep.js", "/set-up/wrong" })
    void pagesFilesAndErrorsAlike(String path) {
        get(path).then()
            .header("Content-Security-Policy", Headers.POLICY)
            .header("X-Content-Type-Options", "nosniff")
            .header("Referrer-Policy", "no-referrer")
            .header("Cross-Origin-Opener-Policy", "same-origin")
            .header("Cross-Origin-Resource-Policy", "same-origin")
            .header("Permissions-Policy", containsString("camera=()"));
        assertThat(get(path).header("Server")).isNull();
        assertThat(get(path).header("X-Powered-By")).isNull();
    }

    @Test
    void thePolicyAllowsNothingInlineAndNothingFromElsewhere() {
        assertThat(Headers.POLICY).startsWith("default-src 'none'").contains("form-action 'self'", "base-uri 'none'",
            "frame-ancestors 'none'", "object-src 'none'").doesNotContain("unsafe", "http", "data:", "*");
    }

    @ParameterizedTest
    @ValueSource(strings = { "/", "/sign-in", "/staff", "/no/such/page", "/set-up/wrong", "/css/no-such.css" })
    void nothingButOurFilesStaysInACache(String path) {
        get(path).then().header("Cache-Control", "no-store");
    }

    @Test
    void ourFilesStayADayOrForGoodUnderTheirHash() {
        get("/css/base.css").then().statusCode(200).header("Cache-Control", "public, max-age=86400");
        get("/css/base.css?v=0123").then().statusCode(200).header("Cache-Control",
            "public, max-age=31536000, immutable");
    }

    @Test
    void aMissingPageSaysWhatToDo() {
        get("/no/such/page").then().statusCode(404).contentType("text/html")
            .body(containsString("There is no such page"));
    }

    @Test
    void inTheReadersLanguage() {
        given().header("Accept-Language", "es-MX,es;q=0.9,en;q=0.5").get("/no/such/page").then()
            .statusCode(404).body(containsString("No existe esa página")).body(containsString("lang=\"es\""));
    }

    @Test
    void theChosenLanguageOutweighsTheBrowsers() {
        given().header("Accept-Language", "es").cookie("language", "en").get("/no/such/page").then()
            .body(containsString("There is no such page"));
    }

    @Test
    void aProgramGetsAProblemDocument() {
        given().accept("application/json").get("/no/such/page").then()
            .statusCode(404).contentType("application/problem+json").body("status", equalTo(404))
            .body("type", equalTo("about:blank"));
    }

    @Test
    void aWrongMethodIsSaidCalmly() {
        given().redirects().follow(false).put("/sign-in").then().statusCode(405).contentType("text/html")
            .body(containsString("That did not work"));
    }

    @Test
    void nothingIsEchoed() {
        given().header("X-Canary", "echo").request("TRACE", "/sign-in").then().statusCode(greaterThanOrEqualTo(400))
            .body(not(containsString("X-Canary")));
    }

    @Test
    void healthTellsNoDetail() {
        get("/q/health/ready").then().statusCode(200).body(not(containsString("jdbc")));
    }

    /** Refused on the announced length alone, before the body is sent. */
    @Test
    void tooMuchIsRefusedWithAPage() throws IOException {
        try (var socket = new Socket("127.0.0.1", RestAssured.port)) {
            socket.getOutputStream().write(("POST /sign-in HTTP/1.1\r\nHost: localhost\r\nContent-Length: 13000000\r\n"
                + "Content-Type: application/x-www-form-urlencoded\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
            socket.setSoTimeout(10_000);
            var reader = new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            assertThat(reader.readLine()).contains("413");
            assertThat(reader.lines().takeWhile(line -> !line.contains("</h1>")).toList())
                .anyMatch(line -> line.contains("That was too much"))
                .anyMatch(line -> line.toLowerCase().startsWith("content-security-policy"));
        }
    }

    @Test
    void oneFieldTooLongIsRefusedWithAPage() {
        given().contentType("application/x-www-form-urlencoded").body("login=" + "a".repeat(600_000)).post("/sign-in")
            .then()
            .statusCode(413).contentType("text/html").body(containsString("That was too much"));
    }

    @Test
    void aPageNeverShowsTheInside() {
        given().contentType("application/x-www-form-urlencoded").body("login=%ZZ&login=a%00").post("/sign-in").then()
            .statusCode(400).body(not(containsString("Exception"))).body(not(containsString("at foretress")));
    }

    @Test
    void aHealthPageIsAnswered() {
        get("/sign-in").then().statusCode(200).header("Content-Type", startsWith("text/html"));
    }
}
