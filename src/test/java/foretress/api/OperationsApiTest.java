package foretress.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.MovedClock;
import foretress.Walker;
import foretress.knowledge.Knowledge;
import foretress.salon.OpenSalon;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class OperationsApiTest {
    private static final String PROBLEM = "application/problem+json";
    private static final Map<Scope, String> OTHERS = new EnumMap<>(Scope.class);
    private static String everything;

    @Inject Programs programs;
    @Inject OpenSalon salon;
    @Inject MovedClock clock;
    @Inject Knowledge knowledge;

    @BeforeEach
    void aProgramIsLetIn() {
        if (everything == null) {
            everything = programs.token(365, "assess", "read", "bench");
        }
    }

    @AfterEach
    void putBack() {
        clock.reset();
    }

    private static Response ask(RequestSpecification as, String method, String path, JsonNode body) {
        return method.equals("get") ? as.get("/api/v1" + path) : as.body(body.toString()).post("/api/v1" + path);
    }

    private static JsonNode json(Response response) throws JsonProcessingException {
        return JsonBodies.JSON.readTree(response.asString());
    }

    /** Two long documents, without printing both when they differ. */
    private static void same(JsonNode found, JsonNode expected, String what) {
        assertThat(found.equals(expected)).as("%s: %.300s", what, found).isTrue();
    }

    private JsonNode document() throws JsonProcessingException {
        return json(Programs.with(everything).get("/api/v1/openapi"));
    }

    /** A problem as RFC 9457 has it: the status once more, a path of ours, and nothing of the inside. */
    private static JsonNode problem(Response response, int status) {
        try {
            assertThat(response.statusCode()).as(response.asString()).isEqualTo(status);
            assertThat(response.contentType()).startsWith(PROBLEM);
            JsonNode problem = json(response);
            assertThat(problem.get("type").asText()).isEqualTo("about:blank");
            assertThat(problem.get("status").asInt()).isEqualTo(status);
            assertThat(problem.get("title").asText()).isNotBlank();
            assertThat(problem.get("detail").asText()).isNotBlank();
            assertThat(problem.get("instance").asText()).startsWith("/api");
            assertThat(problem.toString()).doesNotContain("Exception", "foretress.", "java.", "jackson");
            return problem;
        } catch (JsonProcessingException e) {
            throw new AssertionError(response.asString(), e);
        }
    }

    @Test
    @DisplayName("B26: every worked example of the document, sent as it stands, is answered as it stands")
    void everyDocumentedExampleIsAnsweredAsDocumented() throws JsonProcessingException {
        JsonNode document = document();
        int tried = 0;
        for (Map.Entry<String, JsonNode> path : document.get("paths").properties()) {
            for (Map.Entry<String, JsonNode> operation : path.getValue().properties()) {
                JsonNode examples = operation.getValue().at("/requestBody/content/application~1json/examples");
                for (Map.Entry<String, JsonNode> example : examples.properties()) {
                    Response answer = ask(Programs.with(everything), operation.getKey(), path.getKey(),
                        example.getValue().get("value"));
                    assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(200);
                    JsonNode expected = operation.getValue().at("/responses/200/content/application~1json/examples")
                        .get(example.getKey()).get("value");
                    same(json(answer), expected, example.getKey());
                    tried++;
                }
            }
        }
        assertThat(tried).isGreaterThanOrEqualTo(12);
    }

    @Test
    @DisplayName("B26: every operation of the document refuses no token, a wrong one, an expired one, a revoked one and one for something else")
    void noOperationAnswersWithoutItsToken() throws JsonProcessingException {
        JsonNode document = document();
        var schemas = new Schemas((ObjectNode) document);
        String expired = programs.token(30, "assess", "read", "bench");
        clock.move(Duration.ofDays(31));
        int refused = 0;
        for (Operation operation : new Operations(knowledge).all()) {
            String method = operation.request().isPresent() ? "post" : "get";
            String path = "/" + operation.path();
            assertThat(document.get("paths").get(path).has(method)).as(path).isTrue();
            JsonNode body = operation.examples().isEmpty() ? JsonBodies.JSON.createObjectNode()
                : OpenApi.example(operation.examples().get(0));
            for (RequestSpecification nobody : nobodies(expired)) {
                Response answer = ask(nobody, method, path, body);
                assertThat(schemas.problem(problem(answer, 401))).isEmpty();
                assertThat(answer.header("WWW-Authenticate")).startsWith("Bearer");
                refused++;
            }
            if (operation.scope().isPresent()) {
                Response answer = ask(Programs.with(otherwise(operation.scope().get())), method, path, body);
                assertThat(schemas.problem(problem(answer, 403))).isEmpty();
                assertThat(answer.header("WWW-Authenticate")).contains("insufficient_scope",
                    operation.scope().get().code());
                refused++;
            }
        }
        assertThat(refused).isGreaterThan(50);
    }

    private List<RequestSpecification> nobodies(String expired) {
        RequestSpecification asOwner =
            RestAssured.given().contentType("application/json").cookies(salon.as("edda").cookies());
        return List.of(RestAssured.given().contentType("application/json"), Programs.with(expired),
            Programs.with("ftr_" + "A".repeat(43)),
            Programs.with(""),
            RestAssured.given().contentType("application/json").queryParam("access_token", everything),
            RestAssured.given().contentType("application/json").header("Authorization", "Basic " + everything),
            asOwner);
    }

    private String otherwise(Scope scope) {
        return OTHERS.computeIfAbsent(scope, s -> programs.token(365,
            Arrays.stream(Scope.values()).filter(o -> o != s).map(Scope::code).toArray(String[]::new)));
    }

    @Test
    void aRevokedTokenOpensNothingFromThatMomentOn() {
        String token = programs.token(90, "read");
        assertThat(Programs.with(token).body("{\"text\":\"Aqua\"}").post("/api/v1/read-label").statusCode())
            .isEqualTo(200);
        Walker edda = salon.as("edda").open("/programs");
        String revoke = edda.only("form:has([aria-label$='" + programs.lastName() + "'])").attr("action");
        edda.send("form[action='" + revoke + "']", Map.of()).expect(200);
        problem(Programs.with(token).body("{\"text\":\"Aqua\"}").post("/api/v1/read-label"), 401);
    }

    @Test
    void thePictureIsAnsweredToWhoeverAcceptsOne() {
        Response drawn = Programs.with(everything).accept("image/svg+xml")
            .body(OpenApi.example("restorer-two-summers-ago").toString()).post("/api/v1/strand-map");
        assertThat(drawn.statusCode()).isEqualTo(200);
        assertThat(drawn.contentType()).startsWith("image/svg+xml");
        assertThat(drawn.asString()).startsWith("<svg").contains("Darkening lotion");
        problem(Programs.with(everything).accept("text/html").body("{}").post("/api/v1/strand-map"), 406);
    }

    @Test
    void theDescriptionComesAsYamlToo() throws JsonProcessingException {
        assertThat(Programs.with(everything).accept("application/yaml").get("/api/v1/openapi").asString())
            .startsWith("openapi: 3.1");
        Response owners = salon.as("edda").open("/programs/openapi").response();
        same(json(owners), document(), "the owner's copy");
    }

    @Test
    void theQuestionsComeInTheLanguageAskedFor() throws JsonProcessingException {
        assertThat(json(Programs.with(everything).get("/api/v1/questionnaire?language=es")).get("language").asText())
            .isEqualTo("es");
        assertThat(json(Programs.with(everything).get("/api/v1/questionnaire")).get("language").asText())
            .isEqualTo("en");
    }

    @ParameterizedTest
    @DisplayName("A language nobody has words in is refused by name, and no other is given in its place")
    @ValueSource(strings = { "xx", "de", "english", "e" })
    void aLanguageThereAreNoWordsInIsRefused(String language) {
        JsonNode problem = problem(Programs.with(everything).get("/api/v1/questionnaire?language=" + language), 422);
        assertThat(problem.get("errors").findValuesAsText("pointer")).containsExactly("/language");
    }

    @ParameterizedTest
    @DisplayName("E8: what is no JSON, or not ours, is a problem")
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "`` | 400", "{ | 400", "{\"text\":\"a\"} trailing | 400", "{\"text\":\"a\",\"text\":\"b\"} | 400",
        "{\"text\":NaN} | 400", "{'text':'a'} | 400",
        "[] | 422", "null | 422", "\"text\" | 422", "{\"text\":\"\\ud800\"} | 422", "{\"text\":\"\\u0000\"} | 422",
        "{\"text\":\"a\",\"more\":{}} | 422" })
    void aBodyThatCannotBeRead(String body, int status) {
        JsonNode problem = problem(Programs.with(everything).body(body).post("/api/v1/read-label"), status);
        assertThat(problem.has("errors")).isEqualTo(status == 422);
    }

    @Test
    void whatIsWrongIsNamedInTheAnswer() {
        JsonNode problem =
            problem(Programs.with(everything).body("{\"text\": 5, \"shade\": 1}").post("/api/v1/read-label"), 422);
        assertThat(problem.get("instance").asText()).isEqualTo("/api/v1/read-label");
        assertThat(problem.get("title").asText()).isEqualTo("Unprocessable Content");
        assertThat(problem.get("errors").findValuesAsText("pointer")).containsExactlyInAnyOrder("/text", "/shade");
    }

    @Test
    void bytesThatAreNoTextAreRefused() {
        problem(Programs.with(everything).body(new byte[] { '{', '"', (byte) 0xff, '"', ':', '1', '}' })
            .post("/api/v1/read-label"), 400);
    }

    @Test
    @DisplayName("E8: too large, too deep, too long a text")
    void aBodyWithoutMeasure() {
        problem(Programs.with(everything).body("{\"text\":\"" + "a".repeat(300_000) + "\"}").post("/api/v1/read-label"),
            413);
        problem(
            Programs.with(everything).body("{\"text\":\"" + "a".repeat(13_000_000) + "\"}").post("/api/v1/read-label"),
            413);
        problem(Programs.with(everything).body("[".repeat(100)).post("/api/v1/read-label"), 400);
        problem(Programs.with(everything).body("{\"text\":\"" + "a".repeat(10_001) + "\"}").post("/api/v1/read-label"),
            422);
        assertThat(Programs.with(everything).body("{\"text\":\"" + "a ".repeat(5_000) + "\"}")
            .post("/api/v1/read-label").statusCode()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(strings = { "text/plain", "application/xml", "application/x-www-form-urlencoded",
        "multipart/form-data; boundary=x" })
    void whatIsNotSentAsJson(String type) throws Exception {
        HttpRequest.Builder request =
            HttpRequest.newBuilder(URI.create(RestAssured.baseURI + ":" + RestAssured.port + "/api/v1/read-label"))
                .header("Authorization", "Bearer " + everything)
                .POST(HttpRequest.BodyPublishers.ofString("{\"text\":\"Aqua\"}"));
        if (!type.isEmpty()) {
            request.header("Content-Type", type);
        }
        HttpResponse<String> answer =
            HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).isEqualTo(415);
        assertThat(answer.headers().firstValue("Content-Type").orElseThrow()).startsWith(PROBLEM);
        assertThat(JsonBodies.JSON.readTree(answer.body()).get("detail").asText()).contains("application/json");
    }

    @ParameterizedTest
    @ValueSource(strings = { "/api", "/api/", "/api/v1", "/api/v1/nothing", "/api/v2/assess", "/api/v1/assess/more",
        "/api/v1/%00" })
    void anAddressThatIsNone(String path) {
        problem(Programs.with(everything).accept("text/html").urlEncodingEnabled(false).get(path), 404);
    }

    @Test
    void anotherMethod() {
        problem(Programs.with(everything).get("/api/v1/assess"), 405);
        problem(Programs.with(everything).delete("/api/v1/questionnaire"), 405);
    }

    @Test
    void nothingOfAnAnswerIsKeptInACacheOrACookie() {
        Response answer = Programs.with(everything).get("/api/v1/questionnaire");
        assertThat(answer.header("Cache-Control")).isEqualTo("no-store");
        assertThat(answer.detailedCookies().asList()).isEmpty();
    }

    @Test
    @DisplayName("B24: a program that asks too often waits, and others do not")
    void aProgramThatAsksTooOftenWaits() {
        clock.stop();
        String busy = programs.token(30, "read");
        int status = 200;
        for (int i = 0; i < 400 && status == 200; i++) {
            status = Programs.with(busy).body("{\"text\":\"Aqua\"}").post("/api/v1/read-label").statusCode();
        }
        Response answer = Programs.with(busy).body("{\"text\":\"Aqua\"}").post("/api/v1/read-label");
        problem(answer, 429);
        assertThat(Integer.parseInt(answer.header("Retry-After"))).isBetween(1, 60);
        assertThat(Programs.with(everything).body("{\"text\":\"Aqua\"}").post("/api/v1/read-label").statusCode())
            .isEqualTo(200);
        clock.move(Duration.ofMinutes(1));
        assertThat(Programs.with(busy).body("{\"text\":\"Aqua\"}").post("/api/v1/read-label").statusCode())
            .isEqualTo(200);
    }
}
