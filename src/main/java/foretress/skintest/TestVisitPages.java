package foretress.skintest;

import foretress.ledger.ByStaff;
import foretress.plan.Offers;
import foretress.plan.Owed;
import foretress.salon.Who;
import foretress.visit.Moments;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.visit.When;
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
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** The desk, or the stylist, books the short visit before the service. It says when, and that it is due; never why. */
@Path("/desk/visits/{id}/test-visit")
public class TestVisitPages {
    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record TestVisitPage(String id, String client, String starts, String booked, boolean answered, boolean needed,
        boolean refused, String conflict, List<Day> days, String said,
        boolean mailable, Mistakes mistakes) implements TemplateInstance {}

    public record Day(String name, List<Moment> moments) {}

    public record Moment(String value, String hour, String hint, boolean chosen) {}

    private final ByStaff byStaff;
    private final Visits visits;
    private final TestMails letters;
    private final TestVisits testVisits;
    private final SkinWords say;
    private final Who who;
    private final Moments moments;

    TestVisitPages(Visits visits, TestMails letters, TestVisits testVisits, SkinWords say, Who who, Moments moments,
        ByStaff byStaff) {
        this.byStaff = byStaff;
        this.moments = moments;
        this.letters = letters;
        this.visits = visits;
        this.testVisits = testVisits;
        this.say = say;
        this.who = who;
    }

    @GET
    public TemplateInstance show(@RestPath String id, @RestQuery Optional<String> said) {
        Visit visit = found(id);
        byStaff.looked("visit read at the desk", visit.id);
        return page(visit, said.orElse(""), new Mistakes());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response book(@RestPath String id, MultivaluedMap<String, String> posted) {
        Visit visit = found(id);
        var mistakes = new Mistakes();
        Optional<Instant> start = moment(new Form(posted).one("start"));
        mistakes.expect(start.isPresent(), "start", say.visit_choose());
        if (mistakes.isEmpty()) {
            mistakes.expect(testVisits.book(visit.id, start.orElseThrow(), who.staff().id), "start", say.visit_gone());
        }
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(visit, "", mistakes));
        }
        return back(visit, "booked");
    }

    @POST
    @Path("/cancel")
    public Response cancel(@RestPath String id) {
        Visit visit = found(id);
        testVisits.cancel(visit.id, who.staff().id);
        return back(visit, "cancelled");
    }

    private TemplateInstance page(Visit visit, String said, Mistakes mistakes) {
        When when = moments.in(visit.zone());
        TestVisits.Offered offered = testVisits.offered(visit);
        Optional<Instant> booked = TestVisit.standing(visit.id).map(one -> one.startsAt());
        String conflict = offered.conflict().map(found -> conflict(found, when)).orElse("");
        return new TestVisitPage(visit.id.toString(), visit.client.fullName(), when.moment(visit.startsAt),
            booked.map(when::moment).orElse(""),
            offered.answered(), offered.needed(), offered.refused(), conflict,
            days(offered.offers().slots(), when, booked), said, letters.reaches(visit), mistakes);
    }

    /** Why it cannot be, and from when on a visit could. */
    private String conflict(Owed owed, When when) {
        Owed.Conflict found = owed.conflict().orElseThrow();
        String why = switch (found.reason()) {
            case TOO_SOON -> say.visit_conflict((int) found.visitIn().toHours(), (int) found.needs().toHours());
            case CLOSED_UNTIL_TOO_LATE, CLOSED_AT_THE_READING ->
                say.visit_conflict_closed((int) found.needs().toHours());
            case STANDS_TOO_SHORT -> say.visit_conflict_short((int) found.needs().toHours());
            case TOO_YOUNG -> say.visit_conflict_young();
        };
        return owed.visitFrom().map(from -> why + " " + say.visit_from(when.moment(from))).orElse(why);
    }

    private List<Day> days(List<Offers.Slot> slots, When when, Optional<Instant> booked) {
        List<Day> days = new ArrayList<>();
        for (Offers.Slot slot : slots) {
            String name = when.day(slot.start().atZone(when.zone()).toLocalDate());
            if (days.isEmpty() || !days.get(days.size() - 1).name().equals(name)) {
                days.add(new Day(name, new ArrayList<>()));
            }
            days.get(days.size() - 1).moments()
                .add(new Moment(slot.start().toString(), when.hour(slot.start()), hint(slot),
                    booked.filter(slot.start()::equals).isPresent()));
        }
        return days;
    }

    /** What stands under a moment that leaves nothing to spare. */
    private String hint(Offers.Slot slot) {
        if (slot.tight()) {
            return slot.latest() ? say.visit_latest_tight() : say.visit_tight();
        }
        return slot.latest() ? say.visit_latest() : "";
    }

    private static Optional<Instant> moment(String posted) {
        try {
            return Optional.of(Instant.parse(posted));
        } catch (DateTimeException notOne) {
            return Optional.empty();
        }
    }

    private Visit found(String id) {
        return FormIds.of(id).flatMap(visits::find).orElseThrow(NotFoundException::new);
    }

    private static Response back(Visit visit, String said) {
        return Response.seeOther(URI.create("/desk/visits/" + visit.id + "/test-visit?said=" + said)).build();
    }
}
