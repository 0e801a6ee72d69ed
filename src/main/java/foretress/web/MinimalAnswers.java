package foretress.web;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.Response.Status;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/**
 * A script that sends a form ({@code goes.js}) may not read where a redirect leads. Asked for as little as possible (RFC 7240, 4.2),
 * the server says in an empty answer that it has the form, and where the browser goes next.
 */
public class MinimalAnswers {
    private static final String WANTED = "return=minimal";

    @ServerResponseFilter
    public void shorten(ContainerRequestContext request, ContainerResponseContext response) {
        if (response.getStatus() == Status.SEE_OTHER.getStatusCode()
            && WANTED.equals(request.getHeaderString("Prefer"))) {
            response.setStatus(Status.NO_CONTENT.getStatusCode());
            response.getHeaders().putSingle("Preference-Applied", WANTED);
        }
    }
}
