package foretress.skintest;

import foretress.intake.Plans;
import foretress.ledger.ByStaff;
import foretress.salon.ProductLine;
import foretress.salon.SettingsWords;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** How a skin test was put on: may it be made, and with what. */
@Path("/visits/{id}/skin-test/record")
public class SkinTestRecordPages {
    private static final int LONGEST_BATCH = 60;

    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record RecordPage(String id, String address, String client, ProductLine line, String shade, int waitHours,
        String readable, List<String> masking, String emergency, Form form,
        String submission, Mistakes mistakes) implements TemplateInstance {}

    private final ByStaff byStaff;
    private final SkinTestDoor door;
    private final SkinTestGate gate;
    private final TestConsent consent;
    private final SkinTestRecord record;
    private final Applications applications;
    private final TestMails letters;
    private final Overviews overviews;
    private final Plans plans;
    private final MaskingWords maskingWords;
    private final SkinWords say;
    private final SettingsWords settings;
    private final Clock clock;

    SkinTestRecordPages(SkinTestDoor door, SkinTestGate gate, TestConsent consent, SkinTestRecord record,
        Applications applications, TestMails letters, Overviews overviews, Plans plans, MaskingWords maskingWords,
        SkinWords say, SettingsWords settings, Clock clock, ByStaff byStaff) {
        this.byStaff = byStaff;
        this.door = door;
        this.gate = gate;
        this.consent = consent;
        this.record = record;
        this.applications = applications;
        this.letters = letters;
        this.overviews = overviews;
        this.plans = plans;
        this.maskingWords = maskingWords;
        this.say = say;
        this.settings = settings;
        this.clock = clock;
    }

    @GET
    public Response record(@RestPath UUID id) {
        Visit visit = door.visit(id);
        byStaff.looked("skin test page read", id);
        if (!ready(visit)) {
            return SkinTestDoor.back(visit, "");
        }
        var fields = new MultivaluedHashMap<String, String>();
        fields.putSingle("site", door.product(visit).line().site.name());
        return Response.ok(recordPage(visit, new Form(fields), UUID.randomUUID().toString(), new Mistakes())).build();
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response keep(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        Visit visit = door.visit(id);
        var form = new Form(posted);
        UUID submission =
            FormIds.of(form.one("submission")).orElseThrow(() -> new BadRequestException("a form without its name"));
        if (TestApplied.submitted(submission).isPresent()) {
            return SkinTestDoor.back(visit, "recorded");
        }
        if (!ready(visit)) {
            return SkinTestDoor.back(visit, "not-recorded");
        }
        var mistakes = new Mistakes();
        Optional<TestMethod> made = made(visit, form, mistakes);
        if (!mistakes.isEmpty()) {
            return FormAgain.with(recordPage(visit, form, submission.toString(), mistakes));
        }
        UUID test = applications.record(submission, visit.id, door.product(visit), made.orElseThrow(), door.staff());
        letters.page(test, false, door.staff().toString());
        return SkinTestDoor.back(visit, "recorded");
    }

    private Optional<TestMethod> made(Visit visit, Form form, Mistakes mistakes) {
        ProductLine line = door.product(visit).line();
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
        return mistakes.isEmpty() ? Optional.of(new TestMethod(door.product(visit).shade(), batch, mixing.orElseThrow(),
            site.orElseThrow(), form.one("site-words"),
            record.masking(visit), medicines.orElseThrow())) : Optional.empty();
    }

    private RecordPage recordPage(Visit visit, Form form, String submission, Mistakes mistakes) {
        PlannedProducts.Planned product = door.product(visit);
        int wait = plans.skinTest(visit).waitHours();
        return new RecordPage(visit.id.toString(), SkinTestDoor.address(visit), visit.client.fullName(), product.line(),
            product.shade(), wait,
            door.moment(clock.instant().plusSeconds(wait * 3600L), visit), maskingWords.of(record.masking(visit)),
            overviews.emergency(), form, submission, mistakes);
    }

    private boolean ready(Visit visit) {
        return gate.open(visit) && consent.signed(visit, door.product(visit));
    }
}
