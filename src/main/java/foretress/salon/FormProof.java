package foretress.salon;

import foretress.web.FormToken;
import foretress.web.FormTokens;
import foretress.web.Origins;
import foretress.web.UnsentForm;
import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.context.RequestScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.ws.rs.core.Cookie;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/** Whether a form that came was made by a page of ours for the session it came with. */
@RequestScoped
class FormProof {
    /** GOOD: made for this session. OURS: a page of ours made it, for a session that is over. UNKNOWN: nothing says so. */
    enum Found {
        GOOD, OURS, UNKNOWN
    }

    private final Sessions sessions;
    private final Who who;
    private final FormToken token;
    private final FormTokens tokens;
    private final Origins origins;
    private final HttpServerRequest sent;
    private final Instance<GuestDoor> guests;

    FormProof(Sessions sessions, Who who, FormToken token, FormTokens tokens, Origins origins, HttpServerRequest sent,
        Instance<GuestDoor> guests) {
        this.sessions = sessions;
        this.who = who;
        this.token = token;
        this.tokens = tokens;
        this.origins = origins;
        this.sent = sent;
        this.guests = guests;
    }

    static String signedIn(UUID session) {
        return "staff " + session;
    }

    /** From here on forms are made for whoever this route knows: staff who are signed in, or a client who came through a door. */
    void bind(Map<String, Cookie> cookies, Right.Kind kind) {
        if (kind == Right.Kind.GUEST) {
            door(cookies).ifPresent(token::bind);
        } else {
            who.session().map(FormProof::signedIn).ifPresent(token::bind);
        }
    }

    Found of(Map<String, Cookie> cookies, Right.Kind kind) {
        String given = UnsentForm.token();
        boolean vouched = origins.vouchedFor(sent);
        if (tokens.prove(given, wanted(cookies, kind))
            || kind == Right.Kind.GUEST && vouched && isThisBrowsers(given)) {
            return Found.GOOD;
        }
        return vouched || tokens.prove(given, known(cookies)) ? Found.OURS : Found.UNKNOWN;
    }

    /** A client who opened the link again has a new door; what this browser kept meanwhile was made for no door. */
    private boolean isThisBrowsers(String given) {
        return tokens.prove(given, token.known().stream().toList());
    }

    /** What opens a route is what its forms must be made for; a route open to anybody takes a form of any page this browser was shown. */
    private List<String> wanted(Map<String, Cookie> cookies, Right.Kind kind) {
        return switch (kind) {
            case STAFF -> staff(cookies).stream().toList();
            case GUEST -> door(cookies).stream().toList();
            case ANYBODY, PROGRAM -> known(cookies);
        };
    }

    /** Every session this browser has a cookie of, alive or over. */
    private List<String> known(Map<String, Cookie> cookies) {
        return Stream.of(staff(cookies), door(cookies), token.known()).flatMap(Optional::stream).toList();
    }

    private Optional<String> staff(Map<String, Cookie> cookies) {
        return sessions.last(cookies).map(FormProof::signedIn);
    }

    private Optional<String> door(Map<String, Cookie> cookies) {
        return guests.stream().flatMap(door -> door.named(cookies).stream()).findFirst()
            .map(cookie -> "door " + cookie);
    }
}
