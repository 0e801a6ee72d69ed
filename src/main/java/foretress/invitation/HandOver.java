package foretress.invitation;

import foretress.salon.Sessions;
import foretress.salon.Who;
import foretress.visit.Visit;
import foretress.web.Language;
import foretress.web.PublicAddress;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * The one way a tablet goes into a client's hands: whoever was signed in on it is signed out, and the browser reaches nothing but
 * this visit's door. Coming back, staff sign in.
 */
@ApplicationScoped
public class HandOver {
    private static final long YEAR_QUARTER = Duration.ofDays(90).toSeconds();

    private final Invitations invitations;
    private final Sessions sessions;
    private final PublicAddress address;
    private final Who who;
    private final Clock clock;

    HandOver(Invitations invitations, Sessions sessions, PublicAddress address, Who who, Clock clock) {
        this.invitations = invitations;
        this.sessions = sessions;
        this.address = address;
        this.who = who;
        this.clock = clock;
    }

    /** Locks this browser; the client gives the birth date at the door. */
    public Response atTheDoor(Visit visit, HandOverPurpose what) {
        Token link = invitations.handOver(visit.id, what, who.staff().id.toString());
        return locked("/i/" + link.reveal()).build();
    }

    /** Locks this browser behind the door, where staff have the client before them and have asked who it is. */
    public Response inside(Visit visit, HandOverPurpose what) {
        Invitations.Knock.LetIn in = invitations.handOverInside(visit.id, what, who.staff().id.toString());
        return locked(what.reach())
            .cookie(cookie(address.cookieName(GuestFilter.COOKIE), in.cookie().reveal(), seconds(in.until())),
                cookie(Language.COOKIE, visit.client.language, YEAR_QUARTER))
            .build();
    }

    private Response.ResponseBuilder locked(String to) {
        return Response.seeOther(URI.create(to)).cookie(sessions.end(who)).header("Clear-Site-Data", "\"cache\"");
    }

    private long seconds(Instant until) {
        return clock.instant().until(until, ChronoUnit.SECONDS);
    }

    private NewCookie cookie(String name, String value, long seconds) {
        return new NewCookie.Builder(name).value(value).path("/").httpOnly(true).secure(address.secure())
            .sameSite(NewCookie.SameSite.LAX).maxAge((int) seconds).build();
    }
}
