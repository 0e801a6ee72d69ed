package foretress.web;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.util.OptionalLong;

/** The answer to a form that cannot be taken: 422 (RFC 9110 section 15.5.21), the same page with everything typed and what is wrong with it. */
public final class FormAgain {
    private FormAgain() {}

    public static Response with(TemplateInstance page) {
        return Response.status(422).entity(page).build();
    }

    /** @param pause seconds to wait before the next try, where there were too many: then 429 (RFC 6585 section 4) */
    public static Response with(OptionalLong pause, TemplateInstance page) {
        if (pause.isEmpty()) {
            return with(page);
        }
        return Response.status(429).header(HttpHeaders.RETRY_AFTER, pause.getAsLong()).entity(page).build();
    }
}
