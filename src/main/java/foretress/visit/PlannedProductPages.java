package foretress.visit;

import foretress.ledger.ByStaff;
import foretress.salon.ProductLine;
import foretress.salon.ProductLines;
import foretress.salon.SettingsWords;
import foretress.salon.Who;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;

/** Names the product line and darkest shade of a visit. It tells nothing about health, so the desk may do it. */
@Path("/desk/visits/{id}/product")
public class PlannedProductPages {
    private static final int LONGEST_SHADE = 100;

    @CheckedTemplate(basePath = "visit", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ProductPage(Visit visit, List<Choice> lines, String shade, Mistakes mistakes) implements TemplateInstance {}

    /** @param shades the darkest first, as the line lists them */
    public record Choice(String id, String name, String shades, boolean chosen) {}

    private final ByStaff byStaff;
    private final Visits visits;
    private final ProductLines lines;
    private final PlannedProducts planned;
    private final SettingsWords words;
    private final Who who;

    PlannedProductPages(Visits visits, ProductLines lines, PlannedProducts planned, SettingsWords words, Who who,
        ByStaff byStaff) {
        this.byStaff = byStaff;
        this.visits = visits;
        this.lines = lines;
        this.planned = planned;
        this.words = words;
        this.who = who;
    }

    @GET
    public TemplateInstance show(@RestPath String id) {
        Visit visit = found(id);
        byStaff.looked("visit read at the desk", visit.id);
        Optional<PlannedProducts.Planned> now = planned.of(visit.id);
        return page(visit, now.map(p -> p.line().lineId.toString()).orElse(""),
            now.map(PlannedProducts.Planned::shade).orElse(""), new Mistakes());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response name(@RestPath String id, MultivaluedMap<String, String> posted) {
        Visit visit = found(id);
        var form = new Form(posted);
        if (form.one("line").equals("none")) {
            planned.clear(visit.id, who.staff().id);
            return back(visit);
        }
        var mistakes = new Mistakes();
        Optional<ProductLine> line =
            BookingReader.id(form.one("line")).flatMap(lines::line).filter(one -> !one.retired);
        String shade = form.one("shade");
        mistakes.expect(line.isPresent(), "line", words.planned_line_missing());
        mistakes.expect(!shade.isEmpty() && shade.length() <= LONGEST_SHADE, "shade", words.planned_shade_missing());
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(visit, form.one("line"), shade, mistakes));
        }
        planned.name(visit.id, line.orElseThrow().lineId, shade, who.staff().id);
        return back(visit);
    }

    private TemplateInstance page(Visit visit, String line, String shade, Mistakes mistakes) {
        List<Choice> choices = lines.inUse().stream()
            .map(one -> new Choice(one.lineId.toString(), one.name, String.join(", ", one.shades()),
                one.lineId.toString().equals(line)))
            .toList();
        return new ProductPage(visit, choices, shade, mistakes);
    }

    private Visit found(String id) {
        return BookingReader.id(id).flatMap(visits::find).orElseThrow(NotFoundException::new);
    }

    private static Response back(Visit visit) {
        return Response.seeOther(URI.create("/desk/visits/" + visit.id)).build();
    }
}
