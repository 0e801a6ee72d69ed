package foretress.intake;

import foretress.consent.ConsentInput;
import foretress.invitation.Guest;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestForm;

/** Before signing: which of the tests owed the client does not want, and what follows from that. */
@Path("/answers/tests")
public class TestsPages {
    /** A test owed, and whether the client does not want it. */
    public record Owed(String id, String name, boolean refused) {}

    @CheckedTemplate(basePath = "intake", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record TestsPage(List<Owed> tests) implements TemplateInstance {}

    private final Guest guest;
    private final Intake intake;
    private final Way way;
    private final ConsentDraft draft;
    private final Refusals refusals;

    TestsPages(Guest guest, Intake intake, Way way, ConsentDraft draft, Refusals refusals) {
        this.guest = guest;
        this.intake = intake;
        this.way = way;
        this.draft = draft;
        this.refusals = refusals;
    }

    @GET
    public Response show() {
        return elsewhere().orElseGet(() -> Response.ok(new TestsPage(owed())).build());
    }

    @POST
    public Response say(@RestForm List<String> refuse) {
        return elsewhere().orElseGet(() -> {
            Set<String> owed = owed().stream().map(Owed::id).collect(Collectors.toSet());
            refusals.say(guest.visitId(), refuse.stream().filter(owed::contains).collect(Collectors.toSet()));
            return Response.seeOther(Way.SIGN).build();
        });
    }

    /** Where to go instead, while the answers are not complete or can no longer be changed. */
    private Optional<Response> elsewhere() {
        Visit visit = guest.visit();
        boolean here =
            HealthConsent.given(visit.id) && visit.state.takesAnswers() && way.walked(visit, intake.said(visit));
        return here ? Optional.empty() : Optional.of(Response.seeOther(Way.START).build());
    }

    private List<Owed> owed() {
        Visit visit = guest.visit();
        Answers said = intake.said(visit);
        ConsentInput input = draft.of(visit, said);
        return Stream
            .concat(input.tests().stream().filter(t -> !t.isAdvice()).map(t -> new Owed(t.id(), t.name(), false)),
                input.refused().stream().map(t -> new Owed(t.id(), t.name(), true)))
            .toList();
    }
}
