package foretress.invitation;

import foretress.ledger.ByStaff;
import foretress.post.Post;
import foretress.salon.Who;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.Form;
import foretress.web.Language;
import foretress.web.PublicAddress;
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
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** Getting a link to the client: by mail, off the counter's screen, on a slip of paper, or pasted anywhere. */
@Path("/desk/visits/{id}")
public class LinkPages {
    @CheckedTemplate(basePath = "invitation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record FreshLink(Visit visit, String starts, UUID key, String link, Qr qr, boolean canMail)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "invitation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record Slip(Visit visit, String starts, UUID key, String link, Qr qr) implements TemplateInstance {}

    private final ByStaff byStaff;
    private final Visits visits;
    private final Invitations invitations;
    private final LinkLetters letters;
    private final FreshLinks fresh;
    private final PublicAddress address;
    private final Who who;
    private final Post post;
    private final Language language;

    LinkPages(Visits visits, Invitations invitations, LinkLetters letters, FreshLinks fresh, PublicAddress address,
        Who who, Post post, Language language, ByStaff byStaff) {
        this.byStaff = byStaff;
        this.visits = visits;
        this.invitations = invitations;
        this.letters = letters;
        this.fresh = fresh;
        this.address = address;
        this.who = who;
        this.post = post;
        this.language = language;
    }

    /** Mails a fresh link, from the visit's page or straight from the list. */
    @POST
    @Path("/mail")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response mail(@RestPath String id, MultivaluedMap<String, String> posted) {
        Visit visit = ahead(id);
        LinkLetters.Sent sent = letters.invite(visit.id, staff().toString());
        if (sent == LinkLetters.Sent.MAILED) {
            fresh.drop(visit.id);
        }
        return Response.seeOther(URI.create(back(new Form(posted).one("back"), visit) + "?said=" + said(sent))).build();
    }

    /** The list the button was on, or the visit's page. */
    private static String back(String asked, Visit visit) {
        return asked.equals("/desk") || asked.equals("/day") ? asked : "/desk/visits/" + visit.id;
    }

    private static String said(LinkLetters.Sent sent) {
        return switch (sent) {
            case MAILED -> "mailed";
            case NO_ADDRESS -> "no-address";
            case NOT_SET_UP -> "not-set-up";
        };
    }

    /** Makes a fresh link and shows it. */
    @POST
    @Path("/link")
    public Response make(@RestPath String id) {
        Visit visit = ahead(id);
        Token token = invitations.issue(visit.id, Invitation.Way.SHOWN, staff().toString());
        return Response.seeOther(at(visit, fresh.hold(visit.id, staff(), token))).build();
    }

    @GET
    @Path("/link/{key}")
    public Response show(@RestPath String id, @RestPath String key) {
        Visit visit = found(id);
        byStaff.looked("link shown", visit.id);
        return held(visit, key).map(token -> Response.ok(new FreshLink(visit, LinkLetters.starts(visit),
            UUID.fromString(key), link(token), Qr.of(link(token)), mailable(visit))).build())
            .orElseGet(() -> gone(visit));
    }

    /** Mails the very link on the screen, so that it and the paper slip stay the same one. */
    @POST
    @Path("/link/{key}/mail")
    public Response mailThis(@RestPath String id, @RestPath String key) {
        Visit visit = ahead(id);
        return held(visit, key).map(token -> {
            LinkLetters.Sent sent = letters.mail(visit.id, token);
            byStaff.did("link mailed", visit.id);
            return Response.seeOther(URI.create("/desk/visits/" + visit.id + "?said=" + said(sent))).build();
        }).orElseGet(() -> gone(visit));
    }

    /** The slip is for the client, so it speaks the client's language. */
    @GET
    @Path("/slip/{key}")
    public Response slip(@RestPath String id, @RestPath String key) {
        Visit visit = found(id);
        byStaff.looked("link shown", visit.id);
        language.use(visit.client.language);
        return held(visit, key).map(token -> Response.ok(new Slip(visit, LinkLetters.starts(visit),
            UUID.fromString(key), link(token), Qr.of(link(token)))).build())
            .orElseGet(() -> gone(visit));
    }

    private Optional<Token> held(Visit visit, String key) {
        return UuidParam.of(key).flatMap(name -> fresh.find(name, visit.id, staff()));
    }

    private String link(Token token) {
        return address.link("/i/" + token.reveal());
    }

    private boolean mailable(Visit visit) {
        return post.canSend() && visit.client.email().isPresent();
    }

    private Visit ahead(String id) {
        return Optional.of(found(id)).filter(visit -> visit.state.isAhead()).orElseThrow(NotFoundException::new);
    }

    private Visit found(String id) {
        return UuidParam.of(id).flatMap(visits::find).orElseThrow(NotFoundException::new);
    }

    private UUID staff() {
        return who.staff().id;
    }

    private static URI at(Visit visit, UUID key) {
        return URI.create("/desk/visits/" + visit.id + "/link/" + key);
    }

    /** The link is no longer held: the visit's page makes another one. */
    private static Response gone(Visit visit) {
        return Response.seeOther(URI.create("/desk/visits/" + visit.id + "?said=link-gone")).build();
    }
}
