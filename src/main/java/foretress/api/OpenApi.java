package foretress.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.common.FlowStyle;

/**
 * The description of the API (OpenAPI 3.1), made of the operations themselves: their shapes are what is checked, and the answers of
 * their examples are computed.
 */
final class OpenApi {
    static final String BASE = "/api/v1";
    private static final String PROBLEM = "Problem";
    private static final Map<Integer, String> PROBLEMS = new TreeMap<>(
        Map.of(400, "The body is no JSON.", 401, "No token, or one that is not known, expired or revoked.",
            403, "The token was made for something else.", 405, "Another method.", 406,
            "Nothing that is accepted can be answered.", 413, "The body is too large.",
            415, "The body is not sent as JSON.", 422,
            "What was sent is not what the operation takes: 'errors' says where.",
            429, "Too many requests: wait as long as Retry-After says.",
            500, "Something went wrong here."));
    private static final JsonNodeFactory NODE = JsonNodeFactory.instance;

    private final Operations operations;
    private final Map<String, ObjectNode> schemas = new TreeMap<>();
    private String json = "";

    OpenApi(Operations operations) {
        this.operations = operations;
    }

    static JsonNode example(String name) {
        try (InputStream in = OpenApi.class.getResourceAsStream("examples/" + name + ".json")) {
            if (in == null) {
                throw new IllegalStateException("there is no example " + name);
            }
            return JsonBodies.JSON.readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    synchronized ObjectNode document() {
        schemas.clear();
        ObjectNode document = NODE.objectNode().put("openapi", "3.1.1");
        document.putObject("info").put("title", "Foretress").put("version", "1")
            .put("description",
                "What a client's answers mean before a chemical hair service, for programs. Every operation is stateless: nothing is stored. "
                    + "Errors are problem documents (RFC 9457). " + Assess.CAUTION);
        document.putArray("servers").addObject().put("url", BASE);
        document.putArray("security").addObject().putArray("token");
        ObjectNode paths = document.putObject("paths");
        operations.all().forEach(operation -> paths.putObject("/" + operation.path())
            .set(operation.request().isPresent() ? "post" : "get", operation(operation)));
        paths.putObject("/openapi").set("get", ofItself());
        ObjectNode components = document.putObject("components");
        components.putObject("securitySchemes").putObject("token").put("type", "http").put("scheme", "bearer")
            .put("description", "A token the owner made on the page Programs, beginning with " + ProgramTokens.PREFIX
                + ". Only this header is looked at.");
        schemas.put(PROBLEM, RecordShape.of(Problem.class).describe(schemas));
        ObjectNode all = components.putObject("schemas");
        schemas.forEach(all::set);
        return document;
    }

    private ObjectNode operation(Operation operation) {
        ObjectNode node = NODE.objectNode().put("operationId", operation.id()).put("summary", operation.summary());
        node.put("description", operation.description()
            + operation.scope().map(s -> " Needs a token for '%s'.".formatted(s.code())).orElse(" Any token will do."));
        operation.request().ifPresent(request -> {
            ObjectNode content =
                node.putObject("requestBody").put("required", true).putObject("content").putObject("application/json");
            content.set("schema", request.describe(schemas));
            ObjectNode examples = content.putObject("examples");
            operation.examples().forEach(name -> examples.putObject(name).set("value", example(name)));
        });
        operation.query().ifPresent(fields -> parameters(fields, node.putArray("parameters")));
        ObjectNode responses = node.putObject("responses");
        ObjectNode content = responses.putObject("200").put("description", "The answer.").putObject("content");
        ObjectNode json = content.putObject("application/json");
        json.set("schema", operation.response().describe(schemas));
        if (!operation.examples().isEmpty()) {
            ObjectNode examples = json.putObject("examples");
            operation.examples()
                .forEach(name -> examples.putObject(name).set("value", operation.answer(example(name))));
        }
        if (operation.id().equals("strand-map")) {
            content.putObject("image/svg+xml").putObject("schema").put("type", "string");
        }
        problems(responses, operation.request().isPresent(), operation.query().isPresent());
        return node;
    }

    private void parameters(Shape.Fields fields, ArrayNode parameters) {
        fields.shapes().forEach((name, shape) -> {
            ObjectNode schema = shape.describe(schemas);
            ObjectNode parameter = parameters.addObject().put("name", name).put("in", "query");
            Optional.ofNullable(schema.remove("description")).ifPresent(words -> parameter.set("description", words));
            parameter.put("required", fields.needed().contains(name)).set("schema", schema);
        });
    }

    private static void problems(ObjectNode responses, boolean body, boolean asked) {
        PROBLEMS.forEach((status, words) -> {
            if (body || status == 422 && asked || status != 413 && status != 415 && status != 422) {
                responses.putObject(String.valueOf(status)).put("description", words).putObject("content")
                    .putObject("application/problem+json").putObject("schema")
                    .put("$ref", "#/components/schemas/" + PROBLEM);
            }
        });
    }

    private static ObjectNode ofItself() {
        ObjectNode node = NODE.objectNode().put("operationId", "openapi").put("summary", "This document")
            .put("description", "As JSON or YAML. Any token will do.");
        ObjectNode responses = node.putObject("responses");
        ObjectNode content = responses.putObject("200").put("description", "The document.").putObject("content");
        content.putObject("application/json").putObject("schema").put("type", "object");
        content.putObject("application/yaml").putObject("schema").put("type", "string");
        problems(responses, false, false);
        return node;
    }

    /** As the server writes it: RFC 9457. */
    record Problem(String type, String title, @Json(least = 400, most = 599) int status, String detail,
        String instance, @Json(least = 1, most = Faults.MOST) Optional<List<Faults.Fault>> errors) {}

    /** The document; made once, since nothing in it changes while the program runs. */
    synchronized String json() {
        if (json.isEmpty()) {
            json = printed(document());
        }
        return json;
    }

    private static String printed(ObjectNode document) {
        try {
            return JsonBodies.JSON.writerWithDefaultPrettyPrinter().writeValueAsString(document);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    String yaml() {
        Object plain = JsonBodies.JSON.convertValue(document(), Object.class);
        return new Dump(DumpSettings.builder().setDefaultFlowStyle(FlowStyle.BLOCK).build()).dumpToString(plain);
    }
}
