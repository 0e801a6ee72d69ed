package foretress.web;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.core.Response;

/** The answer to a form that cannot be taken: 422 (RFC 9110 section 15.5.21), the same page with everything typed and what is wrong with it. */
public final class FormAgain {
    private FormAgain() {}

    public static Response with(TemplateInstance page) {
        return Response.status(422).entity(page).build();
    }
}
