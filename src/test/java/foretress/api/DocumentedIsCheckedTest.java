package foretress.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("What is documented is what is checked, field by field")
@Execution(ExecutionMode.CONCURRENT)
class DocumentedIsCheckedTest {
    private static final JsonNodeFactory NODE = JsonNodeFactory.instance;
    private static final ObjectNode DOCUMENT = new OpenApi(OperationsTest.OPERATIONS).document();
    private static final Schemas SCHEMAS = new Schemas(DOCUMENT);
    /** Longer lists and texts than this would not fit into a body that is taken. */
    private static final int LONGEST = 20_000;

    static Stream<Operation> withABody() {
        return OperationsTest.operations().filter(o -> o.request().isPresent());
    }

    private static final String FORM = "not of this form";

    /** One value at one place of an example, of which the document says that it must not be. */
    private record Wrong(JsonNode body, String pointer, String why) {}

    @ParameterizedTest
    @MethodSource("withABody")
    @DisplayName("a value that breaks what is documented is refused, at its very place, for every constraint of every field")
    void whateverIsDocumentedIsChecked(Operation operation) {
        int tried = 0;
        for (String name : operation.examples()) {
            for (Wrong wrong : wrongs(operation, OpenApi.example(name))) {
                assertThat(checked(operation, wrong.body())).as("%s %s: %s", name, wrong.pointer(), wrong.why())
                    .anyMatch(pointer -> pointer.startsWith(wrong.pointer()));
                tried++;
            }
        }
        assertThat(tried).isGreaterThan(4);
    }

    @ParameterizedTest
    @MethodSource("withABody")
    @DisplayName("whatever is refused for its form alone, another reader of the document refuses as well")
    void whateverIsCheckedIsDocumented(Operation operation) {
        for (String name : operation.examples()) {
            List<String> formed = wrongs(operation, OpenApi.example(name)).stream()
                .filter(wrong -> wrong.why().equals(FORM)).map(Wrong::pointer).toList();
            for (JsonNode body : mutants(OpenApi.example(name), formed)) {
                boolean refused = !checked(operation, body).isEmpty();
                boolean documented = !SCHEMAS.request(operation, body).isEmpty();
                assertThat(refused).as("%s: %s", name, body).isEqualTo(documented);
            }
        }
    }

    @Test
    @DisplayName("a derived record documents and checks every kind of constraint it can carry")
    void aRecordIsWrittenOnce() {
        Shape shape = RecordShape.of(Kinds.class);
        ObjectNode schema = shape.describe(new LinkedHashMap<>());
        assertThat(schema.toString()).contains("\"minLength\":1", "\"maxLength\":5", "\"minimum\":2", "\"maximum\":4",
            "\"maxItems\":2", "\"uniqueItems\":true", "\"enum\":[\"one-way\",\"other\"]",
            "\"required\":[\"text\",\"whole\",\"number\",\"set\",\"way\",\"class\"]", "\"additionalProperties\":false",
            "\"description\":\"said\"");
        String good = """
            {"text": "a", "whole": 2, "number": 2.5, "set": ["x"], "way": "one-way", "class": true, "may": 3}""";
        assertThat(pointers(shape, good)).isEmpty();
        Map.of("\"a\"", "\"\"", "2,", "5,", "2.5", "4.5", "[\"x\"]", "[\"x\",\"x\"]", "\"one-way\"", "\"ONE_WAY\"",
            "true", "1", "3}", "null}", "\"text\": \"a\", ", "", "\"may\"", "\"must\"")
            .forEach((right, wrong) -> assertThat(pointers(shape, good.replace(right, wrong))).as(wrong).hasSize(1));
    }

    enum Way {
        ONE_WAY, OTHER
    }

    record Kinds(@Json(least = 1, most = 5) String text, @Json(least = 2, most = 4) int whole,
        @Json(least = 2, most = 4) double number, @Json(most = 2, mostOfEach = 5) java.util.Set<String> set, Way way,
        @Json(name = "class", says = "said") boolean kind, java.util.Optional<Integer> may) {}

    private static List<String> pointers(Shape shape, String body) {
        var faults = new Faults();
        shape.check(JsonBodies.read(body.getBytes(java.nio.charset.StandardCharsets.UTF_8)), "", faults);
        return faults.list().stream().map(Faults.Fault::pointer).toList();
    }

    private static List<String> checked(Operation operation, JsonNode body) {
        try {
            operation.check(body);
            return List.of();
        } catch (Refused refused) {
            return refused.faults.stream().map(Faults.Fault::pointer).toList();
        }
    }

    private static List<Wrong> wrongs(Operation operation, JsonNode example) {
        List<Wrong> all = new ArrayList<>();
        JsonNode schema = DOCUMENT.at("/paths/~1%s/post/requestBody/content/application~1json/schema"
            .formatted(operation.path().replace("/", "~1")));
        walk(example, schema, "", example, all);
        return all;
    }

