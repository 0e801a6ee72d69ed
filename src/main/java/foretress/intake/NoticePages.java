package foretress.intake;

import foretress.consent.Notice;
import foretress.invitation.Guest;
import foretress.visit.Visit;
import foretress.web.ClientWords;
import foretress.web.FormAgain;
import foretress.web.Mistake;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;

/** Before the first question: who holds the answers and why, and a consent of its own to that. Until then nothing is kept. */
@Path("/answers/notice")
public class NoticePages {
    @CheckedTemplate(basePath = "intake", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record NoticePage(Notice notice, boolean given, List<Mistake> mistakes) implements TemplateInstance {}

    @CheckedTemplate(basePath = "intake", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record PaperInstead(String visitDay) implements TemplateInstance {}

    private final Guest guest;
    private final NoticeConsent notices;
    private final ClientLanguage speech;

    NoticePages(Guest guest, NoticeConsent notices, ClientLanguage speech) {
        this.guest = guest;
        this.notices = notices;
        this.speech = speech;
    }

    @GET
    @Transactional
    public TemplateInstance show() {
        return page(List.of());
    }

    @POST
    public Response answer(@RestForm String agree, @RestForm String act, @RestForm String notice) {
        if ("refuse".equals(act)) {
            notices.refuse(guest.visitId(), guest.language());
            return Response.seeOther(java.net.URI.create("/answers/notice/paper")).build();
        }
        if (!"yes".equals(agree)) {
            ClientWords say = speech.say();
            return FormAgain.with(page(List.of(new Mistake("agree", say.notice_must_tick()))));
        }
        if (!notices.of(guest.language()).sha256().equals(notice)) {
            return FormAgain.with(page(List.of(new Mistake("agree", speech.say().notice_changed()))));
        }
        begin();
        return Response.seeOther(Way.START).build();
    }

    @Transactional
    void begin() {
        guest.begin();
        notices.give(guest.visitId(), guest.language());
    }

    /** For those who would rather not: the paper form, and nothing kept. */
    @GET
    @Path("/paper")
    @Transactional
    public TemplateInstance paper() {
        return new PaperInstead(speech.day(guest.visit().startsThere()));
    }

    private NoticePage page(List<Mistake> mistakes) {
        Visit visit = guest.visit();
        return new NoticePage(notices.of(guest.language()), HealthConsent.given(visit.id), mistakes);
    }
}
