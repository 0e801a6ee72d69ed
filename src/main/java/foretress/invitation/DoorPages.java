package foretress.invitation;

import foretress.visit.MonthChoice;
import foretress.visit.State;
import foretress.web.Caller;
import foretress.web.Form;
import foretress.web.Language;
import foretress.web.Mistakes;
import foretress.web.Offered;
import foretress.web.PublicAddress;
import foretress.web.RateLimiter;
import foretress.web.SpokenLanguages;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.vertx.http.Compressed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Cookie;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;

/** The door behind a link: blank until the birth date was given. Looking at it changes nothing. */
@Path("/i/{token}")
public class DoorPages {
    /**
     * @param token the link's own, which stands in the address already
     * @param minutes how long the questions take about
     * @param others the languages this page is not in
     * @param afterwards nothing is to come: nothing is asked any more, and what cannot wait comes first
     * @param tookPlace it is over, and not off
     */
    @CheckedTemplate(basePath = "invitation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record Welcome(String token, int minutes, boolean afterwards, boolean tookPlace, List<Offered> others,
        BirthDateField typed,
        List<MonthChoice> months, Mistakes mistakes) implements TemplateInstance {}

    @CheckedTemplate(basePath = "invitation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record Locked() implements TemplateInstance {}

    @CheckedTemplate(basePath = "invitation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record NoSuchLink() implements TemplateInstance {}

    /** The door itself shuts with the link; after that its cookie only tells that this browser answered before. */
    private static final int REMEMBERED = (int) Duration.ofDays(400).toSeconds();

    private final Invitations invitations;
    private final ClientSessions doors;
    private final RateLimiter brake;
    private final Caller caller;
    private final Language language;
    private final SpokenLanguages spoken;
    private final PublicAddress address;
    private final DoorWords words;
    private final HowLong howLong;
    private final Clock clock;

    DoorPages(Invitations invitations, ClientSessions doors, RateLimiter brake, Caller caller, Language language,
        SpokenLanguages spoken,
        PublicAddress address, DoorWords words, HowLong howLong, Clock clock) {
        this.invitations = invitations;
        this.doors = doors;
        this.brake = brake;
        this.caller = caller;
        this.language = language;
        this.spoken = spoken;
        this.address = address;
        this.words = words;
        this.howLong = howLong;
        this.clock = clock;
    }

    @GET
    @Compressed
    public Response welcome(@RestPath String token, @Context HttpHeaders browser) {
        return invitations.behind(token)
            .map(found -> isIn(found, browser) ? goOn() : fresh(token)).orElseGet(this::unknown);
    }

    /** A browser that was let in to this very visit and not forgotten since is not asked again; a tablet changes hands, and always is. */
    private boolean isIn(Invitation found, HttpHeaders browser) {
        return !found.handed
            && cookie(browser).flatMap(doors::openedBy).filter(door -> door.leadsTo(found)).isPresent();
    }

    private Optional<String> cookie(HttpHeaders browser) {
        return Optional.ofNullable(browser.getCookies().get(address.cookieName(GuestFilter.COOKIE)))
            .map(Cookie::getValue);
    }

    private static Response goOn() {
        return Response.seeOther(URI.create("/answers")).build();
    }

    /** Keeps the language and shows the door in it; the link is good for as long as before. */
    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response start(@RestPath String token, MultivaluedMap<String, String> posted) {
        Optional<Invitation> found = invitations.behind(token);
        if (found.isEmpty()) {
            return unknown();
        }
        slowDown(found.get());
        String chosen = spoken.match(new Form(posted).one("language")).orElse(language.getTag());
        return Response.seeOther(URI.create("/i/" + token)).cookie(spoken(chosen)).build();
    }

    /** Where a birth date was sent to is the door again for whoever reloads it. */
    @GET
    @Path("/birth-date")
    public Response again(@RestPath String token, @Context HttpHeaders browser) {
        return welcome(token, browser);
    }

    @POST
    @Path("/birth-date")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response knock(@RestPath String token, @Context HttpHeaders browser,
        MultivaluedMap<String, String> posted) {
        Optional<Invitation> found = invitations.behind(token);
        if (found.isEmpty()) {
            return unknown();
        }
        slowDown(found.get());
        var form = new Form(posted);
        var typed = new BirthDateField(form.one("day"), form.one("month"), form.one("year"));
        // The latest day anywhere on earth, so that nobody born today is told that today is ahead.
        BirthDateField.Read read = typed.read(LocalDate.ofInstant(clock.instant(), ZoneOffset.MAX));
        return read.date()
            .map(date -> answer(token, typed, invitations.knock(token, date, language.getTag(), cookie(browser))))
            .orElseGet(() -> again(token, typed, read.mistake().orElseThrow()));
    }

    private Response answer(String token, BirthDateField typed, Invitations.Knock knock) {
        if (knock instanceof Invitations.Knock.LetIn in) {
            return Response.seeOther(URI.create("/answers")).cookie(door(in), spoken(language.getTag())).build();
        }
        if (knock instanceof Invitations.Knock.Wrong) {
            return ask(422, token, typed, new Mistakes().add("day", words.noMatch()));
        }
        if (knock instanceof Invitations.Knock.Locked) {
            return page(423, new Locked());
        }
        return nothing();
    }

    private Response again(String token, BirthDateField typed, BirthDateField.Mistake mistake) {
        return ask(422, token, typed, new Mistakes().add(mistake.field(), words.of(mistake)));
    }

    private Response fresh(String token) {
        return ask(200, token, BirthDateField.blank(), new Mistakes());
    }

    private Response ask(int status, String token, BirthDateField typed, Mistakes mistakes) {
        List<Offered> others = spoken.offered(language.getTag()).stream().filter(one -> !one.current()).toList();
        Optional<State> state = invitations.behind(token).map(link -> link.visit.state);
        boolean afterwards = state.filter(now -> !now.isAhead()).isPresent();
        boolean tookPlace = state.filter(State::tookPlace).isPresent();
        return page(status, new Welcome(token, howLong.minutes(language.getTag()), afterwards, tookPlace, others, typed,
            MonthChoice.all(typed.month(), language.locale()), mistakes));
    }

    /** A link that is known is counted by itself: no crowd of strangers stands before its door. */
    private void slowDown(Invitation invitation) {
        brake.holder(RateLimiter.Door.LINK, "link " + invitation.id)
            .ifPresent(wait -> { throw RateLimiter.tooOften(wait); });
    }

    /** Guessing at links costs the guesser's own network. */
    private Response unknown() {
        brake.stranger(RateLimiter.Door.LINK, caller.address())
            .ifPresent(wait -> { throw RateLimiter.tooOften(wait); });
        return nothing();
    }

    private NewCookie door(Invitations.Knock.LetIn in) {
        return cookie(address.cookieName(GuestFilter.COOKIE), in.cookie().reveal(), REMEMBERED);
    }

    private NewCookie spoken(String tag) {
        return cookie(Language.COOKIE, tag, 60 * 60 * 24 * 90);
    }

    private NewCookie cookie(String name, String value, int seconds) {
        return new NewCookie.Builder(name).value(value).path("/").httpOnly(true).secure(address.secure())
            .sameSite(NewCookie.SameSite.LAX).maxAge(seconds).build();
    }

    private static Response nothing() {
        return page(404, new NoSuchLink());
    }

    private static Response page(int status, TemplateInstance page) {
        return Response.status(status).entity(page).build();
    }
}
