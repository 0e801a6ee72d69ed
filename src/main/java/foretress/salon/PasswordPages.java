package foretress.salon;

import foretress.running.AuditEvent;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import foretress.web.Offered;
import foretress.web.RateLimiter;
import foretress.web.StaffLanguage;
import foretress.web.StaffWords;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.event.Event;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.stream.Stream;

/** One's own password, changed; every other device has to sign in again. */
@Path("/password")
@Produces(MediaType.TEXT_HTML)
public class PasswordPages {
    @CheckedTemplate(basePath = "salon", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record PasswordPage(int shortest, List<Offered> languages, Mistakes mistakes) implements TemplateInstance {}

    private final Who who;
    private final ProveAgain proveAgain;
    private final NewPassword newPassword;
    private final Sessions sessions;
    private final StaffWords words;
    private final Event<AuditEvent> happened;

    PasswordPages(Who who, ProveAgain proveAgain, NewPassword newPassword, Sessions sessions, StaffWords words,
        Event<AuditEvent> happened) {
        this.who = who;
        this.proveAgain = proveAgain;
        this.newPassword = newPassword;
        this.sessions = sessions;
        this.words = words;
        this.happened = happened;
    }

    @GET
    public TemplateInstance show() {
        return page(new Mistakes());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response change(MultivaluedMap<String, String> fields) {
        var form = new Form(fields);
        Mistakes mistakes = check(form);
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(mistakes));
        }
        Staff staff = QuarkusTransaction.requiringNew().call(() -> give(form));
        return Response.seeOther(URI.create("/password")).cookie(sessions.begin(staff)).build();
    }

    private TemplateInstance page(Mistakes mistakes) {
        return new PasswordPage(PasswordRule.SHORTEST, Offered.of(StaffLanguage.TAGS, who.staff().language), mistakes);
    }

    private Mistakes check(Form form) {
        var mistakes = new Mistakes();
        newPassword.check(form, known(who.staff()), mistakes);
        if (mistakes.isEmpty()) {
            prove(form.exact("current"), mistakes);
        }
        return mistakes;
    }

    private void prove(String current, Mistakes mistakes) {
        ProveAgain.Outcome proof = proveAgain.with(who.staff(), current);
        proof.pause().ifPresent(wait -> { throw RateLimiter.tooOften(wait); });
        mistakes.expect(proof.proved(), "current", words.password_current_wrong());
    }

    private static List<String> known(Staff staff) {
        return Stream
            .concat(Stream.of(staff.name, staff.login), Salon.found().stream().flatMap(s -> Stream.of(s.name, s.town)))
            .toList();
    }

    private Staff give(Form form) {
        Staff staff = Staff.byId(who.staff().id).orElseThrow();
        newPassword.give(staff, form);
        Session.endAllOf(staff);
        happened.fire(new AuditEvent(staff.id.toString(), "changed the password", staff.id.toString()));
        return staff;
    }
}
