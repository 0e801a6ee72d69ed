package foretress.backup;

import foretress.salon.Salon;
import foretress.salon.Who;
import foretress.web.ChairTime;
import jakarta.inject.Named;
import jakarta.inject.Singleton;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;

/** What the owner's page says about backups, and its button. */
@Path("/owner/backup")
@Named("backups")
@Singleton
public class BackupPages {
    private final Backups backups;
    private final Who who;
    private final BackupWords say;
    private final ChairTime time;

    BackupPages(Backups backups, Who who, BackupWords say, ChairTime time) {
        this.backups = backups;
        this.who = who;
        this.say = say;
        this.time = time;
    }

    /** @param warnings what the owner should do something about */
    public record Shown(String last, List<String> warnings, boolean set) {}

    public Shown shown() {
        Backups.Standing standing = backups.standing();
        if (!standing.set()) {
            return new Shown("", List.of(say.unset()), false);
        }
        List<String> warnings = new ArrayList<>();
        if (standing.failed()) {
            warnings.add(say.failed());
        }
        if (standing.late()) {
            warnings.add(standing.last().isEmpty() ? say.never() : say.late());
        }
        return new Shown(standing.last().map(at -> say.last(time.dayAndTime(at.atZone(Salon.the().zoneId()))))
            .orElse(""), warnings, true);
    }

    /** What comes of it stands on the page. */
    @POST
    public Response take() {
        backups.take(who.staff().id.toString());
        return Response.seeOther(URI.create("/owner#backup")).build();
    }
}
