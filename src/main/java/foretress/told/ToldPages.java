package foretress.told;

import foretress.ledger.Ledger;
import foretress.salon.ProveAgain;
import foretress.salon.Who;
import foretress.visit.Visit;
import foretress.visit.Visits;
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
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.OptionalLong;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** What a client told of reactions, before staff; the owner strikes out what has nothing to do with what is used here. */
@Path("/visits/{id}/told")
public class ToldPages {
    private static final int LONGEST = 1000;

    @CheckedTemplate(basePath = "told", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ToldPage(String address, String client, List<ReactionViews.Line> lines, Mistakes mistakes, String why,
        String open) implements TemplateInstance {}

    private final Visits visits;
    private final Reactions reactions;
    private final ReactionViews views;
    private final ProveAgain proveAgain;
    private final ToldWords say;
    private final Ledger ledger;
    private final Who who;

    ToldPages(Visits visits, Reactions reactions, ReactionViews views, ProveAgain proveAgain, ToldWords say,
        Ledger ledger, Who who) {
        this.visits = visits;
        this.reactions = reactions;
        this.views = views;
        this.proveAgain = proveAgain;
        this.say = say;
        this.ledger = ledger;
        this.who = who;
    }

    @GET
    public TemplateInstance show(@RestPath UUID id) {
        Visit visit = found(id);
        ledger.read(who.staff().id.toString(), "told reactions read", id.toString());
        return page(visit, new Mistakes(), "", "");
    }

    @POST
    @Path("/{telling}/strike")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response strike(@RestPath UUID id, @RestPath UUID telling, MultivaluedMap<String, String> posted) {
        Visit visit = found(id);
        UUID told = reactions.of(visit.client.id).stream().map(ToldReaction::id).filter(telling::equals).findFirst()
            .orElseThrow(NotFoundException::new);
        var form = new Form(posted);
        String why = form.one("why");
        var mistakes = new Mistakes();
        mistakes.expect(!why.isEmpty() && why.length() <= LONGEST, "why-" + telling, say.strike_why_missing());
        OptionalLong pause = mistakes.isEmpty() ? proved(form, telling, mistakes) : OptionalLong.empty();
        if (!mistakes.isEmpty()) {
            return FormAgain.with(pause, page(visit, mistakes, why, telling.toString()));
        }
        reactions.strike(told, why, who.staff().id);
        return Response.seeOther(URI.create("/visits/" + id + "/told")).build();
    }

    /** A reaction taken away opens what it shut, so the owner proves once more who they are, as for going against a finding. */
    private OptionalLong proved(Form form, UUID telling, Mistakes mistakes) {
        ProveAgain.Outcome proof = proveAgain.with(who.staff(), form.exact("password"));
        OptionalLong seconds = proof.seconds();
        mistakes.expect(proof.proved(), "password-" + telling,
            seconds.isPresent() ? say.strike_wait(seconds.getAsLong()) : say.strike_password_wrong());
        return seconds;
    }

    private Visit found(UUID id) {
        return visits.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(Visit visit, Mistakes mistakes, String why, String open) {
        return new ToldPage("/visits/" + visit.id, visit.client.fullName(), views.of(visit), mistakes, why, open);
    }
}
