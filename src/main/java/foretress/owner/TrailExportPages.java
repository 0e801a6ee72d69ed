package foretress.owner;

import foretress.ledger.AuditTrail;
import foretress.ledger.Ledger;
import foretress.salon.Salon;
import foretress.salon.Who;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.List;

/** The trail as a file: a table as the page shows it, with names; or JSON as the chain keeps it, from which the whole can be proved. */
@Path("/owner")
public class TrailExportPages {
    private static final String OWNER = "/owner", TABLE = "/owner/trail.csv", CHAIN = "/owner/trail.json";

    private final AuditTrail trail;
    private final OwnerTrail shown;
    private final OwnerWords say;
    private final Ledger ledger;
    private final Who who;
    private final ExportProof proof;

    TrailExportPages(AuditTrail trail, OwnerTrail shown, OwnerWords say, Ledger ledger, Who who,
        ExportProof proof) {
        this.trail = trail;
        this.shown = shown;
        this.say = say;
        this.ledger = ledger;
        this.who = who;
        this.proof = proof;
    }

    @GET
    @Path("trail.csv")
    public TemplateInstance askTable(@BeanParam TrailQuery query) {
        return ExportProof.ask(shown.address(TABLE, query), shown.address(OWNER, query));
    }

    @GET
    @Path("trail.json")
    public TemplateInstance askChain(@BeanParam TrailQuery query) {
        return ExportProof.ask(shown.address(CHAIN, query), shown.address(OWNER, query));
    }

    @POST
    @Path("trail.csv")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response table(@BeanParam TrailQuery query, MultivaluedMap<String, String> posted) {
        return proof.refusal(shown.address(TABLE, query), shown.address(OWNER, query), posted)
            .orElseGet(() -> table(query));
    }

    @POST
    @Path("trail.json")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response chain(@BeanParam TrailQuery query, MultivaluedMap<String, String> posted) {
        return proof.refusal(shown.address(CHAIN, query), shown.address(OWNER, query), posted)
            .orElseGet(() -> chain(query));
    }

    private Response table(TrailQuery query) {
        ZoneId zone = Salon.the().zoneId();
        AuditTrail.Asked asked = asked(query, zone);
        return file("trail.csv", "text/csv; charset=utf-8", out -> {
            write(out, List.of(say.when(), say.who(), say.what(), say.about(), say.number()));
            trail.each(asked, line -> write(out, shown.cells(line, zone)));
        });
    }

    private Response chain(TrailQuery query) {
        AuditTrail.Asked asked = asked(query, Salon.the().zoneId());
        return file("trail.json", "application/json", out -> trail.write(asked, out));
    }

    private AuditTrail.Asked asked(TrailQuery query, ZoneId zone) {
        ledger.note(who.staff().id.toString(), "audit trail exported", "");
        return shown.meant(query, zone);
    }

    static void write(OutputStream out, List<String> cells) {
        try {
            out.write(CsvLine.of(cells).getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Response file(String name, String type, StreamingOutput body) {
        return Response.ok(body, type)
            .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"").build();
    }
}
