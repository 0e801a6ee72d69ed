package foretress.skintest;

import foretress.intake.Plans;
import foretress.invitation.Qr;
import foretress.ledger.Ledger;
import foretress.salon.ProductLine;
import foretress.salon.ProveAgain;
import foretress.salon.SettingsWords;
import foretress.salon.Who;
import foretress.vault.Vault;
import foretress.visit.Clients;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.visit.When;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import foretress.web.SentFile;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.BadRequestException;
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
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** The stylist's side of a skin test: may it be made, how it was made, how the spot looks. */
@Path("/visits/{id}/skin-test")
public class SkinTestPages {
    private static final int LONGEST = 1000;
    private static final int LONGEST_BATCH = 60;

    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record OverviewPage(Overview view, String said, Mistakes mistakes, String reason, String entry)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record RecordPage(String id, String address, String client, ProductLine line, String shade, int waitHours,
        String readable, List<String> masking, String emergency, Form form,
        String submission, Mistakes mistakes) implements TemplateInstance {}

    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ReadPage(String id, String address, String client, Overview.One test, List<Choice> signs, Form form,
        String submission, Mistakes mistakes)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record LinkPage(String id, String address, String client, String link, Qr qr) implements TemplateInstance {}

    public record Choice(String code, String words, boolean chosen) {}

    private final Visits visits;
    private final Clients clients;
    private final PlannedProducts planned;
    private final SkinTestGate gate;
    private final TestConsent consent;
    private final SkinTestRecord record;
    private final Applications applications;
    private final LookRecording looks;
    private final TestStore tests;
    private final Overviews overviews;
    private final Links links;
    private final TestMails letters;
    private final Vault vault;
    private final Plans plans;
    private final MaskingWords maskingWords;
    private final SkinWords say;
    private final SettingsWords settings;
    private final ProveAgain proveAgain;
    private final Ledger ledger;
    private final Who who;
    private final Clock clock;

    SkinTestPages(Visits visits, Clients clients, PlannedProducts planned, SkinTestGate gate, TestConsent consent,
        SkinTestRecord record, Applications applications,
        LookRecording looks, TestStore tests, Overviews overviews, Links links, TestMails letters, Vault vault,
        Plans plans, MaskingWords maskingWords,
        SkinWords say, SettingsWords settings, ProveAgain proveAgain, Ledger ledger, Who who, Clock clock) {
        this.visits = visits;
        this.clients = clients;
        this.planned = planned;
        this.gate = gate;
        this.consent = consent;
        this.record = record;
        this.applications = applications;
        this.looks = looks;
        this.tests = tests;
        this.overviews = overviews;
        this.links = links;
        this.letters = letters;
        this.vault = vault;
        this.plans = plans;
        this.maskingWords = maskingWords;
        this.say = say;
        this.settings = settings;
        this.proveAgain = proveAgain;
        this.ledger = ledger;
        this.who = who;
        this.clock = clock;
    }

    @GET
    public TemplateInstance show(@RestPath UUID id, @RestQuery Optional<String> said) {
        Visit visit = found(id);
        ledger.note(staff().toString(), "skin test page read", id.toString());
        return new OverviewPage(overviews.of(visit), said.orElse(""), new Mistakes(), "", "");
    }

    // Putting it on.

    @GET
    @Path("/record")
    public Response record(@RestPath UUID id) {
        Visit visit = found(id);
        if (!ready(visit))
            return back(visit, "");
        var fields = new MultivaluedHashMap<String, String>();
        fields.putSingle("site", product(visit).line().site.name());
        return Response.ok(recordPage(visit, new Form(fields), UUID.randomUUID().toString(), new Mistakes())).build();
    }

    @POST
    @Path("/record")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response keep(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        Visit visit = found(id);
        var form = new Form(posted);
        UUID submission =
            FormIds.of(form.one("submission")).orElseThrow(() -> new BadRequestException("a form without its name"));
        if (TestApplied.submitted(submission).isPresent())
            return back(visit, "recorded");
        if (!ready(visit))
            return back(visit, "not-recorded");
        var mistakes = new Mistakes();
        Optional<TestMethod> made = made(visit, form, mistakes);
        if (!mistakes.isEmpty())
            return FormAgain.with(recordPage(visit, form, submission.toString(), mistakes));
        UUID test = applications.record(submission, visit.id, product(visit), made.orElseThrow(), staff());
        letters.page(test, false, staff().toString());
        return back(visit, "recorded");
    }

