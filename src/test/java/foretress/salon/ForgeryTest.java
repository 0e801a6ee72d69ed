package foretress.salon;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.UUID;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@QuarkusTest
@DisplayName("B16: no form that is not from our own page changes anything; every changing route of the table is tried")
class ForgeryTest {
    static Stream<String> changingPaths() {
        return Rights.table().stream().filter(ForgeryTest::isOpenedByACookie).map(Right::route)
            .filter(route -> !route.startsWith("GET ")).peek(route -> assertThat(route).startsWith("POST "))
            .map(route -> filled(route.substring(5)));
    }

    /** An address of this route: what may only be one of a few words is one of them, all else an id. */
    private static String filled(String path) {
        return path.replace("/bench/{kind}", "/bench/test-cutting").replace("/noted/{kind}", "/noted/letter")
            .replaceAll("\\{[^}]+}", UUID.randomUUID().toString());
    }

    private static boolean takesAFile(String path) {
        return path.endsWith("/photo") || path.endsWith("/paper") || path.endsWith("/photos/send");
    }

    /** What a program asks for is opened by its token alone, whatever a browser sends along. */
    private static boolean isOpenedByACookie(Right right) {
        return right.kind() != Right.Kind.PROGRAM;
    }

    private static RequestSpecification form() {
        return RestAssured.given().redirects().follow(false).header("Accept", "text/html")
            .contentType("application/x-www-form-urlencoded; charset=UTF-8");
    }

    private static String token(Response page) {
        return Jsoup.parse(page.asString()).selectFirst("[name=csrf-token]").val();
    }

    private static void refused(RequestSpecification request, String path) {
        int status = request.post(path).statusCode();
        if (!takesAFile(path) || status != 415) {
            assertThat(status).as(path).isIn(400, 403);
        }
    }

    @ParameterizedTest
    @MethodSource("changingPaths")
    void inSeveralPartsWithoutAToken(String path) {
        int status = RestAssured.given().redirects().follow(false).header("Accept", "text/html")
            .multiPart("photo", "spot.jpg", new byte[] { 1 }, "image/jpeg").post(path).statusCode();
        if (takesAFile(path)) {
            assertThat(status).as(path).isIn(400, 403);
        } else {
            assertThat(status).as(path).isIn(400, 403, 415);
        }
    }

    @ParameterizedTest
    @MethodSource("changingPaths")
    void withoutAToken(String path) {
        refused(form().formParam("login", "petra"), path);
    }

    @ParameterizedTest
    @MethodSource("changingPaths")
    void withAMadeUpToken(String path) {
        refused(form().cookie("form", "bWFkZS11cC1vbmU".repeat(3).substring(0, 43)).formParam("csrf-token",
            "YW5vdGhlci1vbmU"), path);
    }

    @ParameterizedTest
    @MethodSource("changingPaths")
    void withATokenButFromAnotherSite(String path) {
        Response page = RestAssured.get("/sign-in");
        String cookie = page.cookie("form");
        String token = token(page);
        assertThat(cookie).isNotBlank();
        refused(form().header("Sec-Fetch-Site", "cross-site").cookie("form", cookie).formParam("csrf-token", token),
            path);
        refused(form().header("Sec-Fetch-Site", "same-site").cookie("form", cookie).formParam("csrf-token", token),
            path);
        refused(
            form().header("Origin", "https://elsewhere.example").cookie("form", cookie).formParam("csrf-token", token),
            path);
    }

    @ParameterizedTest
    @MethodSource("changingPaths")
    void asPlainTextOrJson(String path) {
        Response page = RestAssured.get("/sign-in");
        String cookie = page.cookie("form");
        String token = token(page);
        for (String type : new String[] { "text/plain", "application/json" }) {
            assertThat(RestAssured.given().header("Accept", "text/html").contentType(type).cookie("form", cookie)
                .body("csrf-token=" + token).post(path).statusCode()).as(path + " " + type).isIn(400, 403, 415);
        }
    }
}
