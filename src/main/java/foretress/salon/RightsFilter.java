package foretress.salon;

import foretress.web.Language;
import foretress.web.Supported;
import jakarta.enterprise.inject.Instance;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.ForbiddenException;
import jakarta.ws.rs.Priorities;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ResourceInfo;
import jakarta.ws.rs.core.HttpHeaders;
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
    private static final List<MediaType> FORMS =
        List.of(MediaType.APPLICATION_FORM_URLENCODED_TYPE, MediaType.MULTIPART_FORM_DATA_TYPE);

    private final Sessions sessions;
    private final Who who;
    private final Language language;
    private final Instance<GuestDoor> guests;
    private final Instance<ProgramDoor> programs;
    private final FormProof proof;
    private final KeptForm kept;

    RightsFilter(Sessions sessions, Who who, Language language, Instance<GuestDoor> guests,
        Instance<ProgramDoor> programs,
        FormProof proof, KeptForm kept) {
        this.sessions = sessions;
        this.who = who;
        this.language = language;
        this.guests = guests;
        this.programs = programs;
        this.proof = proof;
        this.kept = kept;
    }

    /** A form that is not from a page of ours learns nothing, not even whether somebody is signed in. */
    @WithFormRead
    @ServerRequestFilter(priority = Priorities.USER - 1000)
    public Optional<Response> ask(ContainerRequestContext request, ResourceInfo resource) {
        Right right = Rights.of(Route.of(resource.getResourceClass(), resource.getResourceMethod()))
            .orElseThrow(() -> new ForbiddenException("no line in the table of rights"));
        if (right.kind() == Right.Kind.PROGRAM) {
            return program(request, right);
        }
        if (isNoForm(request)) {
            throw new BadRequestException();
        }
        sessions.recognise(request.getCookies(), who);
        proof.bind(request.getCookies(), right.kind());
        return SAFE.contains(request.getMethod()) ? turnAway(request, right) : takeForm(request, right);
    }

    /** A form nothing vouches for is believed only so far as the session lives that its cookie opens, which no other site's form brings. */
    private Optional<Response> takeForm(ContainerRequestContext request, Right right) {
        FormProof.Found found = proof.of(request.getCookies(), right.kind());
        if (found == FormProof.Found.OURS && isForOthers(right)) {
            return Optional.of(kept.ofSomebodyElse(request));
        }
        Optional<Response> away = turnAway(request, right);
        boolean let = away.isEmpty() && right.kind() != Right.Kind.ANYBODY;
        if (found == FormProof.Found.UNKNOWN && !let) {
            throw new BadRequestException();
        }
        if (away.isPresent()) {
            return away.map(answer -> kept.turnedAway(request, answer));
        }
        if (found != FormProof.Found.GOOD) {
            return Optional.of(kept.again(request));
        }
        if (right.kind() == Right.Kind.GUEST) {
            guests.get().goOn(request);
        }
        return Optional.empty();
    }

    /** Somebody signed in here meanwhile who may not do this: it was typed by a person who may, and who can sign in and send it. */
    private boolean isForOthers(Right right) {
        return right.kind() == Right.Kind.STAFF && who.isSignedIn() && !right.allows(who.staff().role);
    }

    private Optional<Response> turnAway(ContainerRequestContext request, Right right) {
        return switch (right.kind()) {
            case PROGRAM -> throw new IllegalStateException("answered before");
            case ANYBODY -> Optional.empty();
            case GUEST -> guest(request);
            case STAFF -> staff(request, right);
        };
    }

    /** The token of a form is checked in forms alone; so whatever a page lets change must come as one. */
    private static boolean isNoForm(ContainerRequestContext request) {
        MediaType type = request.getMediaType();
        return !SAFE.contains(request.getMethod())
            && (type == null || FORMS.stream().noneMatch(type::isCompatible));
    }

    /** A cookie proves nothing here: another site could make a browser send it. */
    private Optional<Response> program(ContainerRequestContext request, Right right) {
        if (programs.isUnsatisfied()) {
            throw new ForbiddenException();
        }
        return programs.get().turnAway(request, right.scope());
    }

    private Optional<Response> guest(ContainerRequestContext request) {
        if (guests.isUnsatisfied()) {
            throw new ForbiddenException();
        }
        return guests.get().turnAway(request);
    }

    private Optional<Response> staff(ContainerRequestContext request, Right right) {
        language.use(who.isSignedIn() ? who.staff().language : Supported.ORIGINAL);
        if (!who.isSignedIn()) {
            return Optional.of(askToSignIn(request));
        }
        if (!right.allows(who.staff().role)) {
            throw new ForbiddenException();
        }
        return Optional.empty();
    }

    /** A page that was asked for comes back after signing in. */
    private static Response askToSignIn(ContainerRequestContext request) {
        if (!request.getMethod().equals("GET") || !wantsPage(request)) {
            return Response.status(Response.Status.UNAUTHORIZED).header(HttpHeaders.WWW_AUTHENTICATE, "Session")
                .build();
        }
        String to = URLEncoder.encode(request.getUriInfo().getRequestUri().getRawPath(), StandardCharsets.UTF_8);
        return Response.seeOther(URI.create("/sign-in?to=" + to)).build();
    }

    private static boolean wantsPage(ContainerRequestContext request) {
        return request.getAcceptableMediaTypes().stream().anyMatch(type -> type.isCompatible(MediaType.TEXT_HTML_TYPE));
    }
}