    private Optional<TestMethod> made(Visit visit, Form form, Mistakes mistakes) {
        ProductLine line = product(visit).line();
        String batch = form.one("batch");
        Optional<ProductLine.Mixing> mixing =
            form.constant("mixing", ProductLine.Mixing.class).filter(line.mixing::equals);
        Optional<ProductLine.Site> site = form.constant("site", ProductLine.Site.class);
        Optional<TestMethod.Medicines> medicines = TestMethod.Medicines.of(form.one("medicines"));
        mistakes.expect(!batch.isEmpty() && batch.length() <= LONGEST_BATCH, "batch", say.record_batch_missing());
        mistakes.expect(mixing.isPresent(), "mixing",
            line.mixing == ProductLine.Mixing.MIXED ? say.record_not_mixed() : say.record_not_neat());
        mistakes.expect(site.isPresent(), "site", settings.products_site_missing());
        boolean said = site.filter(ProductLine.Site.OTHER::equals).isEmpty() || !form.one("site-words").isEmpty();
        mistakes.expect(said && form.one("site-words").length() <= LONGEST_BATCH, "site-words",
            say.record_site_words_missing());
        mistakes.expect(medicines.isPresent(), "medicines", say.record_medicines_missing());
        mistakes.expect(form.ticked("whole"), "whole", say.record_not_whole());
        return mistakes.isEmpty() ? Optional.of(new TestMethod(product(visit).shade(), batch, mixing.orElseThrow(),
            site.orElseThrow(), form.one("site-words"),
            record.masking(visit), medicines.orElseThrow())) : Optional.empty();
    }

    private RecordPage recordPage(Visit visit, Form form, String submission, Mistakes mistakes) {
        PlannedProducts.Planned product = product(visit);
        int wait = plans.skinTest(visit).waitHours();
        return new RecordPage(visit.id.toString(), address(visit), visit.client.fullName(), product.line(),
            product.shade(), wait,
            moment(clock.instant().plusSeconds(wait * 3600L), visit), maskingWords.of(record.masking(visit)),
            overviews.emergency(), form,
            submission, mistakes);
    }

    private boolean ready(Visit visit) {
        return gate.open(visit) && consent.signed(visit, product(visit));
    }

    // Looking at it.

    @GET
    @Path("/tests/{test}/read")
    public TemplateInstance look(@RestPath UUID id, @RestPath UUID test) {
        return readPage(found(id), told(id, test), new Form(new MultivaluedHashMap<>()), UUID.randomUUID().toString(),
            new Mistakes());
    }

    @POST
    @Path("/tests/{test}/read")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response read(@RestPath UUID id, @RestPath UUID test, MultivaluedMap<String, String> posted) {
        Visit visit = found(id);
        TestFile told = told(id, test);
        var form = new Form(posted);
        UUID submission =
            FormIds.of(form.one("submission")).orElseThrow(() -> new BadRequestException("a form without its name"));
        if (SkinTestEntry.submitted(submission).isPresent())
            return back(visit, "read");
        var mistakes = new Mistakes();
        Optional<SkinLook> look = looked(visit, form, mistakes);
        look.ifPresent(seen -> kept(submission, told, seen, visit, mistakes));
        if (!mistakes.isEmpty())
            return FormAgain.with(readPage(visit, told, form, submission.toString(), mistakes));
        return back(visit, look.orElseThrow().nothing() ? "read" : "reacted");
    }

    private void kept(UUID submission, TestFile told, SkinLook look, Visit visit, Mistakes mistakes) {
        try {
            looks.read(submission, told.test().id(), look, staff());
        } catch (LookRecording.TooEarly early) {
            mistakes.add("signs", say.read_too_early(moment(early.from(), visit)));
        }
    }

    private Optional<SkinLook> looked(Visit visit, Form form, Mistakes mistakes) {
        List<String> ticked = form.all("sign");
        List<SkinSign> signs = ticked.stream().flatMap(code -> SkinSign.of(code).stream()).toList();
        mistakes.expect(!ticked.isEmpty() && signs.size() == ticked.size(), "signs", say.read_signs_missing());
        mistakes.expect(signs.size() < 2 || !signs.contains(SkinSign.NONE), "signs", say.read_none_and_more());
        mistakes.expect(form.one("words").length() <= LONGEST, "words", say.read_words_long());
        mistakes.expect(form.ticked("spot"), "spot", say.read_spot_missing());
        return mistakes.isEmpty()
            ? Optional.of(
                new SkinLook(signs, Optional.empty(), form.one("words"), record.masking(visit), form.ticked("mixing")))
            : Optional.empty();
    }

