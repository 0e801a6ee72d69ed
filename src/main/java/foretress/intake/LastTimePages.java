package foretress.intake;

import foretress.consent.Notice;
import foretress.intake.LastTime.Before;
import foretress.invitation.Guest;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Topic;
import foretress.visit.Visit;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What was said last time, to a client who is known: by link and birth date on a browser that answered before, else by a code too.
 * What has changed is ticked and asked anew; the rest is confirmed with the same press. What was agreed to about holding answers
 * stands where the notice is still the very same.
 */
@Path("/answers/last-time")
public class LastTimePages {
    /** One topic in short, and whether it was ticked as changed. */
    public record Row(String topic, String title, List<String> told) {}

    /** @param agreed when the notice was agreed to; empty where this visit has a yes of its own */
    @CheckedTemplate(basePath = "intake", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record LastTimePage(String said, List<Row> rows, Optional<String> agreed, Notice notice)
        implements TemplateInstance {}

    /** To a browser that is not known. */
    @CheckedTemplate(basePath = "intake", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record LastTimeUnknown(String anew) implements TemplateInstance {}

    private final Guest guest;
    private final LastTime lastTime;
    private final NoticeConsent notices;
    private final Intake intake;
    private final Way way;
    private final Views views;
    private final PageViews shown;
    private final ClientLanguage speech;

    LastTimePages(Guest guest, LastTime lastTime, NoticeConsent notices, Intake intake, Way way, Views views,
        PageViews shown, ClientLanguage speech) {
        this.guest = guest;
        this.lastTime = lastTime;
        this.notices = notices;
        this.intake = intake;
        this.way = way;
        this.views = views;
        this.shown = shown;
        this.speech = speech;
    }

    @GET
    @Transactional
    public Response show() {
        Visit visit = guest.visit();
        Optional<Before> before = lastTime.of(visit);
        boolean given = HealthConsent.given(visit.id);
        if (before.isEmpty() || !given && stands(visit).isEmpty()) {
            return Response.seeOther(given ? way.next(visit, intake.said(visit)) : Way.NOTICE).build();
        }
        if (!guest.seesEarlierVisits()) {
            return Response.ok(new LastTimeUnknown(way.next(visit, intake.said(visit)).toString())).build();
        }
        shown.page(visit, "last-time");
        return Response.ok(page(visit, before.get())).build();
    }

    /** What is not ticked is as it was. */
    @POST
    public Response confirm(MultivaluedMap<String, String> form) {
        Visit visit = guest.visit();
        if (!guest.seesEarlierVisits()) {
            return Response.seeOther(Way.START).build();
        }
        if (!HealthConsent.given(visit.id) && !agreeAgain(visit)) {
            return Response.seeOther(Way.NOTICE).build();
        }
        lastTime.confirm(visit.id, Set.copyOf(form.getOrDefault("changed", List.of())), guest.language());
        return Response.seeOther(after()).build();
    }

    private Optional<HealthConsent> stands(Visit visit) {
        return guest.seesEarlierVisits() ? notices.standing(visit, guest.language()) : Optional.empty();
    }

    @Transactional
    boolean agreeAgain(Visit visit) {
        Optional<HealthConsent> standing = stands(visit);
        standing.ifPresent(earlier -> {
            guest.begin();
            notices.stillGiven(visit.id, earlier);
        });
        return standing.isPresent();
    }

    /** Where nothing is left to ask, all of it was read back on this very page. */
    @Transactional
    java.net.URI after() {
        Visit visit = Visit.findById(guest.visitId());
        Answers said = intake.said(visit);
        if (way.walked(visit, said)) {
            intake.readBack(visit, said);
            return Way.SIGN;
        }
        return way.next(visit, said);
    }

    private LastTimePage page(Visit visit, Before before) {
        List<Row> rows = lastTime.topics(before.said()).stream().map(topic -> row(topic, before.said())).toList();
        Optional<String> agreed = HealthConsent.given(visit.id) ? Optional.empty()
            : stands(visit).map(consent -> speech.day(consent.saidAt().atZone(visit.zone())));
        return new LastTimePage(speech.day(before.at().atZone(visit.zone())), rows, agreed,
            notices.of(guest.language()));
    }

    /** What was told in full; no word of what was answered with no. */
    private Row row(Topic topic, Answers said) {
        List<String> told =
            views.lines(topic.questions().stream().filter(q -> said.to(q.id()).isPresent()).toList(), said)
                .stream().filter(line -> !line.quiet()).map(line -> line.label() + ": " + line.answer())
                .collect(Collectors.toList());
        return new Row(topic.id(), views.title(topic), told);
    }
}
