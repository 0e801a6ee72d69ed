package foretress.web;

import foretress.running.LoggableFailure;
import foretress.running.Space;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Every error a resource method, a filter or the framework answers with gets its page here. */
public class Problems {
    private static final Logger LOG = Logger.getLogger(Problems.class);

    private final ProblemPages pages;
    private final Language language;
    private final Space space;

    Problems(ProblemPages pages, Language language, Space space) {
        this.space = space;
        this.pages = pages;
        this.language = language;
    }

    @ServerExceptionMapper
    public Response expected(WebApplicationException e) {
        if (e.getResponse().getStatus() >= 500) {
            LOG.error("a request failed", LoggableFailure.of(e));
        }
        return e.getResponse();
    }

    /** The log gets the whole story; what a client typed is never part of our messages. */
    @ServerExceptionMapper
    public Response unexpected(Throwable e) {
        if (UnreadableForms.is(e)) {
            LOG.infof("a form could not be read: %s", UnreadableForms.named(e));
            return Response.status(400).build();
        }
        LOG.error("a request failed", LoggableFailure.of(e));
        return Response.status(statusOf(space)).build();
    }

    /** Where nothing can be written any more, that is what went wrong, whatever it looks like from above. */
    public static int statusOf(Space space) {
        return space.isOut() ? 507 : 500;
    }

    /** Fills in what has a bad status and nothing to read. */
    @ServerResponseFilter(priority = 100)
    public void fill(ContainerRequestContext request, ContainerResponseContext response) {
        int status = response.getStatus();
        if (status < 400 || response.hasEntity() || request.getMethod().equals("HEAD")) {
            return;
        }
        String path = request.getUriInfo().getRequestUri().getPath();
        if (ApiProblem.isFor(path)) {
            response.setEntity(ApiProblem.of(status, path).document(), null, MediaType.valueOf(ProblemPages.JSON));
        } else if (ProblemPages.wantsDocument(request.getHeaderString(HttpHeaders.ACCEPT))) {
            response.setEntity(pages.document(status, language.locale()), null, MediaType.valueOf(ProblemPages.JSON));
        } else {
            response.setEntity(pages.page(status, language.locale()), null,
                MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"));
        }
    }
}
