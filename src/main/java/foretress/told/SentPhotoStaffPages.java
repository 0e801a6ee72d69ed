package foretress.told;

import foretress.ledger.ByStaff;
import foretress.salon.Who;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.SentFile;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The photos a client sent, before staff: small on the consultation, and large to look at closely. */
@Path("/visits/{id}/sent-photos/{photo}")
public class SentPhotoStaffPages {
    private final ByStaff byStaff;
    private final Visits visits;
    private final SentPhotos photos;
    private final Who who;

    SentPhotoStaffPages(Visits visits, SentPhotos photos, Who who, ByStaff byStaff) {
        this.byStaff = byStaff;
        this.visits = visits;
        this.photos = photos;
        this.who = who;
    }

    @GET
    public Response whole(@RestPath UUID id, @RestPath UUID photo) {
        byte[] jpeg = photos.whole(found(id), photo).orElseThrow(NotFoundException::new);
        photos.seen(id, who.staff().id);
        return SentFile.photo(jpeg);
    }

    @GET
    @Path("/small")
    public Response small(@RestPath UUID id, @RestPath UUID photo) {
        UUID visit = found(id);
        byStaff.looked("consultation read", id);
        return photos.small(visit, photo).map(SentFile::photo).orElseThrow(NotFoundException::new);
    }

    private UUID found(UUID id) {
        return visits.find(id).filter(SentPhotos::mayBeSeen).map(Visit::id).orElseThrow(NotFoundException::new);
    }
}
