package foretress.skintest;

import foretress.assessment.TestFact;
import foretress.consent.ConsentInput;
import foretress.consent.Consents;
import foretress.consent.Evidence;
import foretress.consent.HowSigned;
import foretress.consent.PaperSize;
import foretress.consent.SignatureMark;
import foretress.consent.SignedConsent;
import foretress.intake.Guardians;
import foretress.intake.Intake;
import foretress.intake.SalonWords;
import foretress.knowledge.Knowledge;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The consent to one skin test, read and signed on the salon's tablet before the product touches the skin. */
@Singleton
class TestConsent {
    private static final String PAGE = "skin-test";

    private final Consents consents;
    private final Intake intake;
    private final SalonWords salonWords;
    private final Knowledge knowledge;
    private final Guardians guardians;
    private final Clock clock;

    TestConsent(Consents consents, Intake intake, SalonWords salonWords, Knowledge knowledge, Guardians guardians,
        Clock clock) {
        this.guardians = guardians;
        this.consents = consents;
        this.intake = intake;
        this.salonWords = salonWords;
        this.knowledge = knowledge;
        this.clock = clock;
    }

    /** Who pressed what. */
    record Act(UUID submission, String textSha256, List<String> agreed, Instant shown, Staff staff,
        Optional<Evidence.Guardian> guardian, Optional<Evidence.Device> device) {}

    /** The text is built from the client's own earlier signing, which tells who they are; without one there is none. */
    boolean possible(Visit visit) {
        return consents.latest(visit.id).isPresent();
    }

    boolean signed(Visit visit, PlannedProducts.Planned product) {
        return TestAgreement.open(visit.id, product.line().lineId, product.shade()).isPresent();
    }

    List<SignedConsent> papers(UUID visitId) {
        return consents.all(visitId, ConsentInput.Purpose.SKIN_TEST);
    }

    ConsentInput input(Visit visit, PlannedProducts.Planned product) {
        String language = visit.client.language;
        AftercareWords say = TestMails.in(language);
        String stylist = Staff.nameOf(visit.stylistId);
        return ConsentInput.ofSkinTest(language, salonWords.of(Salon.the(), language),
            new ConsentInput.Client(visit.client.id, visit.client.fullName(), visit.client.birthDate()),
            new ConsentInput.Visit(visit.id, visit.startsThere(), stylist,
                List.of(say.consent_product(product.line().name, product.shade()))),
            new ConsentInput.Test(TestFact.SKIN_TEST, say.consent_test(product.line().name, product.shade())))
            .salted(consents.salt(visit.client.id, visit.id));
    }

    /** @throws Consents.TextChanged when another text was read */
    void sign(Visit visit, PlannedProducts.Planned product, SignatureMark mark, Act act) {
        if (act.guardian().isEmpty() && guardians.needed(visit)) {
            throw new IllegalStateException("a child does not sign alone");
        }
        PaperSize size = PaperSize.valueOf(Salon.the().paperSize.name());
        consents.sign(input(visit, product), mark, evidence(visit, act), size, (locked, signed) -> {
            new TestAgreement(signed.id(), visit.id, product.line().lineId, product.shade()).persist();
        });
    }

    private Evidence evidence(Visit visit, Act act) {
        HowSigned earlier = consents.evidence(consents.latest(visit.id).orElseThrow()).how();
        Evidence known = earlier.evidence();
        Instant now = clock.instant();
        return new Evidence(act.submission(),
            new Evidence.Invited(known.invited().invitationId(), Evidence.Way.TABLET, act.staff().name, act.shown(),
                act.shown()),
            known.birthDate(), known.healthConsent(),
            new Evidence.Text(visit.client.language, act.textSha256(),
                intake.code(visit, SignedConsent.ANSWERS, intake.said(visit)), knowledge.ruleSet().hash()),
            new Evidence.Seen(List.of(new Evidence.PageShown(PAGE, act.shown(), now)), known.seen().readBackAt(),
                act.shown()),
            act.agreed(), Evidence.Moment.of(now, visit.zone()), act.device(), act.guardian());
    }
}
