package foretress.salon;

import foretress.running.AuditEvent;
import foretress.web.PublicAddress;
import jakarta.enterprise.event.Event;
import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.core.Cookie;
import jakarta.ws.rs.core.NewCookie;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Begins, recognises and ends sign-ins. */
@Singleton
public class Sessions {
    /** A screen left alone this long is signed out (ASVS 7.3.1). */
    static final Duration IDLE = Duration.ofMinutes(30);
    /** How often a cookie in use is written anew; within it the idle time is that much less exact. */
    static final Duration RENEW = Duration.ofMinutes(1);

    private final Event<AuditEvent> happened;
    private final SessionCookie cookie;
    private final PublicAddress address;
    private final SteadyClock clock;

    Sessions(SessionCookie cookie, PublicAddress address, SteadyClock clock, Event<AuditEvent> happened) {
        this.happened = happened;
        this.cookie = cookie;
        this.address = address;
        this.clock = clock;
    }

    /** A new session under a new name; old ones of the same person go on elsewhere. */
    @Transactional
    NewCookie begin(Staff staff) {
        return begin(staff, new Who());
    }

    /** The same; the rest of this request is the new session's already. */
    @Transactional
    NewCookie begin(Staff staff, Who who) {
        Instant now = clock.instant();
        Session.sweep(now);
        var session = new Session(staff, now);
        session.persist();
        who.is(staff, session.id);
        return cookie(new SessionCookie.Held(session.id, now));
    }

    void recognise(Map<String, Cookie> cookies, Who who) {
        held(cookies).flatMap(held -> Session.alive(held.session(), clock.instant()))
            .ifPresent(session -> who.is(session.staff, session.id));
    }

    /** The session this browser was given last, alive or not. */
    Optional<UUID> last(Map<String, Cookie> cookies) {
        return written(cookies).map(SessionCookie.Held::session);
    }

    private Optional<SessionCookie.Held> written(Map<String, Cookie> cookies) {
        return Optional.ofNullable(cookies.get(name())).flatMap(c -> cookie.read(c.getValue()));
    }

    private Optional<SessionCookie.Held> held(Map<String, Cookie> cookies) {
        return written(cookies).filter(held -> inTime(held.usedAt(), clock.instant()));
    }

    /** Neither left alone too long nor used at a time that is still to come, as after a clock was set back and the server started again. */
    private static boolean inTime(Instant used, Instant now) {
        return now.isBefore(used.plus(IDLE)) && !used.isAfter(now.plus(RENEW));
    }

    /** A fresh cookie for a session in use, when the one that came is old enough. */
    Optional<NewCookie> renewed(Map<String, Cookie> cookies, Who who) {
        Instant now = clock.instant();
        return held(cookies).filter(held -> held.usedAt().plus(RENEW).isBefore(now))
            .filter(held -> who.session().filter(held.session()::equals).isPresent())
            .map(held -> cookie(new SessionCookie.Held(held.session(), now)));
    }

    /** Ends this sign-in on this device. */
    @Transactional
    public NewCookie end(Who who) {
        who.session().ifPresent(id -> {
            Session.deleteById(id);
            happened.fire(new AuditEvent(who.staff().id.toString(), "signed out", who.staff().id.toString()));
        });
        return builder("").maxAge(0).expiry(new Date(0)).build();
    }

    /** Every device this person is signed in on has to sign in again. */
    @Transactional
    public void endAllOf(Staff staff) {
        Session.endAllOf(staff);
    }

    private NewCookie cookie(SessionCookie.Held held) {
        return builder(cookie.write(held)).build();
    }

    private NewCookie.Builder builder(String value) {
        return new NewCookie.Builder(name()).value(value).path("/").httpOnly(true).secure(address.secure())
            .sameSite(NewCookie.SameSite.LAX);
    }

    String name() {
        return address.cookieName("staff");
    }
}
