package foretress.owner;

import foretress.ledger.AuditTrail;
import foretress.ledger.Ledger;
import foretress.salon.Salon;
import foretress.salon.Who;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** After a breach: which records whom touched between two moments, as a list and as a file for the notice to the authority. */
@Path("/owner")
public class BreachPages {
    private static final int SHOWN = 200;
    private static final String LIST = "/owner/breach", TABLE = "/owner/breach.csv";

    /** @param client blank for what is about nobody, or no longer on file */
    record Line(String actor, String client, long times, String first, String last) {}

    /** @param records how many this one touched */
    record Sum(String actor, long records, long clients, long times) {}

    @CheckedTemplate(basePath = "owner", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record BreachPage(OwnerTrail.Asked asked, boolean answered, List<Sum> sums, List<Line> lines, int more, String csv)
        implements TemplateInstance {}

    private final AuditTrail trail;
    private final TrailNames names;
    private final OwnerTrail shown;
    private final TrailWords say;
    private final Ledger ledger;
    private final Who who;
    private final ExportProof proof;

    BreachPages(AuditTrail trail, TrailNames names, OwnerTrail shown, TrailWords say, Ledger ledger, Who who,
        ExportProof proof) {
        this.trail = trail;
        this.names = names;
        this.shown = shown;
        this.say = say;
        this.ledger = ledger;
        this.who = who;
        this.proof = proof;
    }

    @GET
    @Path("breach")
    public TemplateInstance show(@BeanParam TrailQuery query) {
        ZoneId zone = Salon.the().zoneId();
        ledger.note(who.staff().id.toString(), "breach list read", "");
        Optional<List<AuditTrail.Touched>> touched = touched(query, zone);
        List<AuditTrail.Touched> all = touched.orElse(List.of());
        return new BreachPage(shown.asked(query), touched.isPresent(), sums(all),
            all.stream().limit(SHOWN).map(one -> line(one, zone)).toList(), Math.max(0, all.size() - SHOWN),
            shown.address(TABLE, query));
    }

    @GET
    @Path("breach.csv")
    public TemplateInstance askTable(@BeanParam TrailQuery query) {
        return ExportProof.ask(shown.address(TABLE, query), shown.address(LIST, query));
    }

    @POST
    @Path("breach.csv")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response table(@BeanParam TrailQuery query, MultivaluedMap<String, String> posted) {
        return proof.refusal(shown.address(TABLE, query), shown.address(LIST, query), posted)
            .orElseGet(() -> table(query));
    }

    private Response table(TrailQuery query) {
        ZoneId zone = Salon.the().zoneId();
        ledger.note(who.staff().id.toString(), "breach list exported", "");
        List<AuditTrail.Touched> all = touched(query, zone).orElse(List.of());
        return TrailExportPages.file("breach.csv", "text/csv; charset=utf-8", out -> {
            TrailExportPages.write(out,
                List.of(say.breach_who(), say.breach_client(), say.breach_record(), say.breach_times(),
                    say.breach_first(), say.breach_last()));
            all.forEach(one -> TrailExportPages.write(out, cells(one, zone)));
        });
    }

    private List<String> cells(AuditTrail.Touched one, ZoneId zone) {
        Line line = line(one, zone);
        return List.of(line.actor(), line.client(), one.subject(), Long.toString(line.times()), line.first(),
            line.last());
    }

    private Optional<List<AuditTrail.Touched>> touched(TrailQuery query, ZoneId zone) {
        Optional<Instant> end = query.end(zone);
        return query.first(zone).filter(from -> end.isPresent()).map(from -> trail.touched(from, end.orElseThrow()));
    }

    private Line line(AuditTrail.Touched one, ZoneId zone) {
        return new Line(names.actor(one.actor()), names.record(one.subject()).name(), one.times(),
            one.first().atZone(zone).format(OwnerTrail.MOMENT), one.last().atZone(zone).format(OwnerTrail.MOMENT));
    }

    private List<Sum> sums(List<AuditTrail.Touched> all) {
        Map<String, List<AuditTrail.Touched>> by = new LinkedHashMap<>();
        all.forEach(one -> by.computeIfAbsent(one.actor(), any -> new ArrayList<>()).add(one));
        return by.entrySet().stream().map(e -> new Sum(names.actor(e.getKey()),
            e.getValue().stream().filter(one -> !one.subject().isEmpty()).count(),
            e.getValue().stream().map(one -> names.record(one.subject()).id()).filter(id -> !id.isEmpty()).distinct()
                .count(),
            e.getValue().stream().mapToLong(AuditTrail.Touched::times).sum())).toList();
    }
}
