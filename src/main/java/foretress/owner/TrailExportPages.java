package foretress.owner;

import foretress.ledger.AuditTrail;
import foretress.ledger.Ledger;
import foretress.salon.Salon;
import foretress.salon.Who;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.HttpHeaders;
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
    private final AuditTrail trail;
    private final OwnerTrail shown;
    private final OwnerWords say;
    private final Ledger ledger;
    private final Who who;

    TrailExportPages(AuditTrail trail, OwnerTrail shown, OwnerWords say, Ledger ledger, Who who) {
        this.trail = trail;
        this.shown = shown;
        this.say = say;
        this.ledger = ledger;
        this.who = who;
    }

    @GET
    @Path("trail.csv")
    public Response table(@BeanParam TrailQuery query) {
        ZoneId zone = Salon.the().zoneId();
        AuditTrail.Asked asked = asked(query, zone);
        return file("trail.csv", "text/csv; charset=utf-8", out -> {
            write(out, List.of(say.when(), say.who(), say.what(), say.about(), say.number()));
            trail.each(asked, line -> write(out, shown.cells(line, zone)));
        });
    }

    @GET
    @Path("trail.json")
    public Response chain(@BeanParam TrailQuery query) {
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
