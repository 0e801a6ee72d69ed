package foretress.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes docs/reference/api.md from the operations: each with its fields, an example to copy and what is answered. */
record ApiReference(Operations operations) {
    private static final int SHOWN = 2;
    private static final Path EXAMPLES = Path.of("src/main/resources/foretress/api/examples");

    String write() throws IOException {
        var page = new StringBuilder("""
            # The API for programs

            What a program can ask for, with examples to copy. This page is made from the code that answers; a test fails when it is out of
            date, and another sends every example to the running server. [Use the API](../guide/use-the-api.md) says how to get a token,
            [Use the command line](../guide/use-the-command-line.md) how to do without a server. The same description for machines, in
            OpenAPI 3.1 with every field, limit and code, is `GET /api/v1/openapi` (JSON, or YAML with `Accept: application/yaml`).

            """);
        page.append(Assess.CAUTION).append("\n\n").append("""
            In the examples `$TOKEN` holds a token and `$SALON` the salon's address, for example `http://127.0.0.1:8080`. In long answers
            only the first entries of a list are shown, and `...` stands for the rest.

            | operation | token for | what it answers |
            |---|---|---|
            """);
        operations.all().forEach(o -> page.append("| [%s](#%s) | %s | %s |\n".formatted(line(o), anchor(o),
            o.scope().map(Scope::code).orElse("anything"), o.summary())));
        page.append("| `GET /api/v1/openapi` | anything | The description for machines |\n");
        page.append("\n").append(answers());
        for (Operation operation : operations.all()) {
            page.append(operation(operation));
        }
        return page.append(problems()).toString();
    }

    private static String line(Operation operation) {
        return "`%s /api/v1/%s`".formatted(operation.request().isPresent() ? "POST" : "GET", operation.path());
    }

    private static String anchor(Operation operation) {
        return operation.id();
    }

    /** The coded form of an answer, by kind of question. */
    private static String answers() {
        return """
            ## Answers

            Answers stand by the id of their question, in one coded form for each kind; `GET /api/v1/questionnaire` lists the questions,
            their kinds and their codes. **A question that is left out is not answered, and never reads as no.**

            | kind | form |
            |---|---|
            | `one-of`, `several-of` | `{"chosen": ["yes"]}` |
            | `said-date` | `{"date": DATE}` |
            | `hair-length` | `{"lengthCm": 40, "drawnStraight": true}` |
            | `treatments` | `{"treatments": [{"what": "box-dye", "when": DATE, "zone": "regrowth", "by": "home", "often": "regularly", "every": "6-weeks", "since": DATE}]}` |
            | `medicines` | `{"medicines": [{"name": "prednisolone", "dose": "low", "route": "mouth", "lastTaken": "now"}]}`; an empty list says none |
            | `ingredients`, `note` | `{"text": "Aqua, ..."}` |
            | any that may be not known | `{"not": "known"}` |
            | any that may be kept private | `{"not": "said"}` |

            What is left out of a treatment or a medicine counts as not known. A DATE is as precise as one can say it: `{"day": "2026-06-10"}`,
            `{"month": "2026-06"}`, `{"season": "SUMMER", "year": 2024}`, `{"year": 2024}`, `{"from": 2, "to": 3}` (years ago),
            `{"longerThan": 5}` (years) or `{"not": "known"}`.

            """;
    }

    private String operation(Operation operation) throws IOException {
        var text = new StringBuilder(
            "## %s\n\n%s\n\n%s\n\n".formatted(operation.id(), line(operation), operation.description()));
        if (operation.request().isPresent()) {
            text.append(fields(operation.request().get()));
        }
        if (operation.examples().isEmpty()) {
            text.append("```\ncurl -s -H \"Authorization: Bearer $TOKEN\" \"$SALON/api/v1/%s?language=en\"\n```\n\n"
                .formatted(operation.path()));
        }
        for (String name : operation.examples()) {
            text.append(example(operation, name));
        }
        return text.toString();
    }

