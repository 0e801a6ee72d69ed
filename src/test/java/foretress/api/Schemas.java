package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.util.List;

/** Holds values against the document's schemas with another library's reading of JSON Schema 2020-12. */
record Schemas(ObjectNode document) {
    private static final JsonSchemaFactory FACTORY = JsonSchemaFactory.getInstance(VersionFlag.V202012);

    /** What is wrong with a value by a schema at this place of the document, in that library's words. */
    List<String> faults(String pointer, JsonNode value) {
        ObjectNode schema = JsonBodies.JSON.createObjectNode().put("$ref", "#" + pointer);
        schema.set("components", document.get("components"));
        schema.set("paths", document.get("paths"));
        JsonSchema compiled = FACTORY.getSchema(schema);
        return compiled.validate(value).stream().map(Object::toString).toList();
    }

    List<String> request(Operation operation, JsonNode body) {
        return faults("/paths/~1%s/post/requestBody/content/application~1json/schema"
            .formatted(operation.path().replace("/", "~1")), body);
    }

    List<String> response(Operation operation, JsonNode body) {
        return faults("/paths/~1%s/%s/responses/200/content/application~1json/schema".formatted(
            operation.path().replace("/", "~1"),
            operation.request().isPresent() ? "post" : "get"), body);
    }

    List<String> problem(JsonNode body) {
        return faults("/components/schemas/Problem", body);
    }
}
