package foretress.salon;

import foretress.web.Language;
import jakarta.enterprise.inject.Instance;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.ForbiddenException;
import jakarta.ws.rs.NotAuthorizedException;
import jakarta.ws.rs.Priorities;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ResourceInfo;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.WithFormRead;

/** The one place where rights are asked: before every resource method, by the table. */
public class RightsFilter {
    private static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS");
    private static final List<MediaType> FORMS = List.of(MediaType.APPLICATION_FORM_URLENCODED_TYPE, MediaType.MULTIPART_FORM_DATA_TYPE);

    private final Sessions sessions;
    private final Who who;
    private final Language language;
    private final Instance<GuestDoor> guests;
    private final Instance<ProgramDoor> programs;

    RightsFilter(Sessions sessions, Who who, Language language, Instance<GuestDoor> guests, Instance<ProgramDoor> programs) {
        this.sessions = sessions;
        this.who = who;
        this.language = language;
        this.guests = guests;
        this.programs = programs;
    }

    /** After the check of the form's token, so that a forged form learns nothing, not even whether somebody is signed in.
     *  Filters that read the form run from the highest number down, so the token's (at USER) comes first; a test holds that. */
    @WithFormRead
    @ServerRequestFilter(priority = Priorities.USER - 1000)
    public Optional<Response> ask(ContainerRequestContext request, ResourceInfo resource) {
        var right = Rights.of(Route.of(resource.getResourceClass(), resource.getResourceMethod()))
            .orElseThrow(() -> new ForbiddenException("no line in the table of rights"));
        if (right.kind() == Right.Kind.PROGRAM) return program(request, right);
        if (isNoForm(request)) throw new BadRequestException();
        sessions.recognise(request.getCookies(), who);
        return switch (right.kind()) {
            case PROGRAM -> throw new IllegalStateException("answered above");
            case ANYBODY -> Optional.empty();
            case GUEST -> guest(request);
            case STAFF -> staff(request, right);
        };
    }

    /** The token of a form is checked in forms alone; so whatever a page lets change must come as one. */
    private static boolean isNoForm(ContainerRequestContext request) {
        var type = request.getMediaType();
        return !SAFE.contains(request.getMethod())
            && (type == null || FORMS.stream().noneMatch(type::isCompatible));
    }

    /** A cookie proves nothing here: another site could make a browser send it. */
    private Optional<Response> program(ContainerRequestContext request, Right right) {
        if (programs.isUnsatisfied()) throw new ForbiddenException();
        return programs.get().turnAway(request, right.scope());
    }

    private Optional<Response> guest(ContainerRequestContext request) {
        if (guests.isUnsatisfied()) throw new ForbiddenException();
        return guests.get().turnAway(request);
    }

    private Optional<Response> staff(ContainerRequestContext request, Right right) {
        language.use("en");
        if (!who.isSignedIn()) return Optional.of(askToSignIn(request));
        if (!right.allows(who.staff().role)) throw new ForbiddenException();
        return Optional.empty();
    }

    /** A page that was asked for comes back after signing in; a form that was sent does not. */
    private static Response askToSignIn(ContainerRequestContext request) {
        if (!request.getMethod().equals("GET") || !wantsPage(request)) throw new NotAuthorizedException("Session");
        var to = URLEncoder.encode(request.getUriInfo().getRequestUri().getRawPath(), StandardCharsets.UTF_8);
        return Response.seeOther(URI.create("/sign-in?to=" + to)).build();
    }

    private static boolean wantsPage(ContainerRequestContext request) {
        return request.getAcceptableMediaTypes().stream().anyMatch(type -> type.isCompatible(MediaType.TEXT_HTML_TYPE));
    }
}
