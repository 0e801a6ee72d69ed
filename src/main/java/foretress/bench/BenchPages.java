package foretress.bench;

import foretress.ledger.Ledger;
import foretress.visit.Visit;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestHeader;
import org.jboss.resteasy.reactive.RestPath;

/** The bench of one visit: what is owed first, what runs, what can be tried, and what came of it. */
@Path("/visits/{id}/bench")
public class BenchPages {
    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record BenchPage(BenchOverview bench, String typed, Mistakes mistakes, String submission)
        implements TemplateInstance {}

    /** The part that other devices ask for again and again. */
    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record BenchLive(BenchOverview bench) implements TemplateInstance {}

    private final BenchDoor door;
    private final BenchOverviews overviews;
    private final BenchRecords tests;
    private final Ledger ledger;
    private final BenchWords say;

    BenchPages(BenchDoor door, BenchOverviews overviews, BenchRecords tests, Ledger ledger, BenchWords say) {
        this.door = door;
        this.overviews = overviews;
        this.tests = tests;
        this.ledger = ledger;
        this.say = say;
    }

    @GET
    public TemplateInstance show(@RestPath UUID id) {
        Visit visit = door.visit(id);
        ledger.read(door.staff().toString(), "bench read", id.toString());
        return page(visit, "", new Mistakes());
    }

    @GET
    @Path("/live")
    public TemplateInstance live(@RestPath UUID id, @RestHeader("X-Version") Optional<String> known) {
        Visit visit = door.visit(id);
        ledger.read(door.staff().toString(), "bench read", id.toString());
        return new BenchLive(overviews.of(visit, known.orElse("")));
    }

    /** The longest hair as staff measured it: it outranks what the client said. */
    @POST
    @Path("/hair-length")
    public Response measure(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        Visit visit = door.ahead(id);
        OptionalDouble cm = BenchNumber.read(form.one("cm"));
        var mistakes = new Mistakes();
        boolean possible = cm.isPresent() && Math.round(cm.getAsDouble()) >= BenchLengthBody.SHORTEST
            && cm.getAsDouble() <= BenchLengthBody.LONGEST;
        if (!mistakes.expect(possible, "cm",
            say.length_wrong(form.one("cm"), BenchLengthBody.SHORTEST, BenchLengthBody.LONGEST))) {
            return FormAgain.with(page(visit, form.one("cm"), mistakes));
        }
        tests.make(visit.id, BenchKind.LENGTH, form.one("submission"),
            new BenchLengthBody((int) Math.round(cm.getAsDouble())), door.staff());
        return BenchDoor.go(BenchDoor.at(visit));
    }

    private TemplateInstance page(Visit visit, String typed, Mistakes mistakes) {
        return new BenchPage(overviews.of(visit), typed, mistakes, UUID.randomUUID().toString());
    }
}