    /** Every value of the example beside what the document says of it. */
    private static void walk(JsonNode value, JsonNode said, String pointer, JsonNode example, List<Wrong> all) {
        JsonNode schema = meant(said, value);
        breakers(schema, value)
            .forEach((why, wrong) -> all.add(new Wrong(with(example, pointer, wrong), pointer, why)));
        schema.path("required").forEach(name -> {
            ObjectNode less = value.deepCopy();
            less.remove(name.textValue());
            JsonNode then = meant(said, less);
            if (then.equals(schema) || then.has("oneOf")) {
                all.add(new Wrong(with(example, pointer, less), pointer, "without " + name));
            }
        });
        value.properties().forEach(field -> walk(field.getValue(), schema.at("/properties").get(field.getKey()),
            Faults.below(pointer, field.getKey()), example, all));
        for (int i = 0; i < value.size() && value.isArray(); i++) {
            walk(value.get(i), schema.get("items"), pointer + "/" + i, example, all);
        }
    }

    /** The schema behind a reference; of several ways the one that the value goes. */
    private static JsonNode meant(JsonNode schema, JsonNode value) {
        if (schema.has("$ref")) {
            return meant(DOCUMENT.at(schema.get("$ref").textValue().substring(1)), value);
        }
        for (JsonNode way : schema.path("oneOf")) {
            if (value.has(meant(way, value).get("required").get(0).textValue())) {
                return meant(way, value);
            }
        }
        return schema;
    }

    private static Map<String, JsonNode> breakers(JsonNode schema, JsonNode value) {
        Map<String, JsonNode> wrong = new LinkedHashMap<>();
        wrong.put("null", NODE.nullNode());
        wrong.put("another type", value.isBoolean() ? NODE.numberNode(1) : NODE.booleanNode(true));
        if (schema.has("minimum")) {
            wrong.put("below the minimum", NODE.numberNode(schema.get("minimum").asInt() - 1));
            wrong.put("above the maximum", NODE.numberNode(schema.get("maximum").asInt() + 1));
        }
        if (schema.path("type").asText().equals("integer")) {
            wrong.put("not whole", NODE.numberNode(schema.get("minimum").asInt() + 0.5));
        }
        if (schema.path("minLength").asInt() > 0) {
            wrong.put("too short", NODE.textNode(""));
        }
        if (schema.has("maxLength")) {
            wrong.put("too long", NODE.textNode("a".repeat(schema.get("maxLength").asInt() + 1)));
        }
        if (schema.has("enum") || schema.has("pattern") && !schema.has("minLength")) {
            wrong.put("no such code", NODE.textNode("no such thing"));
        }
        if (schema.has("format")) {
            wrong.put(FORM, NODE.textNode("no such thing"));
        }
        if (schema.path("minLength").asInt() > 0) {
            wrong.put("blank", NODE.textNode("\u00a0 "));
        }
        if (schema.path("minItems").asInt() > 0) {
            wrong.put("too few", NODE.arrayNode());
        }
        if (value.size() > 0 && value.isArray() && schema.get("maxItems").asInt() < LONGEST) {
            ArrayNode many = NODE.arrayNode();
            for (int i = 0; i <= schema.get("maxItems").asInt(); i++) {
                many.add(value.get(0));
            }
            wrong.put("too many", many);
        }
        if (value.size() > 0 && schema.path("uniqueItems").asBoolean()) {
            wrong.put("twice", NODE.arrayNode().add(value.get(0)).add(value.get(0)));
        }
        if (value.isObject() && schema.path("additionalProperties").isBoolean()) {
            wrong.put("one more field", ((ObjectNode) value.deepCopy()).put("no such field", 1));
        }
        return wrong;
    }

    /**
     * The example with each value replaced by every other kind of value.
     *
     * @param formed where a text has a 'format', which a reader of JSON Schema need not look at: there by no other text
     */
    private static List<JsonNode> mutants(JsonNode example, List<String> formed) {
        List<String> pointers = new ArrayList<>();
        pointers(example, "", pointers);
        List<JsonNode> all = new ArrayList<>();
        for (String pointer : pointers) {
            for (JsonNode other : List.of(NODE.nullNode(), NODE.booleanNode(true), NODE.numberNode(-1),
                NODE.numberNode(1.5), NODE.numberNode(2.0), NODE.textNode(" "),
                NODE.textNode("\ud83d\ude00".repeat(9_000)),
                NODE.numberNode(100_001), NODE.textNode(""), NODE.textNode("zz".repeat(6_000)),
                NODE.arrayNode(), NODE.arrayNode().add(1), NODE.objectNode(), NODE.objectNode().put("a", 1))) {
                if (!other.isTextual() || !formed.contains(pointer)) {
                    all.add(with(example, pointer, other));
                }
            }
        }
        return all;
    }

    private static void pointers(JsonNode value, String pointer, List<String> all) {
        all.add(pointer);
        value.properties().forEach(f -> pointers(f.getValue(), Faults.below(pointer, f.getKey()), all));
        for (int i = 0; i < value.size() && value.isArray(); i++) {
            pointers(value.get(i), pointer + "/" + i, all);
        }
    }

    private static JsonNode with(JsonNode example, String pointer, JsonNode value) {
        if (pointer.isEmpty()) {
            return value;
        }
        JsonNode body = example.deepCopy();
        int last = pointer.lastIndexOf('/');
        String name = pointer.substring(last + 1).replace("~1", "/").replace("~0", "~");
        JsonNode parent = body.at(pointer.substring(0, last));
        if (parent.isArray()) {
            ((ArrayNode) parent).set(Integer.parseInt(name), value);
        } else {
            ((ObjectNode) parent).set(name, value);
        }
        return body;
    }
}
