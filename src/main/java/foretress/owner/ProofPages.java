package foretress.owner;

import foretress.ledger.Anchors;
import foretress.ledger.Ledger;
import foretress.ledger.Slip;
import foretress.post.Post;
import foretress.salon.Salon;
import foretress.salon.Who;
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
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;

/** The audit chain and what is kept of it outside: its slips, to print again; an old one, to hold the chain against; what a chain proves. */
@Path("/owner/proof")
public class ProofPages {
    private static final int SHOWN = 31;

    @CheckedTemplate(basePath = "owner", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ProofPage(List<Slip> slips, boolean mailed, Form form, Mistakes mistakes, Optional<OwnerText.Chain> checked)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "owner", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record SlipPaper(Slip slip) implements TemplateInstance {}

    private final Anchors anchors;
    private final DailyAnchor daily;
    private final Ledger ledger;
    private final OwnerText text;
    private final TrailWords say;
    private final Post post;
    private final Who who;
    private final Clock clock;

    ProofPages(Anchors anchors, DailyAnchor daily, Ledger ledger, OwnerText text, TrailWords say, Post post, Who who,
        Clock clock) {
        this.anchors = anchors;
        this.daily = daily;
        this.ledger = ledger;
        this.text = text;
        this.say = say;
        this.post = post;
        this.who = who;
        this.clock = clock;
    }

    private String owner() {
        return who.staff().id.toString();
    }

    private ProofPage page(Form form, Mistakes mistakes, Optional<OwnerText.Chain> checked) {
        return new ProofPage(anchors.newest(SHOWN), post.canSend() && !Salon.the().email.isBlank(), form, mistakes,
            checked);
    }

    @GET
    public TemplateInstance show() {
        ledger.read(owner(), "slips of the audit trail read", "");
        return page(new Form(new MultivaluedHashMap<>()), new Mistakes(), Optional.empty());
    }

    /** Makes one now, of everything since the last. */
    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response make() {
        ledger.note(owner(), "audit slip made", "");
        return Response.seeOther(URI.create(daily.make().map(slip -> "/owner/proof/" + slip.last())
            .orElse("/owner/proof"))).build();
    }

    @POST
    @Path("check")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Object check(MultivaluedMap<String, String> fields) {
        var form = new Form(fields);
        var mistakes = new Mistakes();
        Slip.Typed typed = Slip.read(form.one("slip"));
        mistakes.expect(!typed.mistyped(), "slip", say.slip_mistyped());
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(form, mistakes, Optional.empty()));
        }
        ledger.note(owner(), "audit slip checked", "");
        return page(form, mistakes, Optional.of(
            text.proof(ledger.check(typed.slips()), clock.instant().atZone(Salon.the().zoneId()))));
    }

    /** On paper, whatever becomes of the store. */
    @GET
    @Path("{last: [0-9]+}")
    public TemplateInstance print(@RestPath long last) {
        ledger.read(owner(), "slips of the audit trail read", "");
        return new SlipPaper(anchors.ending(last).orElseThrow(NotFoundException::new));
    }
}
