package foretress.salon;

import foretress.running.AuditEvent;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Language;
import foretress.web.Mistakes;
import foretress.web.Offered;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.event.Event;
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
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestPath;

/** Behind a one-use code: the owner sets up the salon; anybody else chooses a first password. */
@Path("/set-up/{code}")
@Produces(MediaType.TEXT_HTML)
public class SetUpPages {
    @CheckedTemplate(basePath = "salon", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record SetUpPage(Form form, List<String> zones, List<Offered> languages, List<DayField> days,
        int shortest, Mistakes mistakes) implements TemplateInstance {}

    @CheckedTemplate(basePath = "salon", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record FirstPasswordPage(Staff staff, int shortest, Mistakes mistakes) implements TemplateInstance {}

    private final Particulars particulars;
    private final StaffForm staffForm;
    private final NewPassword newPassword;
    private final Sessions sessions;
    private final Language language;
    private final Event<AuditEvent> happened;
    private final Clock clock;

    SetUpPages(Particulars particulars, StaffForm staffForm, NewPassword newPassword, Sessions sessions,
        Language language,
        Event<AuditEvent> happened, Clock clock) {
        this.particulars = particulars;
        this.staffForm = staffForm;
        this.newPassword = newPassword;
        this.sessions = sessions;
        this.language = language;
        this.happened = happened;
        this.clock = clock;
    }

    /** Looking does not use the code up: mail and chat programs look at links before people do. */
    @GET
    public TemplateInstance show(@RestPath String code) {
        language.use("en");
        return page(found(code), new Form(new MultivaluedHashMap<>()), new Mistakes());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response keep(@RestPath String code, MultivaluedMap<String, String> fields) {
        language.use("en");
        var form = new Form(fields);
        SetUpCode found = found(code);
        Mistakes mistakes = check(found, form);
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(found, form, mistakes));
        }
        Staff staff = QuarkusTransaction.requiringNew().call(() -> use(code, form));
        return Response.seeOther(URI.create(staff.role == Role.STYLIST ? "/day" : "/desk"))
            .cookie(sessions.begin(staff)).build();
    }

    private SetUpCode found(String code) {
        return SetUpCode.find(code, clock.instant()).orElseThrow(NotFoundException::new);
    }

    private Mistakes check(SetUpCode found, Form form) {
        var mistakes = new Mistakes();
        if (found.staff().isEmpty()) {
            particulars.check(form, mistakes);
            staffForm.check(form, mistakes);
        }
        newPassword.check(form, known(found.staff(), form), mistakes);
        return mistakes;
    }

    /** What anybody could guess here must not make up the password. */
    private static List<String> known(Optional<Staff> staff, Form form) {
        Stream<String> typed = Stream.of("name", "town", "own-name", "login").map(form::one);
        Stream<String> stored = Stream.concat(Salon.found().stream().flatMap(s -> Stream.of(s.name, s.town)),
            staff.stream().flatMap(s -> Stream.of(s.name, s.login)));
        return Stream.concat(typed, stored).filter(word -> !word.isEmpty()).toList();
    }

    /** In one transaction the code goes and what it was for is there; of two at once only one finds it. */
    private Staff use(String code, Form form) {
        SetUpCode row = found(code);
        if (SetUpCode.delete("id", row.id) != 1) {
            throw new NotFoundException();
        }
        Staff staff = row.staff().orElseGet(() -> owner(form));
        newPassword.give(staff, form);
        happened.fire(new AuditEvent(staff.id.toString(), "chose a first password", staff.id.toString()));
        return staff;
    }

    private Staff owner(Form form) {
        if (Staff.count("role", Role.OWNER) > 0) {
            throw new NotFoundException();
        }
        new Salon(particulars.contact(form), particulars.custom(form)).persist();
        var owner = new Staff(form.one("own-name"), form.one("login"), Role.OWNER, clock.instant());
        owner.persist();
        happened.fire(new AuditEvent(owner.id.toString(), "set up the salon", ""));
        return owner;
    }

    private TemplateInstance page(SetUpCode found, Form form, Mistakes mistakes) {
        return found.staff()
            .<TemplateInstance>map(staff -> new FirstPasswordPage(staff, PasswordRule.SHORTEST, mistakes))
            .orElseGet(() -> new SetUpPage(form, Particulars.zones(), Offered.all("en"), particulars.days(form),
                PasswordRule.SHORTEST, mistakes));
    }
}
