package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.knowledge.Knowledge;
import foretress.web.ApiProblem;
import foretress.web.Supported;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import jakarta.ws.rs.core.Variant;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/** The operations over HTTP. Nothing is stored, so every one may be asked again without harm. */
@Path("/api/v1")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class OperationsApi {
    private static final MediaType SVG = MediaType.valueOf("image/svg+xml");
    private static final MediaType YAML = MediaType.valueOf("application/yaml");

    private final Operations operations;
    private final OpenApi document;

    OperationsApi(Knowledge knowledge) {
        this.operations = new Operations(knowledge);
        this.document = new OpenApi(operations);
    }

    @POST
    @Path("assess")
    public Response assess(InputStream body) {
        return answer("assess", read(body));
    }

    @POST
    @Path("read-label")
    public Response readLabel(InputStream body) {
        return answer("read-label", read(body));
    }

    @POST
    @Path("read-medicines")
    public Response readMedicines(InputStream body) {
        return answer("read-medicines", read(body));
    }

    @POST
    @Path("strand-map")
    @Produces({ MediaType.APPLICATION_JSON, "image/svg+xml" })
    public Response strandMap(InputStream body, @Context Request request) {
        boolean drawn = SVG.equals(preferred(request, MediaType.APPLICATION_JSON_TYPE, SVG));
        JsonNode read = read(body);
        return drawn
            ? Response.ok(operations.strandMapSvg(read).getBytes(StandardCharsets.UTF_8)).type(SVG.withCharset("UTF-8"))
                .build()
            : answer("strand-map", read);
    }

    @POST
    @Path("bench/elasticity")
    public Response elasticity(InputStream body) {
        return answer("bench-elasticity", read(body));
    }

    @POST
    @Path("bench/porosity")
    public Response porosity(InputStream body) {
        return answer("bench-porosity", read(body));
    }

    @POST
    @Path("bench/dilution")
    public Response dilution(InputStream body) {
        return answer("bench-dilution", read(body));
    }

    @POST
    @Path("bench/incompatibility")
    public Response incompatibility(InputStream body) {
        return answer("bench-incompatibility", read(body));
    }

    @GET
    @Path("questionnaire")
    public Response questionnaire(@RestQuery Optional<String> language) {
        ObjectNode asked = JsonNodeFactory.instance.objectNode();
        language.ifPresent(tag -> asked.put("language", Supported.match(tag).orElse(tag)));
        return answer("questionnaire", asked);
    }

    @GET
    @Path("openapi")
    @Produces({ MediaType.APPLICATION_JSON, "application/yaml" })
    public Response openapi(@Context Request request) {
        boolean yaml = YAML.equals(preferred(request, MediaType.APPLICATION_JSON_TYPE, YAML));
        return Response.ok((yaml ? document.yaml() : document.json()).getBytes(StandardCharsets.UTF_8))
            .type(yaml ? YAML : MediaType.APPLICATION_JSON_TYPE).build();
    }

    private static MediaType preferred(Request request, MediaType... offered) {
        return Optional.ofNullable(request.selectVariant(Variant.mediaTypes(offered).build()))
            .map(Variant::getMediaType).orElse(offered[0]);
    }

    /** No more is taken in than may be answered. */
    private static JsonNode read(InputStream body) {
        try {
            return JsonBodies.read(body.readNBytes(JsonBodies.MOST_BYTES + 1));
        } catch (IOException e) {
            throw new Refused(400, "The body broke off.", List.of());
        }
    }

    private Response answer(String operation, JsonNode body) {
        return Response.ok(operations.operation(operation).answer(body).toString().getBytes(StandardCharsets.UTF_8))
            .type(MediaType.APPLICATION_JSON_TYPE).build();
    }

    @ServerExceptionMapper
    public Response refused(Refused refused, UriInfo address) {
        List<ApiProblem.Error> errors =
            refused.faults.stream().map(f -> new ApiProblem.Error(f.pointer(), f.detail())).toList();
        return new ApiProblem(refused.status, refused.getMessage(), address.getRequestUri().getPath(), errors)
            .response().build();
    }
}
