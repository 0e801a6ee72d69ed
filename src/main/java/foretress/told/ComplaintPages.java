package foretress.told;

import foretress.consent.ConsentWords;
import foretress.invitation.Guest;
import foretress.salon.Policies;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** By her own link a client complains: in her words, with the date by which the salon must have said that it has them. */
@Path(ComplaintPages.AT)
public class ComplaintPages {
    static final String AT = "/answers/complaint";
    private static final int LONGEST = 4000;

    @CheckedTemplate(basePath = "told", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ComplaintPage(List<Shown> made, String elsewhere, Form form, String submission, Mistakes mistakes)
        implements TemplateInstance {}

    /**
     * A complaint as the client sees it.
     *
     * @param stands that it arrived and by when that is confirmed, or that it was
     * @param answered when it was answered; empty while it was not
     */
    public record Shown(String at, String words, String stands, String answered, String answer) {}

    private final Guest guest;
    private final ComplaintsMade complaints;
    private final Policies policies;
    private final ClientSpeech speech;

    ComplaintPages(Guest guest, ComplaintsMade complaints, Policies policies, ClientSpeech speech) {
        this.guest = guest;
        this.complaints = complaints;
        this.policies = policies;
        this.speech = speech;
    }

    @GET
    public TemplateInstance show() {
        return page(new Form(new MultivaluedHashMap<>()), UUID.randomUUID().toString(), new Mistakes());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response make(MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        UUID submission = Submissions.of(form);
        String words = form.one("words");
        var mistakes = new Mistakes();
        if (mistakes.expect(!words.isEmpty(), "words", speech.say().complaint_missing())) {
            mistakes.expect(words.length() <= LONGEST, "words", speech.say().complaint_long());
        }
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(form, submission.toString(), mistakes));
        }
        complaints.make(submission, guest.visitId(), new ComplaintsMade.Words(words, speech.tag()));
        return Response.seeOther(URI.create(AT)).build();
    }

    private TemplateInstance page(Form form, String submission, Mistakes mistakes) {
        return new ComplaintPage(complaints.ofVisit(guest.visitId()).stream().map(this::shown).toList(), elsewhere(),
            form, submission, mistakes);
    }

    private Shown shown(ComplaintMade made) {
        String stands = made.acknowledgedAt()
            .map(at -> speech.say().complaint_acknowledged(name(made), speech.day(at)))
            .orElseGet(() -> speech.say().complaint_waits(Salon.the().name, speech.day(made.acknowledgeBy())));
        return new Shown(speech.dayAndTime(made.madeAt()), complaints.read(made).words(), stands,
            made.answeredAt().map(speech::day).orElse(""), complaints.answer(made));
    }

    private static String name(ComplaintMade made) {
        return made.acknowledgedBy().flatMap(Staff::byId).map(staff -> staff.name).orElseGet(() -> Salon.the().name);
    }

    /** Who else hears complaints, as the notice says it. */
    private String elsewhere() {
        ConsentWords words = ConsentWords.in(speech.tag());
        return words.say("notice.complaint.text", Map.of("authority",
            words.say("notice.authorities." + policies.effective().jurisdiction())));
    }
}