    private ReadPage readPage(Visit visit, TestFile told, Form form, String submission, Mistakes mistakes) {
        Overview.One one = overviews.of(visit).tests().stream()
            .filter(test -> test.id().equals(told.test().id().toString())).findFirst().orElseThrow();
        List<Choice> signs = new ArrayList<>();
        List.of(SkinSign.NONE, SkinSign.FAINT, SkinSign.REDNESS, SkinSign.SWELLING, SkinSign.BURNING, SkinSign.BLISTERS,
            SkinSign.ITCH, SkinSign.ELSEWHERE, SkinSign.FACE, SkinSign.BREATHING)
            .forEach(sign -> signs.add(new Choice(sign.code(), overviews.sign(sign), form.is("sign", sign.code()))));
        return new ReadPage(visit.id.toString(), address(visit), visit.client.fullName(), one, signs, form, submission,
            mistakes);
    }

    // The client's link, a slip of the finger, a picture.

    /** The one answer that is no redirect after a good form: the link is shown here once and kept nowhere. */
    @POST
    @Path("/tests/{test}/link")
    public TemplateInstance link(@RestPath UUID id, @RestPath UUID test) {
        Visit visit = found(id);
        String link = links.make(told(id, test).test().id(), staff().toString());
        return new LinkPage(visit.id.toString(), address(visit), visit.client.fullName(), link, Qr.of(link));
    }

    @POST
    @Path("/entries/{entry}/error")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response error(@RestPath UUID id, @RestPath UUID entry, MultivaluedMap<String, String> posted) {
        Visit visit = found(id);
        SkinTestEntry meant = entry(visit, entry);
        var form = new Form(posted);
        String reason = form.one("reason");
        var mistakes = new Mistakes();
        mistakes.expect(!reason.isEmpty() && reason.length() <= LONGEST, "reason-" + entry,
            say.test_error_reason_missing());
        OptionalLong pause = mistakes.isEmpty() ? proved(form, entry, mistakes) : OptionalLong.empty();
        if (!mistakes.isEmpty())
            return FormAgain.with(pause,
                new OverviewPage(overviews.of(visit), "", mistakes, reason, entry.toString()));
        looks.inError(meant.id(), reason, staff());
        return back(visit, "error");
    }

    /** A reaction taken away opens what it shut, so the owner proves once more who they are, as for going against a finding. */
    private OptionalLong proved(Form form, UUID entry, Mistakes mistakes) {
        ProveAgain.Outcome proof = proveAgain.with(who.staff(), form.exact("password"));
        OptionalLong seconds =
            proof.pause().map(wait -> OptionalLong.of(wait.toSeconds() + 1)).orElse(OptionalLong.empty());
        mistakes.expect(proof.proved(), "password-" + entry,
            seconds.isPresent() ? say.test_error_wait(seconds.getAsLong()) : say.test_error_password_wrong());
        return seconds;
    }

    @GET
    @Path("/photos/{photo}")
    public Response photo(@RestPath UUID id, @RestPath UUID photo) {
        Photo kept = Photo.<Photo>findByIdOptional(photo).filter(one -> isOf(found(id), one.clientId()))
            .orElseThrow(NotFoundException::new);
        ledger.note(staff().toString(), "photo of a skin test read", kept.id().toString());
        return SentFile.photo(vault.open(kept));
    }

    private SkinTestEntry entry(Visit visit, UUID id) {
        return SkinTestEntry.byId(id).filter(one -> isOf(visit, one.clientId())).orElseThrow(NotFoundException::new);
    }

    /** A test of this visit's client, whichever visit it was made for. */
    private TestFile told(UUID visit, UUID test) {
        return tests.find(test).filter(one -> isOf(found(visit), one.test().clientId()))
            .orElseThrow(NotFoundException::new);
    }

    /** Whether it was kept for this visit's client, under whichever of their records. */
    private boolean isOf(Visit visit, UUID clientId) {
        return clients.everyId(visit.client.id).contains(clientId);
    }

    private PlannedProducts.Planned product(Visit visit) {
        return planned.of(visit.id).orElseThrow(NotFoundException::new);
    }

    private static String address(Visit visit) {
        return "/visits/" + visit.id;
    }

    private String moment(Instant at, Visit visit) {
        return When.at(clock.instant(), visit.zone()).moment(at);
    }

    private Visit found(UUID id) {
        return visits.find(id).orElseThrow(NotFoundException::new);
    }

    private UUID staff() {
        return who.staff().id;
    }

    private static Response back(Visit visit, String said) {
        return Response
            .seeOther(URI.create("/visits/" + visit.id + "/skin-test" + (said.isEmpty() ? "" : "?said=" + said)))
            .build();
    }
}
