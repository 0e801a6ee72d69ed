package foretress.visit;

import foretress.assessment.Service;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.ledger.ByStaff;
import foretress.salon.House;
import foretress.salon.Menu;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import foretress.web.SpokenLanguages;
import foretress.web.StaffLanguage;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.persistence.PersistenceException;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestQuery;

/** The desk books: find the client or add one, then what, when and with whom. */
@Path("/desk/new-visit")
public class NewVisitPages {
    @CheckedTemplate(basePath = "visit", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record NewVisit(BookingForm form, Optional<Client> client, List<Offer> offers, List<Staff> stylists,
        List<MonthChoice> months, List<TongueChoice> tongues, boolean twice, Optional<Foreseen.Told> foreseen,
        Mistakes mistakes)
        implements TemplateInstance {}

    /** A service as the form offers it. */
    public record Offer(String id, String name, boolean chosen, boolean hasToner, boolean without) {}

    private final ByStaff byStaff;
    private final BookingReader reader;
    private final Bookings bookings;
    private final Clients clients;
    private final Visits visits;
    private final Knowledge knowledge;
    private final House house;
    private final Menu menu;
    private final WalkIn walkIn;
    private final Foreseen foreseen;
    private final SpokenLanguages spoken;
    private final StaffLanguage staff;

    NewVisitPages(BookingReader reader, Bookings bookings, Clients clients, Visits visits, Knowledge knowledge,
        House house,
        Menu menu, WalkIn walkIn, Foreseen foreseen, SpokenLanguages spoken, StaffLanguage staff, ByStaff byStaff) {
        this.byStaff = byStaff;
        this.staff = staff;
        this.spoken = spoken;
        this.reader = reader;
        this.bookings = bookings;
        this.clients = clients;
        this.visits = visits;
        this.knowledge = knowledge;
        this.house = house;
        this.menu = menu;
        this.walkIn = walkIn;
        this.foreseen = foreseen;
    }

    @GET
    public TemplateInstance blank(@RestQuery Optional<String> client) {
        Optional<Client> known = client.flatMap(BookingReader::id).flatMap(clients::find);
        known.ifPresent(one -> byStaff.looked("client's particulars read", one.id));
        BookingForm form = BookingForm.blank(UUID.randomUUID().toString(), known.map(c -> c.id.toString()).orElse(""),
            house.getLanguages().get(0));
        return page(form, false, Optional.empty(), new Mistakes());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response book(MultivaluedMap<String, String> posted) {
        BookingForm form = BookingForm.from(new Form(posted));
        if (BookingReader.id(form.submission()).isEmpty()) {
            throw new BadRequestException("a form without its name");
        }
        BookingReader.Read read = reader.read(form);
        if (new Form(posted).is("act", "look")) {
            return Response.ok(page(form, read.slot().twice(), foreseen(form, read), new Mistakes())).build();
        }
        if (!read.mistakes().isEmpty()) {
            return FormAgain.with(page(form, read.slot().twice(), foreseen(form, read), read.mistakes()));
        }
        UUID visit = keep(form, read);
        return new Form(posted).one("then").equals("tablet") ? handed(visit, read) : booked(visit);
    }

    /** A client who is new gave the birth date to whoever is booking. */
    private Response handed(UUID id, BookingReader.Read read) {
        boolean asked = read.person().flatMap(Clients.Person::birthDate).isPresent();
        Visit visit = visits.find(id).orElseThrow();
        return visit.state.takesAnswers() || visit.state == State.BOOKED ? walkIn.handTablet(visit, asked) : booked(id);
    }

    /** The same form may arrive twice at the same moment; the slower one finds what the faster one made. */
    private UUID keep(BookingForm form, BookingReader.Read read) {
        try {
            return bookings.keep(form, read);
        } catch (PersistenceException | IllegalStateException perhapsTheOther) {
            return visits.bySubmission(form.submission()).orElseThrow(() -> perhapsTheOther).id;
        }
    }

    private static Response booked(UUID visit) {
        return Response.seeOther(URI.create("/desk/visits/" + visit)).build();
    }

    private Optional<Foreseen.Told> foreseen(BookingForm form, BookingReader.Read read) {
        return foreseen.of(read, BookingReader.id(form.clientId()).flatMap(clients::find), Salon.the().zoneId());
    }

    private TemplateInstance page(BookingForm form, boolean twice, Optional<Foreseen.Told> foreseen,
        Mistakes mistakes) {
        Optional<Client> client = BookingReader.id(form.clientId()).flatMap(clients::find);
        return new NewVisit(form, client, offers(form), Staff.stylists(),
            MonthChoice.all(form.person().birthMonth(), staff.locale()),
            TongueChoice.of(spoken, form.person().language(), staff.locale()), twice, foreseen, mistakes);
    }

    private List<Offer> offers(BookingForm form) {
        Words words = knowledge.words(staff.tag());
        return menu.offered().stream().map(service -> offer(service, words, form)).toList();
    }

    private Offer offer(Service service, Words words, BookingForm form) {
        return new Offer(service.id(), menu.name(service.id(), words), form.hasService(service.id()),
            BookingForm.hasToner(service), form.isWithout(service.id()));
    }
}
