package foretress.note;

import foretress.bench.BenchDoor;
import foretress.bench.BenchElasticityPages.Choice;
import foretress.bench.BenchHead;
import foretress.intake.Intake;
import foretress.ledger.ByStaff;
import foretress.note.LookUpFields.Asked;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** A name from one client's answers that no list knows, looked up once for all clients. The name itself stands in no address. */
@Path("/visits/{id}/look-up")
public class LookUpForVisitPages {
    @CheckedTemplate(basePath = "note", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record LookUpForm(BenchHead head, List<Choice> names, Asked asked, Mistakes mistakes)
        implements TemplateInstance {}

    private final ByStaff byStaff;
    private final LookUps lookUps;
    private final LookUpReading reading;
    private final LookUpFields fields;
    private final BenchDoor door;
    private final Intake intake;
    private final ChairTime time;

    LookUpForVisitPages(LookUps lookUps, LookUpReading reading, LookUpFields fields, BenchDoor door, Intake intake,
        ChairTime time, ByStaff byStaff) {
        this.byStaff = byStaff;
        this.lookUps = lookUps;
        this.reading = reading;
        this.fields = fields;
        this.door = door;
        this.intake = intake;
        this.time = time;
    }

    @GET
    @Transactional
    public TemplateInstance ask(@RestPath UUID id) {
        Visit visit = door.visit(id);
        byStaff.looked("notes read", id);
        return form(visit, new Form(new MultivaluedHashMap<>()), new Mistakes());
    }

    @POST
    public Response keep(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        Visit visit = door.visit(id);
        var form = new Form(posted);
        var mistakes = new Mistakes();
        Optional<LookUps.Body> body = reading.read(form, mistakes);
        if (body.isEmpty()) {
            return FormAgain.with(form(visit, form, mistakes));
        }
        lookUps.keep(form.one("submission"), body.get(), door.staff());
        return BenchDoor.go("/visits/" + visit.id);
    }

    private TemplateInstance form(Visit visit, Form form, Mistakes mistakes) {
        List<String> unknown = reading.unknown(intake.said(visit));
        String first = form.one("name").isEmpty() && unknown.size() == 1 ? unknown.get(0) : form.one("name");
        return new LookUpForm(BenchHead.of(visit, time),
            unknown.stream().map(name -> new Choice(name, name, name.equals(first))).toList(),
            fields.asked("/visits/" + visit.id + "/look-up", form), mistakes);
    }
}
