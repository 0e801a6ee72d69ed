package foretress.consultation;

import foretress.card.Closing;
import foretress.card.Closing.Used;
import foretress.card.Closings;
import foretress.card.Decisions;
import foretress.card.KeptDecision;
import foretress.salon.ProductLines;
import foretress.salon.Who;
import foretress.visit.Booked;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.DecisionWords;
import foretress.web.Form;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The end of a visit: what was done, what was used, how the hair is. */
@Path("/visits/{id}/closing")
public class ClosingPages {
    @CheckedTemplate(basePath = "consultation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ClosingPage(DecisionText.Head head, boolean open, String over, List<Done> services, ClosingForm form, List<ClosingForm.Row> rows, List<String> lines, List<Strand> strands, Mistakes mistakes)
        implements TemplateInstance {}

    /** A service decided to go ahead. */
    public record Done(String id, String name, boolean ticked) {}

    public record Strand(String code, String label, boolean chosen) {}

    private final Visits visits;
    private final Decisions decisions;
    private final Closings closings;
    private final ProductLines lines;
    private final DecisionText text;
    private final DecisionWords say;
    private final Who who;

    ClosingPages(Visits visits, Decisions decisions, Closings closings, ProductLines lines, DecisionText text, DecisionWords say, Who who) {
        this.visits = visits;
        this.decisions = decisions;
        this.closings = closings;
        this.lines = lines;
        this.text = text;
        this.say = say;
        this.who = who;
    }

    @GET
    public TemplateInstance show(@RestPath UUID id) {
        return page(found(id), ClosingForm.blank(UUID.randomUUID().toString()), new Mistakes());
    }

    @POST
    public Response close(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        Visit visit = found(id);
        ClosingForm form = ClosingForm.from(new Form(posted));
        URI card = URI.create("/clients/" + visit.client.id + "/card");
        if (closings.of(id).isPresent()) {
            return Response.seeOther(card).build();
        }
        List<Booked> ahead = ahead(visit);
        Mistakes mistakes = check(visit, form, ahead);
        if (!mistakes.isEmpty()) {
            return Response.status(422).entity(page(visit, form, mistakes)).build();
        }
        closings.close(id, who.staff(), UUID.fromString(form.submission()), form.closing(ahead));
        return Response.seeOther(card).build();
    }

    private Mistakes check(Visit visit, ClosingForm form, List<Booked> ahead) {
        Mistakes mistakes = new Mistakes();
        mistakes.expect(visit.state == State.DECIDED && DecisionForm.uuid(form.submission()).isPresent(), "done", say.close_not_decided());
        mistakes.expect(ahead.stream().map(Booked::serviceId).toList().containsAll(form.done()), "done", say.close_done_none());
        if (!form.done().isEmpty()) {
            mistakes.expect(!form.products().isEmpty(), "product-0", say.close_products_missing());
            mistakes.expect(Closing.STRAND_TESTS.contains(form.strandTest()), "strand", say.close_strand_missing());
            mistakes.expect(!form.condition().isBlank(), "condition", say.close_condition_missing());
        }
        for (int i = 0; i < form.used().size(); i++) {
            product(form.used().get(i), i, mistakes);
        }
        mistakes.expect(form.condition().length() <= ClosingForm.LONGEST_NOTE, "condition", say.close_too_long(say.close_condition(), ClosingForm.LONGEST_NOTE));
        mistakes.expect(form.notes().length() <= ClosingForm.LONGEST_NOTE, "notes", say.close_too_long(say.close_note(), ClosingForm.LONGEST_NOTE));
        return mistakes;
    }

    private void product(Used one, int number, Mistakes mistakes) {
        mistakes.expect(one.minutes().isEmpty() || one.minutes().matches("[1-9]\\d{0,2}") && Integer.parseInt(one.minutes()) <= 240, "minutes-" + number,
            say.close_minutes_wrong(one.minutes()));
        mistakes.expect(one.blank() || !one.product().isBlank(), "product-" + number, say.close_product_missing());
        boolean fits = List.of(one.product(), one.shade(), one.batch(), one.strength()).stream().allMatch(t -> t.length() <= ClosingForm.LONGEST_FIELD);
        mistakes.expect(fits, "product-" + number, say.close_too_long(say.close_product_number(number + 1), ClosingForm.LONGEST_FIELD));
    }

    private TemplateInstance page(Visit visit, ClosingForm form, Mistakes mistakes) {
        String over = visit.state == State.DECIDED ? "" : visit.state.isAhead() ? say.close_not_decided() : say.visit_over();
        List<String> names = lines.inUse().stream().map(line -> line.name).toList();
        List<Done> services = ahead(visit).stream().map(b -> new Done(b.serviceId(), text.service(b.serviceId()), form.isDone(b.serviceId()))).toList();
        return new ClosingPage(text.head(visit), over.isEmpty(), over, services, form, form.rows(names), names, strands(form), mistakes);
    }

    private List<Strand> strands(ClosingForm form) {
        return Closing.STRAND_TESTS.stream().map(code -> new Strand(code, strand(code), form.strandTest().equals(code))).toList();
    }

    private String strand(String code) {
        return switch (code) {
            case "good" -> say.close_strand_good();
            case "stopped" -> say.close_strand_stopped();
            case "poor" -> say.close_strand_poor();
            default -> say.close_strand_not_done();
        };
    }

    /** What was decided to go ahead, with its steps. */
    private List<Booked> ahead(Visit visit) {
        Optional<KeptDecision.Body> body = decisions.latest(visit.id).map(decisions::read);
        return body.stream().flatMap(b -> b.services().stream()).filter(s -> s.verdict().goesAhead()).map(s -> new Booked(s.serviceId(), s.stepIds())).toList();
    }

    private Visit found(UUID id) {
        return visits.find(id).orElseThrow(NotFoundException::new);
    }
}
