package foretress.salon;

import foretress.web.Form;
import foretress.web.FormToken;
import foretress.web.KeptPages;
import foretress.web.Language;
import foretress.web.LocalPath;
import foretress.web.Mistakes;
import foretress.web.StaffWords;
import foretress.web.UnsentForm;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.inject.Instance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Duration;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;

/** The way in for staff, and the way out. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
public class SignInPages {
    @CheckedTemplate(basePath = "salon", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record SignInPage(String login, String to, Mistakes mistakes, Optional<UnsentForm> kept)
        implements TemplateInstance {}

    private final SignIn signIn;
    private final Sessions sessions;
    private final Devices devices;
    private final Who who;
    private final Language language;
    private final StaffWords words;
    private final Instance<GuestDoor> guests;
    private final FormToken token;
    private final KeptPages keptPages;

    SignInPages(SignIn signIn, Sessions sessions, Devices devices, Who who, Language language, StaffWords words,
        Instance<GuestDoor> guests, FormToken token,
        KeptPages keptPages) {
        this.token = token;
        this.keptPages = keptPages;
        this.signIn = signIn;
        this.sessions = sessions;
        this.devices = devices;
        this.who = who;
        this.language = language;
        this.words = words;
        this.guests = guests;
    }

    /** The bare address leads staff on to their day; a client's link never does. */
    @GET
    public Response home() {
        return see(who.known().map(SignInPages::landing).orElse("/sign-in"));
    }

    @GET
    @Path("sign-in")
    public TemplateInstance ask(@RestQuery String to) {
        language.use("en");
        return new SignInPage("", LocalPath.of(to).orElse(""), new Mistakes(), Optional.empty());
    }

    @POST
    @Path("sign-in")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response enter(MultivaluedMap<String, String> fields, @Context HttpHeaders headers) {
        language.use("en");
        var form = new Form(fields);
        SignIn.Outcome outcome = signIn.attempt(form.one("login"), form.exact("password"), headers.getCookies());
        if (outcome.pause().isPresent()) {
            return wait(form, outcome.pause().get());
        }
        return outcome.staff().map(staff -> welcome(staff, form, headers)).orElseGet(() -> again(form));
    }

    private Response welcome(Staff staff, Form form, HttpHeaders headers) {
        Optional<UnsentForm> kept = UnsentForm.carriedBy(form);
        NewCookie cookie = sessions.begin(staff, who);
        Response.ResponseBuilder response =
            kept.map(words -> sendAgain(words, staff)).orElseGet(() -> onward(form, staff)).cookie(cookie,
                devices.remember(headers.getCookies(), staff));
        guests.stream().flatMap(door -> door.staffCameBack(headers.getCookies()).stream()).forEach(response::cookie);
        return response.build();
    }

    private static Response.ResponseBuilder onward(Form form, Staff staff) {
        return Response.seeOther(URI.create(LocalPath.of(form.one("to")).orElse(landing(staff))));
    }

    /** What was typed before the session ran out was carried along, and is one press from where it was meant to go. */
    private Response.ResponseBuilder sendAgain(UnsentForm kept, Staff staff) {
        who.session().map(FormProof::signedIn).ifPresent(token::bind);
        return Response.ok(keptPages.page(KeptPages.Why.SIGNED_IN, kept, staff.name));
    }

    private static String landing(Staff staff) {
        return staff.role == Role.STYLIST ? "/day" : "/desk";
    }

    private Response again(Form form) {
        return page(422, form, new Mistakes().add("login", words.sign_in_wrong())).build();
    }

    private Response wait(Form form, Duration wait) {
        long seconds = wait.toSeconds() + 1;
        String said =
            seconds < 90 ? words.sign_in_wait_seconds(seconds) : words.sign_in_wait_minutes((seconds + 59) / 60);
        return page(429, form, new Mistakes().add("login", said)).header(HttpHeaders.RETRY_AFTER, seconds).build();
    }

    private Response.ResponseBuilder page(int status, Form form, Mistakes mistakes) {
        return Response.status(status)
            .entity(new SignInPage(form.one("login"), form.one("to"), mistakes, UnsentForm.carriedBy(form)));
    }

    @POST
    @Path("sign-out")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response leave() {
        return Response.seeOther(URI.create("/sign-in")).cookie(sessions.end(who))
            .header("Clear-Site-Data", "\"cache\"").build();
    }

    private static Response see(String path) {
        return Response.seeOther(URI.create(path)).build();
    }
}