    private static String fields(Shape shape) {
        ObjectNode schema = shape.describe(new java.util.TreeMap<>());
        List<String> needed = new java.util.ArrayList<>();
        schema.path("required").forEach(n -> needed.add(n.asText()));
        return schema.get("properties").properties().stream()
            .map(f -> "| `%s` | %s | %s |\n".formatted(f.getKey(), needed.contains(f.getKey()) ? "yes" : "no",
                f.getValue().path("description").asText(what(f.getValue()))))
            .collect(Collectors.joining("", "| field | needed | |\n|---|---|---|\n", "\n"));
    }

    private static String what(JsonNode schema) {
        return schema.has("maxLength") ? "up to %d characters".formatted(schema.get("maxLength").asInt())
            : schema.has("maximum")
                ? "%s to %s".formatted(schema.get("minimum").asText(), schema.get("maximum").asText())
                : schema.has("maxItems")
                    ? "%s to %s entries".formatted(schema.get("minItems").asText(), schema.get("maxItems").asText())
                    : "";
    }

    private static String example(Operation operation, String name) throws IOException {
        String body = Files.readString(EXAMPLES.resolve(name + ".json")).strip();
        return """
            ### %s

            ```
            curl -s -H "Authorization: Bearer $TOKEN" -H "Content-Type: application/json" "$SALON/api/v1/%s" -d @- <<'JSON'
            %s
            JSON
            ```

            ```json
            %s
            ```

            """.formatted(name, operation.path(), body, pretty(shortened(operation.answer(OpenApi.example(name)))));
    }

    private static String pretty(JsonNode node) throws JsonProcessingException {
        return JsonBodies.JSON.writerWithDefaultPrettyPrinter().writeValueAsString(node);
    }

    /** The rule set's hash changes with every word of the knowledge, and long lists hide what they show. */
    private static JsonNode shortened(JsonNode node) {
        if (node.isArray()) {
            ArrayNode few = JsonBodies.JSON.createArrayNode();
            for (int i = 0; i < Math.min(SHOWN, node.size()); i++) {
                few.add(shortened(node.get(i)));
            }
            return node.size() > SHOWN ? few.add("...") : few;
        }
        if (!node.isObject()) {
            return node;
        }
        ObjectNode copy = JsonBodies.JSON.createObjectNode();
        int shown = 0;
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            boolean hash = field.getKey().equals("ruleSet");
            copy.set(field.getKey(),
                hash ? copy.textNode("...") : field.getKey().equals("services") && field.getValue().isObject()
                    ? few(field.getValue()) : shortened(field.getValue()));
            shown++;
        }
        return shown == 0 ? node : copy;
    }

    private static ObjectNode few(JsonNode services) {
        ObjectNode few = JsonBodies.JSON.createObjectNode();
        services.properties().stream().limit(SHOWN).forEach(s -> few.set(s.getKey(), s.getValue()));
        return services.size() > SHOWN ? few.put("...", "...") : few;
    }

    private static String problems() {
        return """
            ## Problems

            Every error is `application/problem+json` (RFC 9457): `type`, `title`, `status`, `detail`, `instance`, and for a body that is not as
            documented `errors`, each with a JSON Pointer (RFC 6901) to the value and what belongs there; the first %d of them.

            ```json
            {"type": "about:blank", "title": "Unprocessable Content", "status": 422, "detail": "...", "instance": "/api/v1/read-label",
             "errors": [{"pointer": "/text", "detail": "text of 1 to 10000 characters belongs here"}]}
            ```

            | status | when |
            |---|---|
            | 400 | the body is no JSON, not UTF-8, or has a name twice |
            | 401 | no token, or one that is not known, expired or revoked |
            | 403 | the token was made for something else |
            | 404, 405, 406 | no such address, another method, nothing acceptable |
            | 413 | the body is larger than %d bytes |
            | 415 | the body is not sent as `application/json` |
            | 422 | the body is JSON and not what the operation takes |
            | 429 | more requests than a token may send; `Retry-After` says how many seconds to wait |
            | 500 | something went wrong in the server; nothing about its inside is said |
            """.formatted(Faults.MOST, JsonBodies.MOST_BYTES);
    }
}
