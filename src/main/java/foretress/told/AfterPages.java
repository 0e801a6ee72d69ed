package foretress.told;

import foretress.consent.Consents;
import foretress.intake.ClientLanguage;
import foretress.intake.NoticeConsent;
import foretress.invitation.Guest;
import foretress.salon.Salon;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.web.ClientWords;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.stream.Stream;

/** What the client's own link opens once nothing can be answered any more: what became of the visit, what was signed, what can be told. */
@Path("/answers/after")
public class AfterPages {
    @CheckedTemplate(basePath = "told", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record AfterPage(Became became, boolean tell, boolean copy, boolean photos, boolean withdraw)
        implements TemplateInstance {}

    /**
     * What became of the visit.
     *
     * @param says one sentence or two a paragraph, the first who said so
     */
    public record Became(String title, List<String> says) {}

    private final Guest guest;
    private final Consents consents;
    private final NoticeConsent notices;
    private final Reactions reactions;
    private final SentPhotos photos;
    private final ClientSpeech speech;
    private final ClientLanguage language;

    AfterPages(Guest guest, Consents consents, NoticeConsent notices, Reactions reactions, SentPhotos photos,
        ClientSpeech speech, ClientLanguage language) {
        this.guest = guest;
        this.consents = consents;
        this.notices = notices;
        this.reactions = reactions;
        this.photos = photos;
        this.speech = speech;
        this.language = language;
    }

    @GET
    public Response show() {
        Visit visit = guest.visit();
        return visit.state == State.BOOKED || visit.state.takesAnswers()
            ? Response.seeOther(URI.create("/answers")).build()
            : Response.ok(new AfterPage(became(visit), reactions.mayBeTold(visit),
                consents.latest(visit.id).isPresent(), guest.seesThisVisit() && !photos.of(visit.id).isEmpty(),
                visit.state == State.CLOSED && consents.latest(visit.id).isPresent())).build();
    }

    private Became became(Visit visit) {
        return switch (visit.state) {
            case WITHDRAWN -> takenBack(visit);
            case CANCELLED -> off(visit);
            case CLOSED -> visit.postponed ? off(visit)
                : new Became(speech.say().after_title(),
                    List.of(speech.say().after_lead(speech.day(visit.startsAt)), speech.say().after_late()));
            default -> new Became(speech.say().off_door(),
                Stream.of(language.say().done_visit(speech.dayAndTime(visit.startsAt)), language.postponed(visit))
                    .filter(one -> !one.isEmpty()).toList());
        };
    }

    /** Only the salon calls a visit off, or decides that none of it goes ahead. */
    private Became off(Visit visit) {
        return new Became(speech.say().off_title(), List
            .of(speech.say().off_by_salon(Salon.the().name, speech.day(visit.startsAt)), speech.say().off_late()));
    }

    private Became takenBack(Visit visit) {
        ClientWords say = language.say();
        return new Became(say.taken_back_title(),
            Stream.concat(notices.takenBack(visit.id).stream().map(at -> say.taken_back_lead(speech.dayAndTime(at))),
                Stream.of(say.taken_back_then(Salon.the().name), speech.say().off_late())).toList());
    }
}
