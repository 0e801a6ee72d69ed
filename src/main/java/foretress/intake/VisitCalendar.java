package foretress.intake;

import foretress.invitation.Guest;
import foretress.salon.Salon;
import foretress.visit.Visit;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Collectors;

/** The visit as a calendar file (RFC 5545): where and when, never what for. */
@Path("/answers/visit.ics")
public class VisitCalendar {
    /** Octets on a line before it is folded (section 3.1). */
    private static final int LONGEST = 75;

    private final Guest guest;
    private final ClientLanguage speech;
    private final Clock clock;

    VisitCalendar(Guest guest, ClientLanguage speech, Clock clock) {
        this.guest = guest;
        this.speech = speech;
        this.clock = clock;
    }

    @GET
    public Response file() {
        Visit visit = guest.visit();
        if (!visit.state.isAhead()) {
            return Response.seeOther(URI.create("/answers")).build();
        }
        return Response.ok(text(visit, Salon.the(), clock.instant())).type("text/calendar; charset=UTF-8")
            .header("Content-Disposition", "attachment; filename=\"visit.ics\"").build();
    }

    private String text(Visit visit, Salon salon, Instant now) {
        return List.of("BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Foretress//Salon visits//EN", "BEGIN:VEVENT",
            "UID:" + visit.id + "@foretress", "DTSTAMP:" + utc(now), "DTSTART:" + utc(visit.startsAt),
            "SUMMARY:" + escaped(speech.say().done_calendar_summary(salon.name)),
            "LOCATION:" + escaped(salon.address + ", " + salon.town), "END:VEVENT", "END:VCALENDAR").stream()
            .map(VisitCalendar::folded).collect(Collectors.joining("\r\n", "", "\r\n"));
    }

    /** As the standard writes a moment (section 3.3.5): 20260611T130000Z. */
    private static String utc(Instant moment) {
        return moment.truncatedTo(ChronoUnit.SECONDS).toString().replaceAll("[-:]", "");
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replaceAll("\\R", "\\\\n");
    }

    /** Never inside a letter: a line is counted in octets of UTF-8. */
    static String folded(String line) {
        var folded = new StringBuilder();
        int octets = 0;
        for (int letter : line.codePoints().toArray()) {
            int size = Character.toString(letter).getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > LONGEST) {
                folded.append("\r\n ");
                octets = 1;
            }
            folded.appendCodePoint(letter);
            octets += size;
        }
        return folded.toString();
    }
}
