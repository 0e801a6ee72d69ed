package foretress.skintest;

import foretress.consent.ConsentInput;
import foretress.consent.ConsentText;
import foretress.consent.ConsentText.Line.Statement;
import foretress.consent.ConsentText.Part;
import foretress.consent.ConsentWords;
import foretress.consent.Consents;
import foretress.consent.Evidence;
import foretress.consent.Mark;
import foretress.consent.SignedConsent;
import foretress.intake.ConsentPart;
import foretress.intake.Strokes;
import foretress.ledger.Ledger;
import foretress.salon.Who;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.Caller;
import foretress.web.Form;
import foretress.web.Language;
import foretress.web.Mistake;
import foretress.web.Say;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The tablet in the client's hands: what the test is, what it cannot tell, and the signature. In the client's language. */
@Path("/visits/{id}/skin-test/consent")
public class TestConsentPages {
    private static final Duration LONGEST_READING = Duration.ofHours(12);

    public record Ticked(Statement statement, boolean ticked) {}

    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ConsentPage(String visit, ConsentText text, String heading, List<Ticked> statements, List<ConsentPart> rest, String name, String typed,
                       String kind, List<Mistake> mistakes, String markMistake, String agreeMistake, String submission, String shown)
        implements TemplateInstance {}

    private final Visits visits;
    private final PlannedProducts planned;
    private final SkinTestGate gate;
    private final TestConsent consent;
    private final Consents consents;
    private final Language language;
    private final Caller caller;
    private final Ledger ledger;
    private final Who who;
    private final Clock clock;

    TestConsentPages(Visits visits, PlannedProducts planned, SkinTestGate gate, TestConsent consent, Consents consents, Language language,
                     Caller caller, Ledger ledger, Who who, Clock clock) {
        this.visits = visits;
        this.planned = planned;
        this.gate = gate;
        this.consent = consent;
        this.consents = consents;
        this.language = language;
        this.caller = caller;
        this.ledger = ledger;
        this.who = who;
        this.clock = clock;
    }

    @GET
    public Response show(@RestPath UUID id) {
        Visit visit = found(id);
        return gate.open(visit) ? Response.ok(page(visit, List.of(), "", "drawn", List.of(), UUID.randomUUID().toString(), clock.instant())).build() : back(visit);
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response sign(@RestPath UUID id, MultivaluedMap<String, String> posted, @HeaderParam("User-Agent") String agent) {
        Visit visit = found(id);
        var form = new Form(posted);
        UUID submission = Ids.of(form.one("submission")).orElseThrow(() -> new BadRequestException("a form without its name"));
        if (consent.papers(visit.id).stream().anyMatch(paper -> paper.isOf(submission))) return on(visit);
        if (!gate.open(visit)) return back(visit);
        Instant shown = shown(form.one("shown"));
        List<Mistake> mistakes = new ArrayList<>();
        Optional<Mark> mark = mark(form, visit, mistakes);
        if (!asked(visit).equals(form.all("agree"))) mistakes.add(0, new Mistake("statements", say(visit).sign_agree_all()));
        if (!mistakes.isEmpty()) return again(visit, form, mistakes, shown);
        try {
            consent.sign(visit, product(visit), mark.orElseThrow(), new TestConsent.Act(submission, form.one("text"), form.all("agree"), shown, who.staff(),
                Optional.of(new Evidence.Device(caller.address(), Optional.ofNullable(agent).orElse("not told")))));
            return on(visit);
        } catch (Consents.OtherVisit forged) {
            throw new BadRequestException(forged);
        } catch (Consents.TextChanged changed) {
            return again(visit, form, List.of(new Mistake("main", say(visit).sign_again())), clock.instant());
        }
    }

    /** The signed paper, the very bytes. */
    @GET
    @Path("/{version}")
    public Response paper(@RestPath UUID id, @RestPath int version) {
        SignedConsent signed = consent.papers(id).stream().filter(one -> one.versionNo == version).findFirst().orElseThrow(NotFoundException::new);
        ledger.note(who.staff().id.toString(), "consent to a skin test read", signed.id.toString());
        return Response.ok(consents.pdf(signed)).type("application/pdf")
            .header("Content-Disposition", "inline; filename=\"" + signed.fileName + "\"").build();
    }

    /** When the page was put before the client, as the page says; nonsense counts as now. */
    private Instant shown(String posted) {
        Instant now = clock.instant();
        try {
            return Optional.of(Instant.parse(posted)).filter(at -> !at.isAfter(now) && at.isAfter(now.minus(LONGEST_READING))).orElse(now);
        } catch (DateTimeException notAMoment) {
            return now;
        }
    }

    private Optional<Mark> mark(Form form, Visit visit, List<Mistake> mistakes) {
        boolean drawn = form.one("mark").equals("drawn");
        String posted = drawn ? form.one("strokes") : form.one("typed");
        if (posted.isEmpty()) {
            mistakes.add(new Mistake("mark", say(visit).sign_mark_missing()));
            return Optional.empty();
        }
        try {
            return Optional.of(drawn ? new Mark.Drawn(Strokes.read(posted)) : new Mark.Typed(posted));
        } catch (IllegalArgumentException refused) {
            mistakes.add(new Mistake("mark", drawn ? say(visit).sign_mark_too_long() : say(visit).sign_name_too_long()));
            return Optional.empty();
        }
    }

    private Response again(Visit visit, Form form, List<Mistake> mistakes, Instant shown) {
        return Response.status(422).entity(page(visit, form.all("agree"), form.one("typed"), form.one("mark").equals("drawn") ? "drawn" : "typed",
            mistakes, form.one("submission"), shown)).build();
    }

    private ConsentPage page(Visit visit, List<String> ticked, String typed, String kind, List<Mistake> mistakes, String submission, Instant shown) {
        language.use(visit.client.language);
        ConsentText text = text(visit);
        List<Ticked> statements = text.statements().stream().map(one -> new Ticked(one, ticked.contains(one.id()))).toList();
        List<ConsentPart> rest = text.sections().stream().filter(part -> part.part() != Part.STATEMENTS).map(ConsentPart::of).toList();
        String heading = text.sections().stream().filter(part -> part.part() == Part.STATEMENTS).findFirst().orElseThrow().heading();
        return new ConsentPage(visit.id.toString(), text, heading, statements, rest, visit.client.fullName(), typed, kind, mistakes,
            at(mistakes, "mark"), at(mistakes, "statements"), submission, shown.toString());
    }

    private static String at(List<Mistake> mistakes, String field) {
        return mistakes.stream().filter(one -> one.field().equals(field)).map(Mistake::text).findFirst().orElse("");
    }

    private ConsentText text(Visit visit) {
        ConsentInput input = consent.input(visit, product(visit));
        return ConsentText.of(input, ConsentWords.in(input.language()));
    }

    private List<String> asked(Visit visit) {
        return text(visit).statements().stream().map(Statement::id).toList();
    }

    private PlannedProducts.Planned product(Visit visit) {
        return planned.of(visit.id).orElseThrow(NotFoundException::new);
    }

    private static Say say(Visit visit) {
        return MessageBundles.get(Say.class, Localized.Literal.of(visit.client.language));
    }

    private Visit found(UUID id) {
        return visits.find(id).orElseThrow(NotFoundException::new);
    }

    private static Response back(Visit visit) {
        return Response.seeOther(URI.create("/visits/" + visit.id + "/skin-test")).build();
    }

    private static Response on(Visit visit) {
        return Response.seeOther(URI.create("/visits/" + visit.id + "/skin-test/record")).build();
    }
}
