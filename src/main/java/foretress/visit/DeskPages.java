package foretress.visit;

import foretress.ledger.ByStaff;
import foretress.salon.Who;
import foretress.web.Form;
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
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** The desk's list: coming visits, what must be done before them, promises to keep. */
@Path("/desk")
public class DeskPages {
    private static final int DAYS = 14;

    @CheckedTemplate(basePath = "visit", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record Desk(List<DeskList.Day> days, List<DeskList.Owed> owed, List<DeskList.Promise> promises, int visits,
        int unanswered, String earlier, String later, boolean fromToday, String first, String said)
        implements TemplateInstance {}

    private final ByStaff byStaff;
    private final DeskList list;
    private final Tasks tasks;
    private final Who who;

    DeskPages(DeskList list, Tasks tasks, Who who, ByStaff byStaff) {
        this.byStaff = byStaff;
        this.list = list;
        this.tasks = tasks;
        this.who = who;
    }

    @GET
    public TemplateInstance coming(@RestQuery Optional<String> from, @RestQuery Optional<String> said) {
        byStaff.looked("desk's list read");
        LocalDate today = list.today();
        LocalDate first = from.flatMap(DeskPages::day).orElse(today);
        List<DeskList.Day> days = list.days(first, DAYS);
        return new Desk(days, list.owed(), list.promises(), count(days, false), count(days, true),
            "/desk?from=" + first.minusDays(DAYS), "/desk?from=" + first.plusDays(DAYS), first.equals(today),
            list.when().day(first), said.orElse(""));
    }

    private static int count(List<DeskList.Day> days, boolean unansweredOnly) {
        return (int) days.stream().flatMap(day -> day.rows().stream())
            .filter(row -> !unansweredOnly || row.isUnanswered()).count();
    }

    /** Years that a calendar can show; anything else is today. */
    private static Optional<LocalDate> day(String typed) {
        try {
            return Optional.of(LocalDate.parse(typed)).filter(day -> day.getYear() > 1999 && day.getYear() < 2200);
        } catch (DateTimeParseException notADay) {
            return Optional.empty();
        }
    }

    @POST
    @Path("/tasks/{id}/done")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response done(@RestPath String id, MultivaluedMap<String, String> posted) {
        boolean found = BookingReader.id(id).filter(task -> tasks.acknowledge(task, who.staff().id)).isPresent();
        if (!found) {
            throw new NotFoundException();
        }
        String back = new Form(posted).one("back").equals("/day") ? "/day" : "/desk";
        return Response.seeOther(URI.create(back)).build();
    }
}
