package foretress.intake;

import foretress.consent.Notice;
import foretress.invitation.Guest;
import foretress.visit.Visit;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistake;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Before the first question: who holds the answers and why, and a consent of its own to that. Until then nothing is kept. */
@Path("/answers/notice")
public class NoticePages {
    @CheckedTemplate(basePath = "intake", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record NoticePage(Notice notice, boolean given, Optional<Guardians.Asked> guardian, String agreeMistake,
        List<Mistake> mistakes) implements TemplateInstance {}

    @CheckedTemplate(basePath = "intake", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record PaperInstead(String visitDay) implements TemplateInstance {}

    private final Guest guest;
    private final NoticeConsent notices;
    private final Guardians guardians;
    private final ClientLanguage speech;

    NoticePages(Guest guest, NoticeConsent notices, Guardians guardians, ClientLanguage speech) {
        this.guardians = guardians;
        this.guest = guest;
        this.notices = notices;
        this.speech = speech;
    }

    @GET
    @Transactional
    public TemplateInstance show() {
        return page(new Form(new MultivaluedHashMap<>()), List.of());
    }

    @POST
    public Response answer(MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        if (form.is("act", "refuse")) {
            notices.refuse(guest.visitId(), guest.language());
            return Response.seeOther(java.net.URI.create("/answers/notice/paper")).build();
        }
        List<Mistake> mistakes = new ArrayList<>();
        Optional<Guardians.Named> guardian = guardians.named(guest.visit(), form, mistakes, speech.say());
        if (!form.is("agree", "yes")) {
            mistakes.add(new Mistake("agree", speech.say().notice_must_tick()));
        } else if (!notices.of(guest.language()).sha256().equals(form.one("notice"))) {
            mistakes.add(new Mistake("agree", speech.say().notice_changed()));
        }
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(form, mistakes));
        }
        begin(guardian);
        return Response.seeOther(Way.START).build();
    }

    @Transactional
    void begin(Optional<Guardians.Named> guardian) {
        guest.begin();
        notices.give(guest.visitId(), guest.language(), guardian);
    }

    /** For those who would rather not: the paper form, and nothing kept. */
    @GET
    @Path("/paper")
    @Transactional
    public TemplateInstance paper() {
        return new PaperInstead(speech.day(guest.visit().startsThere()));
    }

    private NoticePage page(Form form, List<Mistake> mistakes) {
        Visit visit = guest.visit();
        String agree = mistakes.stream().filter(one -> one.field().equals("agree")).map(Mistake::text).findFirst()
            .orElse("");
        return new NoticePage(notices.of(guest.language()), HealthConsent.given(visit.id),
            guardians.asked(visit, form, mistakes), agree, mistakes);
    }
}
