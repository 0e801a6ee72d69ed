package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * One thing a program can ask for. The server, the command line and the document are all made of it.
 *
 * @param id as the command line calls it, for example {@code read-label}
 * @param path below {@code /api/v1}
 * @param scope what a token must be for; none when any token will do
 * @param summary one line
 * @param description what it does, what it does not, and what to be careful with
 * @param request what the body must look like; none for one without a body
 * @param query what may stand behind the question mark instead of a body
 * @param response what the answer looks like
 * @param examples names of the worked examples, files under {@code api/examples}
 * @param work from a body that has its shape to the answer; may still refuse it
 */
record Operation(String id, String path, Optional<Scope> scope, String summary, String description,
    Optional<Shape> request, Optional<Shape.Fields> query, Shape response, List<String> examples,
    Function<JsonNode, JsonNode> work) {

    /** One whose request and answer are records: what is documented, checked, read and answered is derived from them. */
    static <Q extends Record> Operation of(String id, String path, Scope scope, String summary, String description,
        Class<Q> request, Class<? extends Record> response, List<String> examples, Function<Q, Record> work) {
        return of(Map.of(), id, path, scope, summary, description, request, response, examples, work);
    }

    /** The same where the request asks for what only knowledge can give: {@link Json#as}. */
    static <Q extends Record> Operation of(Map<String, Shape> known, String id, String path, Scope scope,
        String summary, String description, Class<Q> request, Class<? extends Record> response, List<String> examples,
        Function<Q, Record> work) {
        return new Operation(id, path, Optional.of(scope), summary, description,
            Optional.of(new RecordShape(known).shape(request)), Optional.empty(), RecordShape.of(response), examples,
            body -> RecordShape.write(work.apply(RecordShape.read(body, request))));
    }

    /** One that any token may ask, by an address alone. */
    static <Q extends Record> Operation ofQuery(Map<String, Shape> known, String id, String summary,
        String description, Class<Q> query, Class<? extends Record> response, Function<Q, Record> work) {
        return new Operation(id, id, Optional.empty(), summary, description, Optional.empty(),
            Optional.of(new RecordShape(known).fields(query)), RecordShape.of(response), List.of(),
            asked -> RecordShape.write(work.apply(RecordShape.read(asked, query))));
    }

    /**
     * @param body already JSON
     * @throws Refused naming every field that is not as documented
     */
    JsonNode answer(JsonNode body) {
        check(body);
        return work.apply(body);
    }

    /** @throws Refused naming every field that has not its shape */
    void check(JsonNode body) {
        var faults = new Faults();
        request.ifPresent(shape -> shape.check(body, "", faults));
        query.ifPresent(fields -> fields.check(body, "", faults));
        faults.orThrow();
    }
}
