package foretress.invitation;

import foretress.web.Form;
import foretress.web.Mistakes;
import foretress.web.RateLimiter;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;

/** A second browser shows a one-use code before it sees what the first one answered. */
@Path(GuestFilter.CODE)
public class CodePages {
    @CheckedTemplate(basePath = "invitation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record Code(boolean canMail, boolean mailed, boolean tooOften, Mistakes mistakes) implements TemplateInstance {}

    private final Guest guest;
    private final Codes codes;
    private final CodeLetters letters;
    private final RateLimiter brake;
    private final DoorWords words;

    CodePages(Guest guest, Codes codes, CodeLetters letters, RateLimiter brake, DoorWords words) {
        this.guest = guest;
        this.codes = codes;
        this.letters = letters;
        this.brake = brake;
        this.words = words;
    }

    @GET
    public Response ask(@RestQuery Optional<String> said, @RestQuery Optional<String> record) {
        if (codes.shownLately(guest) || guest.seesEarlierVisits() && (record.isEmpty() || guest.isOnHandedTablet())) {
            return on();
        }
        return page(200, said, new Mistakes());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response prove(MultivaluedMap<String, String> posted) {
        if (codes.shownLately(guest) || guest.isOnHandedTablet()) {
            return on(); // the code was right, and the answer that said so was lost on its way
        }
        slowDown();
        if (codes.prove(guest.doorId(), guest.visitId(), new Form(posted).one("code"))) {
            return on();
        }
        return page(422, Optional.empty(), new Mistakes().add("code", words.codeWrong()));
    }

    /** Mails a code to the address on file; nobody can name another. */
    @POST
    @Path("/mail")
    public Response mail() {
        slowDown();
        boolean mailed = letters.mail(guest.visitId());
        return Response.seeOther(URI.create(GuestFilter.CODE + "?said=" + (mailed ? "mailed" : "often"))).build();
    }

    private Response page(int status, Optional<String> said, Mistakes mistakes) {
        boolean canMail = guest.client().email().isPresent() && letters.canSend();
        return Response.status(status).entity(new Code(canMail, said.filter("mailed"::equals).isPresent(),
            said.filter("often"::equals).isPresent(), mistakes)).build();
    }

    private void slowDown() {
        brake.holder(RateLimiter.Door.LINK, "door " + guest.doorId())
            .ifPresent(wait -> { throw RateLimiter.tooOften(wait); });
    }

    private static Response on() {
        return Response.seeOther(URI.create("/answers")).build();
    }
}
