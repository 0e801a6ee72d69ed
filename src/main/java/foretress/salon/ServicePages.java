package foretress.salon;

import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import foretress.web.Offered;
import foretress.web.StaffLanguage;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;

/** What the salon offers, for the owner: a service is made of known steps, without writing a rule. */
@Path("/services")
@Produces(MediaType.TEXT_HTML)
public class ServicePages {
    private static final int LONGEST_NAME = 100;

    @CheckedTemplate(basePath = "salon", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ServicesPage(List<Row> rows, List<Choice> steps, List<Name> names, Form form, Mistakes mistakes)
        implements TemplateInstance {}

    public record Row(String id, String name, String steps, boolean own, boolean retired) {}

    /** A step to choose, with the chemistry it brings. */
    public record Choice(String id, String name, String chemistry, boolean chosen) {}

    /** The service's name in one of the salon's languages. */
    public record Name(String field, String language, String tag, String value, boolean needed) {}

    private final Menu menu;
    private final Knowledge knowledge;
    private final SettingsWords say;
    private final Who who;
    private final StaffLanguage staff;

    ServicePages(Menu menu, Knowledge knowledge, SettingsWords say, Who who, StaffLanguage staff) {
        this.staff = staff;
        this.menu = menu;
        this.knowledge = knowledge;
        this.say = say;
        this.who = who;
    }

    @GET
    public TemplateInstance show() {
        return page(new Form(new MultivaluedHashMap<>()), new Mistakes());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response add(MultivaluedMap<String, String> fields) {
        var form = new Form(fields);
        var mistakes = new Mistakes();
        check(form, mistakes);
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(form, mistakes));
        }
        menu.add(form.all("step"), named(form), who.staff().id.toString());
        return Response.seeOther(URI.create("/services")).build();
    }

    private void check(Form form, Mistakes mistakes) {
        List<String> tags = Salon.the().languageTags();
        for (String tag : tags) {
            String name = form.one("name-" + tag);
            boolean fits = name.length() <= LONGEST_NAME && (!name.isEmpty() || !tag.equals(tags.get(0)));
            if (mistakes.expect(fits, "name-" + tag, say.services_name_missing()) && !name.isEmpty()) {
                mistakes.expect(!menu.isTaken(name, tags), "name-" + tag, say.services_name_taken(name));
            }
        }
        boolean known = form.all("step").stream().allMatch(step -> knowledge.ruleSet().step(step).isPresent());
        mistakes.expect(known && !form.all("step").isEmpty(), "steps", say.services_steps_missing());
    }

    private static Map<String, String> named(Form form) {
        Map<String, String> names = new LinkedHashMap<>();
        Salon.the().languageTags().stream().filter(tag -> !form.one("name-" + tag).isEmpty())
            .forEach(tag -> names.put(tag, form.one("name-" + tag)));
        return names;
    }

    @POST
    @Path("/{id}/retire")
    public Response retire(@RestPath String id) {
        return turn(id, true);
    }

    @POST
    @Path("/{id}/return")
    public Response bringBack(@RestPath String id) {
        return turn(id, false);
    }

    private Response turn(String id, boolean retired) {
        if (!menu.turn(id, retired, who.staff().id.toString())) {
            throw new NotFoundException();
        }
        return Response.seeOther(URI.create("/services")).build();
    }

    private TemplateInstance page(Form form, Mistakes mistakes) {
        Words words = knowledge.words(staff.tag());
        List<Row> rows = menu.all().stream()
            .map(line -> new Row(line.service().id(), menu.name(line.service().id(), words),
                line.service().stepIds().stream().map(words::step).collect(Collectors.joining(", ")), line.own(),
                line.retired()))
            .toList();
        return new ServicesPage(rows, steps(form, words), names(form), form, mistakes);
    }

    private List<Choice> steps(Form form, Words words) {
        return knowledge.ruleSet().steps().stream().map(step -> new Choice(step.id(), words.step(step.id()),
            step.uses().stream().sorted().map(use -> words.text("services.chemistries." + use))
                .collect(Collectors.joining(", ")),
            form.is("step", step.id()))).toList();
    }

    private static List<Name> names(Form form) {
        List<String> tags = Salon.the().languageTags();
        return Offered.all("en").stream().filter(one -> tags.contains(one.tag()))
            .map(one -> new Name("name-" + one.tag(), one.name(), one.tag(), form.one("name-" + one.tag()),
                one.tag().equals(tags.get(0))))
            .toList();
    }
}
