package foretress.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.core.Response;
import java.util.List;

/**
 * What a program is told when a request cannot be answered: a problem document (RFC 9457), in English, without insides. Its
 * type is about:blank, so its title is the status' own phrase.
 *
 * @param instance the path that was asked for
 * @param errors what is wrong where; empty when there is no more to say than the detail
 */
public record ApiProblem(int status, String detail, String instance, List<Error> errors) {
    /** Below it everything is for programs, errors too, whatever they say they accept. */
    public static final String ROOT = "/api/";

    /** @param pointer a JSON Pointer (RFC 6901) into the body that was sent */
    public record Error(String pointer, String detail) {}

    public ApiProblem {
        errors = List.copyOf(errors);
    }

    /** For a status that says all there is to say. */
    public static ApiProblem of(int status, String instance) {
        return new ApiProblem(status, detail(status), instance, List.of());
    }

    public static boolean isFor(String path) {
        return path.startsWith(ROOT) || path.equals("/api");
    }

    public String document() {
        ObjectNode document = JsonNodeFactory.instance.objectNode().put("type", "about:blank")
            .put("title", title(status)).put("status", status)
            .put("detail", detail).put("instance", instance);
        if (!errors.isEmpty()) {
            ArrayNode list = document.putArray("errors");
            errors.forEach(e -> list.addObject().put("pointer", e.pointer()).put("detail", e.detail()));
        }
        return document.toString();
    }

    public Response.ResponseBuilder response() {
        return Response.status(status).type(ProblemPages.JSON).entity(document());
    }

    /** RFC 9110 renamed two of them. */
    private static String title(int status) {
        return switch (status) {
            case 413 -> "Content Too Large";
            case 422 -> "Unprocessable Content";
            default -> {
                Response.Status known = Response.Status.fromStatusCode(status);
                yield known == null ? status >= 500 ? "Internal Server Error" : "Bad Request" : known.getReasonPhrase();
            }
        };
    }

    private static String detail(int status) {
        return switch (status) {
            case 401 -> "Send a token of this salon in the header 'Authorization: Bearer ...'.";
            case 403 -> "This is not allowed with the token that was sent.";
            case 404 -> "There is no operation at this address. GET /api/v1/openapi lists them all.";
            case 405 -> "The operation at this address is asked for by another method.";
            case 406 -> "The operation answers JSON, and nothing that was accepted.";
            case 413 -> "The body is larger than what is taken here.";
            case 415 -> "The body must be sent as application/json.";
            case 429 -> "Too many requests; wait as long as the header Retry-After says.";
            default -> status >= 500 ? "Something went wrong here. It has been noted; try again later."
                : "The request cannot be read.";
        };
    }
}
