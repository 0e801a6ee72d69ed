package foretress.card;

import foretress.closing.ClosingWords;
import foretress.closing.HairPhoto;
import foretress.closing.HairPhotos;
import foretress.ledger.Ledger;
import foretress.salon.Who;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import foretress.web.PictureWords;
import foretress.web.SentFile;
import foretress.web.Upload;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** Photos of the hair before and after: only with the client's leave, which is said anew for each. */
@Path("/visits/{id}/hair")
public class PhotoPages {
    @CheckedTemplate(basePath = "card", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record PhotoPage(String client, String address, String when, boolean open, List<CardView.PhotoView> photos,
        boolean before, boolean after, Mistakes mistakes)
        implements TemplateInstance {}

    private final Visits visits;
    private final HairPhotos photos;
    private final CardText text;
    private final ClosingWords say;
    private final PictureWords pictures;
    private final Ledger ledger;
    private final Who who;

    PhotoPages(Visits visits, HairPhotos photos, CardText text, ClosingWords say, PictureWords pictures, Ledger ledger,
        Who who) {
        this.visits = visits;
        this.photos = photos;
        this.text = text;
        this.say = say;
        this.pictures = pictures;
        this.ledger = ledger;
        this.who = who;
    }

    @GET
    public TemplateInstance show(@RestPath UUID id) {
        Visit visit = found(id);
        ledger.read(who.staff().id.toString(), "photos of the hair looked through", id.toString());
        return page(visit, Optional.empty(), new Mistakes());
    }

    @POST
    @Path("/photo")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response keep(@RestPath UUID id, @RestForm("photo") FileUpload photo, @RestForm String moment,
        @RestForm String leave) {
        Visit visit = found(id);
        var mistakes = new Mistakes();
        Optional<HairPhoto.Moment> which = HairPhoto.Moment.of(moment);
        mistakes.expect(which.isPresent(), "moment", say.photo_moment_missing());
        mistakes.expect("yes".equals(leave), "leave", say.photo_leave_missing());
        mistakes.expect(open(visit), "photo", say.photo_over());
        if (mistakes.isEmpty()) {
            Upload.photo(photo, "photo", mistakes, pictures).ifPresent(
                drawn -> mistakes.expect(photos.add(id, which.orElseThrow(), drawn, who.staff().id),
                    "photo", say.photo_enough(HairPhotos.MOST)));
        }
        return mistakes.isEmpty() ? back(id) : FormAgain.with(page(visit, which, mistakes));
    }

    @GET
    @Path("/photo/{photo}")
    public Response look(@RestPath UUID id, @RestPath UUID photo) {
        HairPhoto kept = photos.one(found(id).id, photo).orElseThrow(NotFoundException::new);
        ledger.note(who.staff().id.toString(), "photo of the hair seen", kept.id().toString());
        return SentFile.photo(photos.bytes(kept));
    }

    @POST
    @Path("/photo/{photo}/remove")
    public Response remove(@RestPath UUID id, @RestPath UUID photo) {
        photos.one(found(id).id, photo).ifPresent(kept -> photos.remove(kept, who.staff().id));
        return back(id);
    }

    private static Response back(UUID id) {
        return Response.seeOther(URI.create("/visits/" + id + "/hair")).build();
    }

    private static boolean open(Visit visit) {
        return visit.state.isAhead() || visit.state == State.CLOSED;
    }

    private TemplateInstance page(Visit visit, Optional<HairPhoto.Moment> moment, Mistakes mistakes) {
        return new PhotoPage(visit.client.fullName(), "/visits/" + visit.id, text.moment(visit.startsAt), open(visit),
            text.photos(visit.id, photos.of(visit.id)),
            moment.filter(HairPhoto.Moment.BEFORE::equals).isPresent(),
            moment.filter(HairPhoto.Moment.AFTER::equals).isPresent(), mistakes);
    }

    private Visit found(UUID id) {
        return visits.find(id).orElseThrow(NotFoundException::new);
    }
}
