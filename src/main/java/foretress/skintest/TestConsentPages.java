package foretress.skintest;

import foretress.consent.ConsentInput;
import foretress.consent.ConsentText;
import foretress.consent.ConsentText.Line.Statement;
import foretress.consent.ConsentText.Part;
import foretress.consent.ConsentWords;
import foretress.consent.Consents;
import foretress.consent.Evidence;
import foretress.consent.SignatureMark;
import foretress.intake.ConsentPart;
import foretress.intake.Guardians;
import foretress.intake.MarkField;
import foretress.intake.MarkShown;
import foretress.intake.Statements;
import foretress.invitation.Guest;
import foretress.salon.Staff;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import foretress.web.Caller;
import foretress.web.ClientWords;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Language;
import foretress.web.Mistake;
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
import jakarta.ws.rs.core.MultivaluedHashMap;
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

/** The tablet in the client's hands, locked: what the test is, what it cannot tell, and the signature. In the client's language. */
@Path("/answers/skin-test")
public class TestConsentPages {
    private static final Duration LONGEST_READING = Duration.ofHours(12);

    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ConsentPage(ConsentText text, Statements statements, List<ConsentPart> rest, MarkShown mark,
        Optional<Guardians.Asked> guardian, List<Mistake> mistakes, String submission, String shown)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ConsentDone() implements TemplateInstance {}

    private final Guest guest;
    private final PlannedProducts planned;
    private final SkinTestGate gate;
    private final TestConsent consent;
    private final Guardians guardians;
    private final Language language;
    private final Caller caller;
    private final Clock clock;

    TestConsentPages(Guest guest, PlannedProducts planned, SkinTestGate gate, TestConsent consent,
        Guardians guardians, Language language, Caller caller, Clock clock) {
        this.guardians = guardians;
        this.guest = guest;
        this.planned = planned;
        this.gate = gate;
        this.consent = consent;
        this.language = language;
        this.caller = caller;
        this.clock = clock;
    }

    @GET
    public Response show() {
        Visit visit = visit();
        if (!gate.open(visit) || consent.signed(visit, product(visit))) {
            return Response.ok(done(visit)).build();
        }
        return Response.ok(page(visit, new Form(new MultivaluedHashMap<>()), SignatureMark.Kind.DRAWN, List.of(),
            UUID.randomUUID().toString(),
            clock.instant())).build();
    }

    private ConsentDone done(Visit visit) {
        language.use(visit.client.language);
        return new ConsentDone();
    }

    /** Only on the salon's own tablet: what is signed here says whose hands it was put into the client's by. */
    private Visit visit() {
        if (!guest.isOnHandedTablet()) {
            throw new NotFoundException();
        }
        return guest.visit();
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response sign(MultivaluedMap<String, String> posted, @HeaderParam("User-Agent") String agent) {
        Visit visit = visit();
        var form = new Form(posted);
        UUID submission =
            FormIds.of(form.one("submission")).orElseThrow(() -> new BadRequestException("a form without its name"));
        if (consent.papers(visit.id).stream().anyMatch(paper -> paper.isOf(submission))) {
            return on();
        }
        if (!gate.open(visit)) {
            return on();
        }
        Instant shown = shown(form.one("shown"));
        List<Mistake> mistakes = new ArrayList<>();
        Optional<SignatureMark> mark = MarkField.of(form).read(mistakes, say(visit));
        Optional<Evidence.Guardian> guardian = guardians.signed(visit, form, mistakes, say(visit));
        if (!asked(visit).equals(form.all("agree"))) {
            mistakes.add(0, new Mistake("statements", say(visit).sign_agree_all()));
        }
        if (!mistakes.isEmpty()) {
            return again(visit, form, mistakes, shown);
        }
        try {
            consent.sign(visit, product(visit), mark.orElseThrow(),
                new TestConsent.Act(submission, form.one("text"), form.all("agree"), shown, handedBy(), guardian,
                    Optional.of(new Evidence.Device(caller.address(), Optional.ofNullable(agent).orElse("not told")))));
            return on();
        } catch (Consents.OtherVisit forged) {
            throw new BadRequestException(forged);
        } catch (Consents.TextChanged changed) {
            return again(visit, form, List.of(new Mistake("main", say(visit).sign_again())), clock.instant());
        }
    }

    private Staff handedBy() {
        return Staff.byId(UUID.fromString(guest.entrance().sentBy())).orElseThrow();
    }

    /** When the page was put before the client, as the page says; nonsense counts as now. */
    private Instant shown(String posted) {
        Instant now = clock.instant();
        try {
            return Optional.of(Instant.parse(posted))
                .filter(at -> !at.isAfter(now) && at.isAfter(now.minus(LONGEST_READING))).orElse(now);
        } catch (DateTimeException notAMoment) {
            return now;
        }
    }

    private Response again(Visit visit, Form form, List<Mistake> mistakes, Instant shown) {
        return FormAgain.with(page(visit, form, MarkField.of(form).kind(),
            mistakes, form.one("submission"), shown));
    }

    private ConsentPage page(Visit visit, Form form, SignatureMark.Kind kind,
        List<Mistake> mistakes, String submission, Instant shown) {
        language.use(visit.client.language);
        ConsentText text = text(visit);
        List<ConsentPart> rest =
            text.sections().stream().filter(part -> part.part() != Part.STATEMENTS).map(ConsentPart::of).toList();
        return new ConsentPage(text, Statements.of(text, form, mistakes), rest,
            MarkShown.of(visit.client.fullName(), form, kind, mistakes), guardians.asked(visit, form, mistakes),
            mistakes, submission, shown.toString());
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

    private static ClientWords say(Visit visit) {
        return MessageBundles.get(ClientWords.class, Localized.Literal.of(visit.client.language));
    }

    private static Response on() {
        return Response.seeOther(URI.create("/answers/skin-test")).build();
    }
}
