package foretress.salon;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Cookie;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import java.util.Optional;

/** Says whether a request comes from a client who was let in. The room of invitations implements it; without it nobody is. */
public interface GuestDoor {
    /** What to answer to somebody who was not let in; nothing when they were. */
    Optional<Response> turnAway(ContainerRequestContext request);

    /** A client who was let in goes on: their form was made by our page. */
    default void goOn(ContainerRequestContext request) {}

    /** What names the door this browser once opened, open still or not. */
    default Optional<String> named(Map<String, Cookie> cookies) {
        return Optional.empty();
    }

    /** A member of staff signs in on this browser: no client goes on in it. The cookie that is gone with it, if there was one. */
    default Optional<NewCookie> staffCameBack(Map<String, Cookie> cookies) {
        return Optional.empty();
    }
}
