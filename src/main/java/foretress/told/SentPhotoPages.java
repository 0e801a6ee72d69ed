package foretress.told;

import foretress.invitation.Guest;
import foretress.salon.Policies;
import foretress.visit.Visit;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import foretress.web.SentFile;
import foretress.web.Upload;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** By her own link a client sends photos, if she likes: of her hair, of the box, of what is in it. One a form; each can be taken back. */
@Path(SentPhotoPages.AT)
public class SentPhotoPages {
    static final String AT = "/answers/photos";
    private static final URI START = URI.create("/answers"), HERE = URI.create(AT);

    @CheckedTemplate(basePath = "told", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record PhotosPage(List<Place> places, int number, int years, boolean open, Mistakes mistakes)
        implements TemplateInstance {}

    /**
     * What photos are asked of.
     *
     * @param hint how to take it; empty where there is nothing to say
     * @param choose what the field says; empty when no more can be sent
     * @param submission names the form
     */
    public record Place(String code, String title, String hint, List<Shown> sent, String choose, String submission) {}

    /** One that arrived. */
    public record Shown(String address, String name) {}

    private final Guest guest;
    private final SentPhotos photos;
    private final Policies policies;
    private final ClientSpeech speech;

    SentPhotoPages(Guest guest, SentPhotos photos, Policies policies, ClientSpeech speech) {
        this.guest = guest;
        this.photos = photos;
        this.policies = policies;
        this.speech = speech;
    }

    @GET
    public Response show() {
        return guest.visit().state.mayHoldAnswers() ? Response.ok(page(new Mistakes())).build() : start();
    }

    @POST
    @Path("/send")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response send(@RestForm String submission, @RestForm String of, @RestForm("photo") FileUpload photo) {
        UUID named = Submissions.of(submission);
        PhotoOf shows = PhotoOf.of(of).orElseThrow(() -> new BadRequestException("nothing a photo is asked of"));
        if (!guest.visit().state.mayHoldAnswers()) {
            return start();
        }
        var mistakes = new Mistakes();
        if (mistakes.expect(SentPhotos.mayBeSent(guest.visit()), of, speech.pictures().send_over())) {
            Upload.photo(photo, of, mistakes, speech.pictures())
                .ifPresent(drawn -> say(photos.send(named, guest.visitId(), shows, drawn), shows, mistakes));
        }
        return mistakes.isEmpty() ? Response.seeOther(HERE).build() : FormAgain.with(page(mistakes));
    }

    private void say(SentPhotos.Sent sent, PhotoOf shows, Mistakes mistakes) {
        switch (sent) {
            case KEPT -> {}
            case NO_ROOM -> mistakes.add(shows.code(), speech.pictures().send_enough(shows.most()));
            case OLD_FORM -> mistakes.add(shows.code(), speech.pictures().send_old());
        }
    }

    @POST
    @Path("/{photo}/remove")
    public Response remove(@RestPath UUID photo) {
        photos.takeBack(guest.visitId(), photo);
        return Response.seeOther(HERE).build();
    }

    @GET
    @Path("/{photo}")
    public Response whole(@RestPath UUID photo) {
        return photos.whole(guest.visitId(), photo).map(SentFile::photo).orElseThrow(NotFoundException::new);
    }

    @GET
    @Path("/{photo}/small")
    public Response small(@RestPath UUID photo) {
        return photos.small(guest.visitId(), photo).map(SentFile::photo).orElseThrow(NotFoundException::new);
    }

    private static Response start() {
        return Response.seeOther(START).build();
    }

    private TemplateInstance page(Mistakes mistakes) {
        Visit visit = guest.visit();
        boolean open = SentPhotos.mayBeSent(visit);
        List<SentPhotos.Kept> sent = photos.of(visit.id);
        List<Place> places =
            Arrays.stream(PhotoOf.values()).map(one -> place(visit, one, sent, open, mistakes)).toList();
        return new PhotosPage(places, sent.size(), policies.effective().retentionYears(), open, mistakes);
    }

    private Place place(Visit visit, PhotoOf shows, List<SentPhotos.Kept> all, boolean open, Mistakes mistakes) {
        List<SentPhotos.Kept> sent = all.stream().filter(one -> one.shows() == shows).toList();
        boolean full = shows.most() > 1 && sent.size() >= shows.most() && mistakes.at(shows.code()).isEmpty();
        List<Shown> shown = IntStream.range(0, sent.size()).mapToObj(
            i -> new Shown(AT + "/" + sent.get(i).id(), speech.pictures().send_photo_of(title(shows), i + 1))).toList();
        return new Place(shows.code(), title(shows), hint(shows), shown,
            open && !full ? choose(shows, sent.isEmpty()) : "", photos.form(visit, shows).toString());
    }

    private String choose(PhotoOf shows, boolean first) {
        return first ? speech.pictures().send_choose()
            : shows.most() == 1 ? speech.pictures().send_instead() : speech.pictures().send_another();
    }

    private String title(PhotoOf shows) {
        return switch (shows) {
            case FRONT -> speech.pictures().send_front();
            case SIDE -> speech.pictures().send_side();
            case BACK -> speech.pictures().send_back();
            case BOX -> speech.pictures().send_box();
            case INGREDIENTS -> speech.pictures().send_ingredients();
        };
    }

    private String hint(PhotoOf shows) {
        return switch (shows) {
            case FRONT -> speech.pictures().send_front_hint();
            case SIDE, BACK -> "";
            case BOX -> speech.pictures().send_box_hint(shows.most());
            case INGREDIENTS -> speech.pictures().send_ingredients_hint(shows.most());
        };
    }
}
