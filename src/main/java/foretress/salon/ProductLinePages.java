package foretress.salon;

import foretress.knowledge.Knowledge;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Meanwhile;
import foretress.web.Mistakes;
import foretress.web.StaffLanguage;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.persistence.PersistenceException;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The owner's product lines: added, changed, taken out of use. What an earlier test was made with stays as it was. */
@Path("/products")
@Produces(MediaType.TEXT_HTML)
public class ProductLinePages {
    @CheckedTemplate(basePath = "salon", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ProductsPage(List<Row> lines, Form form, List<Kind> kinds, Mistakes mistakes) implements TemplateInstance {}

    @CheckedTemplate(basePath = "salon", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ProductPage(ProductLine line, Form form, List<Kind> kinds, List<ProductLine> versions, Mistakes mistakes)
        implements TemplateInstance {}

    public record Row(ProductLine line, String kind) {}

    /** A chemistry by its name on the staff's screens. */
    public record Kind(String id, String name) {}

    private final ProductLines lines;
    private final ProductForm products;
    private final Meanwhile meanwhile;
    private final Knowledge knowledge;
    private final SettingsWords words;
    private final Who who;
    private final StaffLanguage staff;

    ProductLinePages(ProductLines lines, ProductForm products, Meanwhile meanwhile, Knowledge knowledge,
        SettingsWords words, Who who, StaffLanguage staff) {
        this.staff = staff;
        this.lines = lines;
        this.products = products;
        this.meanwhile = meanwhile;
        this.knowledge = knowledge;
        this.words = words;
        this.who = who;
    }

    @GET
    public TemplateInstance show() {
        return list(ProductForm.blank(), new Mistakes());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response add(MultivaluedMap<String, String> fields) {
        var form = new Form(fields);
        var mistakes = new Mistakes();
        products.check(form, mistakes);
        mistakes.expect(lines.inUse().stream().noneMatch(line -> line.name.equalsIgnoreCase(form.one("line-name"))),
            "line-name",
            words.products_name_taken(form.one("line-name")));
        if (!mistakes.isEmpty()) {
            return FormAgain.with(list(form, mistakes));
        }
        lines.add(who.staff().id, products.described(form));
        return Response.seeOther(URI.create("/products")).build();
    }

    @GET
    @Path("/{id}")
    public TemplateInstance one(@RestPath UUID id) {
        ProductLine line = found(id);
        return page(line, ProductForm.written(line), new Mistakes());
    }

    @POST
    @Path("/{id}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response change(@RestPath UUID id, MultivaluedMap<String, String> fields) {
        ProductLine line = found(id);
        var form = new Form(fields);
        var mistakes = new Mistakes();
        products.check(form, mistakes);
        Form shown = mistakes.isEmpty() ? keep(line, form, mistakes) : form;
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(line, shown, mistakes));
        }
        return Response.seeOther(URI.create("/products")).build();
    }

    /** Somebody who changed it meanwhile is not overwritten unseen. */
    private Form keep(ProductLine line, Form form, Mistakes mistakes) {
        if (meanwhile.isStale(form, ProductForm.written(line))) {
            return stale(line, form, mistakes);
        }
        try {
            lines.change(line, who.staff().id, products.described(form));
            return form;
        } catch (PersistenceException anotherWasFaster) {
            return stale(found(line.lineId), form, mistakes);
        }
    }

    private Form stale(ProductLine now, Form form, Mistakes mistakes) {
        return meanwhile.tell(form, ProductForm.written(now), "change", products::said, mistakes);
    }

    @POST
    @Path("/{id}/retire")
    public Response retire(@RestPath UUID id) {
        return turn(found(id), true);
    }

    @POST
    @Path("/{id}/return")
    public Response bringBack(@RestPath UUID id) {
        return turn(found(id), false);
    }

    private Response turn(ProductLine line, boolean retired) {
        if (line.retired != retired) {
            lines.turn(line, who.staff().id, retired);
        }
        return Response.seeOther(URI.create("/products")).build();
    }

    private ProductLine found(UUID id) {
        return lines.line(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance list(Form form, Mistakes mistakes) {
        return new ProductsPage(lines.all().stream().map(line -> new Row(line, kind(line.kind))).toList(), form,
            kinds(), mistakes);
    }

    private TemplateInstance page(ProductLine line, Form form, Mistakes mistakes) {
        return new ProductPage(line, form, kinds(), lines.versions(line.lineId), mistakes);
    }

    private List<Kind> kinds() {
        return products.kinds().stream().map(id -> new Kind(id, kind(id))).toList();
    }

    private String kind(String id) {
        return knowledge.words(staff.tag()).text("services.chemistries." + id);
    }
}
