package foretress.intake;

import foretress.invitation.Guest;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import foretress.web.FormAgain;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;

/** Everything that was said, once more, each with a way to say it differently. Nothing is signed that was not read back. */
@Path("/answers/read-back")
public class ReadBackPages {
    /** What was said in one topic. */
    public record Chapter(String topic, String title, List<Line> lines) {}

    /** @param quiet it says no: read again only by who looks for it */
    public record Line(String question, String label, String answer, boolean quiet) {}

    @CheckedTemplate(basePath = "intake", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ReadBackPage(Progress progress, List<ReadRow> rows, String answers, boolean changed, String back)
        implements TemplateInstance {}

    private final Guest guest;
    private final Intake intake;
    private final Way way;
    private final Views views;
    private final PageViews shown;

    ReadBackPages(Guest guest, Intake intake, Way way, Views views, PageViews shown) {
        this.guest = guest;
        this.intake = intake;
        this.way = way;
        this.views = views;
        this.shown = shown;
    }

    @GET
    public Response show() {
        Visit visit = guest.visit();
        Answers said = intake.said(visit);
        if (!HealthConsent.given(visit.id) || !way.walked(visit, said)) {
            return Response.seeOther(HealthConsent.given(visit.id) ? way.next(visit, said) : Way.NOTICE).build();
        }
        ReadBackPage page = page(visit, said, false);
        shown.page(visit, "read-back");
        return Response.ok(page).build();
    }

    @POST
    @Transactional
    public Response confirm(@RestForm String answers) {
        Visit visit = guest.visit();
        Answers said = intake.said(visit);
        if (!HealthConsent.given(visit.id) || !way.walked(visit, said)) {
            return Response.seeOther(HealthConsent.given(visit.id) ? way.next(visit, said) : Way.NOTICE).build();
        }
        if (!shownAs(visit, said).equals(answers)) {
            return FormAgain.with(page(visit, said, true));
        }
        intake.readBack(visit, said);
        return Response.seeOther(Way.SIGN).build();
    }

    private String shownAs(Visit visit, Answers said) {
        return intake.code(visit, "read_back.page", said);
    }

    private ReadBackPage page(Visit visit, Answers said, boolean changed) {
        return new ReadBackPage(way.progress(visit, said, "read-back"),
            views.chapters(visit, said).stream().flatMap(chapter -> ReadRow.of(chapter).stream()).toList(),
            shownAs(visit, said), changed,
            way.before(visit, said, "read-back").map(Object::toString).orElse(""));
    }
}
