package foretress.invitation;

import foretress.salon.GuestDoor;
import foretress.web.PublicAddress;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Cookie;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Knows a client by the cookie of a door. Without one the way is the link; a second browser shows a code first. */
@ApplicationScoped
public class GuestFilter implements GuestDoor {
    static final String COOKIE = "door";
    static final String CODE = "/code";
    private static final String AFTER = "/answers/after", REACTION = "/answers/reaction";
    /** What shows nothing of an answer, and must not wait for a code. */
    private static final List<String> OPEN = List.of(CODE, REACTION);
    /** What of it shows nothing either: taking consent back needs no more than giving it did. */
    private static final List<String> OPEN_AFTERWARDS = List.of(AFTER, "/answers/withdraw");
    /** What a link opens once the service took place or is off. */
    private static final List<String> AFTERWARDS = List.of(AFTER, REACTION, CODE, "/answers/complaint", "/answers/copy",
        "/answers/photos", "/answers/rights", "/answers/stop", "/answers/withdraw");

    @CheckedTemplate(basePath = "invitation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record UseYourLink() implements TemplateInstance {}

    private final ClientSessions doors;
    private final Guest guest;
    private final PublicAddress address;

    GuestFilter(ClientSessions doors, Guest guest, PublicAddress address) {
        this.doors = doors;
        this.guest = guest;
        this.address = address;
    }

    @Override
    public Optional<Response> turnAway(ContainerRequestContext request) {
        Optional<ClientSession> door = cookie(request).flatMap(doors::openedBy);
        if (door.isEmpty()) {
            return Optional.of(useYourLink());
        }
        guest.cameThrough(door.get());
        String path = request.getUriInfo().getRequestUri().getPath();
        if (isBeyond(path)) {
            return Optional.of(Response.seeOther(URI.create(guest.handed().orElseThrow().reach())).build());
        }
        if (guest.comesAfterwards() && !isUnder(AFTERWARDS, path)) {
            return Optional.of(Response.seeOther(URI.create(AFTER)).build());
        }
        return door.get().seesThisVisit() || isUnder(OPEN, path)
            || guest.comesAfterwards() && isUnder(OPEN_AFTERWARDS, path) ? Optional.empty()
                : Optional.of(codeFirst(request));
    }

    private static boolean isUnder(List<String> addresses, String path) {
        return addresses.stream().anyMatch(one -> path.equals(one) || path.startsWith(one + "/"));
    }

    /** A page leads to the code; a form is kept on the page it came from until the code was shown beside it. */
    private static Response codeFirst(ContainerRequestContext request) {
        return request.getMethod().equals("POST") ? useYourLink() : Response.seeOther(URI.create(CODE)).build();
    }

    /** A tablet handed over for one thing opens that and the way back. */
    private boolean isBeyond(String path) {
        return guest.handed().filter(what -> !path.startsWith(what.reach()) && !path.equals(GiveBackPages.PATH))
            .isPresent();
    }

    @Override
    public void goOn(ContainerRequestContext request) {
        if (request.getMethod().equals("POST")) {
            keepLanguage();
        }
    }

    @Override
    public Optional<String> named(Map<String, Cookie> cookies) {
        return Optional.ofNullable(cookies.get(address.cookieName(COOKIE))).map(Cookie::getValue);
    }

    private Optional<String> cookie(ContainerRequestContext request) {
        return named(request.getCookies());
    }

    @Override
    public Optional<NewCookie> staffCameBack(Map<String, Cookie> cookies) {
        Optional<Cookie> cookie = Optional.ofNullable(cookies.get(address.cookieName(COOKIE)));
        cookie.map(Cookie::getValue).flatMap(doors::openedBy).ifPresent(door -> doors.close(door.id));
        return cookie.map(any -> forgotten());
    }

    /** What makes this browser forget the client. */
    NewCookie forgotten() {
        return new NewCookie.Builder(address.cookieName(COOKIE)).value("").path("/").httpOnly(true)
            .secure(address.secure())
            .sameSite(NewCookie.SameSite.LAX).maxAge(0).build();
    }

    /** A language changed on the way is the client's from then on: for mails, and on the consent. */
    private void keepLanguage() {
        if (guest.changedLanguage()) {
            doors.speak(guest.doorId(), guest.language());
        }
    }

    private static Response useYourLink() {
        return Response.status(Response.Status.FORBIDDEN).type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
            .entity(new UseYourLink().render()).build();
    }
}
