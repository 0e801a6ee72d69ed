package foretress.salon;

import foretress.web.FormToken;
import foretress.web.KeptPages;
import foretress.web.Mistakes;
import foretress.web.UnsentForm;
import jakarta.inject.Singleton;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.ForbiddenException;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;

/** Answers a form that cannot be taken now with a page from which it can be sent again, with everything that was typed. */
@Singleton
class KeptForm {
    private final KeptPages pages;
    private final FormToken token;

    KeptForm(KeptPages pages, FormToken token) {
        this.pages = pages;
        this.token = token;
    }

    /** The form was made for a session that is over. */
    Response again(ContainerRequestContext request) {
        return UnsentForm.of(request).map(kept -> html(422, pages.page(KeptPages.Why.STALE, kept)))
            .orElseThrow(BadRequestException::new);
    }

    /** Nobody is let in any more, or not yet: the same answer as ever, but for what was typed. */
    Response turnedAway(ContainerRequestContext request, Response answer) {
        token.unbind();
        return switch (answer.getStatus()) {
            case 401 -> UnsentForm.of(request).map(kept -> signIn(401, kept)).orElse(answer);
            case 403 -> UnsentForm.of(request).map(kept -> html(403, pages.page(KeptPages.Why.LINK_AGAIN, kept)))
                .orElse(answer);
            default -> answer;
        };
    }

    /** Another person signed in on this browser since the page was made, and may not do what its form does. */
    Response ofSomebodyElse(ContainerRequestContext request) {
        return UnsentForm.of(request).map(kept -> signIn(403, kept)).orElseThrow(ForbiddenException::new);
    }

    private static Response signIn(int status, UnsentForm kept) {
        return Response
            .fromResponse(html(status, new SignInPages.SignInPage("", "", new Mistakes(), Optional.of(kept)).render()))
            .header(HttpHeaders.WWW_AUTHENTICATE, "Session").build();
    }

    private static Response html(int status, String page) {
        return Response.status(status).type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8")).entity(page).build();
    }
}
