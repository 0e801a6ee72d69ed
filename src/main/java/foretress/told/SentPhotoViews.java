package foretress.told;

import foretress.visit.Visit;
import foretress.web.DateWords;
import foretress.web.Language;
import jakarta.enterprise.context.RequestScoped;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;

/** The photos a client sent, in the words of staff. */
@RequestScoped
public class SentPhotoViews {
    /** @param when it was sent */
    public record Line(String address, String what, String when) {}

    private final SentPhotos photos;
    private final Language language;
    private final ToldWords say;

    SentPhotoViews(SentPhotos photos, Language language, ToldWords say) {
        this.photos = photos;
        this.language = language;
        this.say = say;
    }

    /** Has those of each of these visits at hand. */
    public void ready(Collection<UUID> visits) {
        photos.ready(visits);
    }

    public List<Line> of(Visit visit) {
        return SentPhotos.mayBeSeen(visit) ? photos.of(visit.id).stream().map(one -> line(visit, one)).toList()
            : List.of();
    }

    private Line line(Visit visit, SentPhotos.Kept one) {
        return new Line("/visits/" + visit.id + "/sent-photos/" + one.id(), what(one.shows()),
            at(one.sentAt(), visit));
    }

    private String what(PhotoOf shows) {
        return switch (shows) {
            case FRONT -> say.photo_front();
            case SIDE -> say.photo_side();
            case BACK -> say.photo_back();
            case BOX -> say.photo_box();
            case INGREDIENTS -> say.photo_ingredients();
        };
    }

    private String at(Instant moment, Visit visit) {
        return new DateWords(language.locale()).dateAndHour(moment.atZone(visit.zone()));
    }
}
