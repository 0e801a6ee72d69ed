package foretress.skintest;

import foretress.invitation.Qr;
import foretress.ledger.Ledger;
import foretress.salon.ProveAgain;
import foretress.salon.Who;
import foretress.vault.Vault;
import foretress.visit.Visit;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import foretress.web.SentFile;
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
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** The stylist's side of a skin test: where it stands, the client's link, a slip of the finger, a picture. */
@Path("/visits/{id}/skin-test")
public class SkinTestPages {
    private static final int LONGEST = 1000;

    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record OverviewPage(Overview view, String said, Mistakes mistakes, String reason, String entry)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record LinkPage(String id, String address, String client, String link, Qr qr) implements TemplateInstance {}

    private final SkinTestDoor door;
    private final Overviews overviews;
    private final Links links;
    private final LookRecording looks;
    private final Vault vault;
    private final SkinWords say;
    private final ProveAgain proveAgain;
    private final Ledger ledger;
    private final Who who;

    SkinTestPages(SkinTestDoor door, Overviews overviews, Links links, LookRecording looks, Vault vault, SkinWords say,
        ProveAgain proveAgain, Ledger ledger, Who who) {
        this.door = door;
        this.overviews = overviews;
        this.links = links;
        this.looks = looks;
        this.vault = vault;
        this.say = say;
        this.proveAgain = proveAgain;
        this.ledger = ledger;
        this.who = who;
    }

    @GET
    public TemplateInstance show(@RestPath UUID id, @RestQuery Optional<String> said) {
        Visit visit = door.visit(id);
        ledger.read(door.staff().toString(), "skin test page read", id.toString());
        return new OverviewPage(overviews.of(visit), said.orElse(""), new Mistakes(), "", "");
    }

    /** The one answer that is no redirect after a good form: the link is shown here once and kept nowhere. */
    @POST
    @Path("/tests/{test}/link")
    public TemplateInstance link(@RestPath UUID id, @RestPath UUID test) {
        Visit visit = door.visit(id);
        String link = links.make(door.test(id, test).test().id(), door.staff().toString());
        return new LinkPage(visit.id.toString(), SkinTestDoor.address(visit), visit.client.fullName(), link,
            Qr.of(link));
    }

    @POST
    @Path("/entries/{entry}/error")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response error(@RestPath UUID id, @RestPath UUID entry, MultivaluedMap<String, String> posted) {
        Visit visit = door.visit(id);
        SkinTestEntry meant = entry(visit, entry);
        var form = new Form(posted);
        String reason = form.one("reason");
        var mistakes = new Mistakes();
        mistakes.expect(!reason.isEmpty() && reason.length() <= LONGEST, "reason-" + entry,
            say.test_error_reason_missing());
        OptionalLong pause = mistakes.isEmpty() ? proved(form, entry, mistakes) : OptionalLong.empty();
        if (!mistakes.isEmpty()) {
            return FormAgain.with(pause,
                new OverviewPage(overviews.of(visit), "", mistakes, reason, entry.toString()));
        }
        looks.inError(meant.id(), reason, door.staff());
        return SkinTestDoor.back(visit, "error");
    }

    /** A reaction taken away opens what it shut, so the owner proves once more who they are, as for going against a finding. */
    private OptionalLong proved(Form form, UUID entry, Mistakes mistakes) {
        ProveAgain.Outcome proof = proveAgain.with(who.staff(), form.exact("password"));
        OptionalLong seconds = proof.seconds();
        mistakes.expect(proof.proved(), "password-" + entry,
            seconds.isPresent() ? say.test_error_wait(seconds.getAsLong()) : say.test_error_password_wrong());
        return seconds;
    }

    @GET
    @Path("/photos/{photo}")
    public Response photo(@RestPath UUID id, @RestPath UUID photo) {
        Photo kept = Photo.<Photo>findByIdOptional(photo).filter(one -> door.isOf(door.visit(id), one.clientId()))
            .orElseThrow(NotFoundException::new);
        ledger.note(door.staff().toString(), "photo of a skin test read", kept.id().toString());
        return SentFile.photo(vault.open(kept));
    }

    private SkinTestEntry entry(Visit visit, UUID id) {
        return SkinTestEntry.byId(id).filter(one -> door.isOf(visit, one.clientId()))
            .orElseThrow(NotFoundException::new);
    }
}
