package foretress.salon;

import foretress.running.AuditEvent;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import foretress.web.PublicAddress;
import foretress.web.StaffWords;
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
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The owner's list of who works here: take somebody on, hand out a code for a first or new password, say goodbye. */
@Path("/staff")
@Produces(MediaType.TEXT_HTML)
@Consumes(MediaType.APPLICATION_FORM_URLENCODED)
public class StaffPages {
    /** @param handedOut who got a link just now, and the link; shown this once */
    @CheckedTemplate(basePath = "salon", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record StaffPage(List<Staff> staff, Staff self, Form form, List<Role> roles, Handed handedOut, Mistakes mistakes)
        implements TemplateInstance {}

    record Handed(String name, String link) {}

    private final Who who;
    private final StaffForm staffForm;
    private final PublicAddress address;
    private final StaffWords words;
    private final Event<AuditEvent> happened;
    private final Clock clock;

    StaffPages(Who who, StaffForm staffForm, PublicAddress address, StaffWords words, Event<AuditEvent> happened,
        Clock clock) {
        this.who = who;
        this.staffForm = staffForm;
        this.address = address;
        this.words = words;
        this.happened = happened;
        this.clock = clock;
    }

    @GET
    public TemplateInstance list() {
        return page(new Form(new MultivaluedHashMap<>()), null, new Mistakes());
    }

    @POST
    public Response add(MultivaluedMap<String, String> fields) {
        var form = new Form(fields);
        var mistakes = new Mistakes();
        staffForm.check(form, mistakes);
        Optional<Role> role = role(form);
        mistakes.expect(role.isPresent(), "role", words.staff_role_missing());
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(form, null, mistakes));
        }
        Handed handed = QuarkusTransaction.requiringNew().call(() -> takeOn(form, role.orElseThrow()));
        return Response.status(Response.Status.CREATED)
            .entity(page(new Form(new MultivaluedHashMap<>()), handed, new Mistakes())).build();
    }

    private static Optional<Role> role(Form form) {
        return Arrays.stream(Role.values()).filter(role -> role.name().equals(form.one("role"))).findFirst();
    }

    private Handed takeOn(Form form, Role role) {
        var staff = new Staff(form.one("own-name"), form.one("login"), role, clock.instant());
        staff.persist();
        note("took on", staff);
        return handOut(staff);
    }

    private Handed handOut(Staff staff) {
        return new Handed(staff.name, address.link("/set-up/" + SetUpCode.forStaff(staff, clock.instant())));
    }

    /** A new link; the password so far is void at once, and so is every session. */
    @POST
    @Path("{id}/code")
    public Response code(@RestPath UUID id) {
        Handed handed = QuarkusTransaction.requiringNew().call(() -> {
            Staff staff = other(id);
            staff.forgetPassword();
            Session.endAllOf(staff);
            note("handed out a password link", staff);
            return handOut(staff);
        });
        return Response.status(Response.Status.CREATED)
            .entity(page(new Form(new MultivaluedHashMap<>()), handed, new Mistakes())).build();
    }

    @POST
    @Path("{id}/leave")
    public Response leave(@RestPath UUID id) {
        QuarkusTransaction.requiringNew().run(() -> {
            Staff staff = other(id);
            staff.leaves();
            Session.endAllOf(staff);
            note("disabled", staff);
        });
        return Response.seeOther(URI.create("/staff")).build();
    }

    @POST
    @Path("{id}/return")
    public Response comeBack(@RestPath UUID id) {
        QuarkusTransaction.requiringNew().run(() -> {
            Staff staff = other(id);
            staff.comesBack();
            note("enabled", staff);
        });
        return Response.seeOther(URI.create("/staff")).build();
    }

    /** Nobody shuts themselves out. */
    private Staff other(UUID id) {
        return Staff.byId(id).filter(staff -> !staff.id.equals(who.staff().id)).orElseThrow(NotFoundException::new);
    }

    private void note(String what, Staff staff) {
        happened.fire(new AuditEvent(who.staff().id.toString(), what, staff.id.toString()));
    }

    private TemplateInstance page(Form form, Handed handedOut, Mistakes mistakes) {
        return new StaffPage(Staff.all(), who.staff(), form, List.of(Role.values()), handedOut, mistakes);
    }
}
