package foretress.intake;

import foretress.assessment.Policy;
import foretress.consent.ConsentInput;
import foretress.consent.ConsentWords;
import foretress.consent.Notice;
import foretress.knowledge.Knowledge;
import foretress.ledger.Ledger;
import foretress.salon.Salon;
import foretress.visit.Visit;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** The notice in the client's language, and what the client said to it. */
@ApplicationScoped
public class NoticeConsent {
    private final Knowledge knowledge;
    private final SalonWords salonWords;
    private final Guardians guardians;
    private final Ledger ledger;
    private final Clock clock;

    NoticeConsent(Knowledge knowledge, SalonWords salonWords, Guardians guardians, Ledger ledger, Clock clock) {
        this.guardians = guardians;
        this.knowledge = knowledge;
        this.salonWords = salonWords;
        this.ledger = ledger;
        this.clock = clock;
    }

    Notice of(String language) {
        Salon salon = Salon.the();
        Policy policy = knowledge.policy(salon.jurisdiction);
        ConsentInput.Salon particulars = salonWords.of(salon, language);
        return Notice.of(language, particulars, Notice.Terms.of(policy), ConsentWords.in(language));
    }

    /** Whether the client agreed that the salon holds their answers for this visit. */
    public boolean given(UUID visitId) {
        return HealthConsent.given(visitId);
    }

    /** When the client last said no to it, or took the yes back. */
    public Optional<Instant> takenBack(UUID visitId) {
        return HealthConsent.newest(visitId).filter(consent -> !consent.isGiven()).map(HealthConsent::saidAt);
    }

    /**
     * The client agrees; from here on answers are kept.
     *
     * @param guardian who agrees too, for a client too young to agree alone
     * @throws IllegalStateException when one is needed and nobody is named
     */
    @Transactional
    public void give(UUID visitId, String language, Optional<Guardians.Named> guardian) {
        if (guardian.isEmpty() && guardians.needed(Visit.findById(visitId))) {
            throw new IllegalStateException("a child does not agree alone");
        }
        if (!HealthConsent.given(visitId)) {
            keep(visitId, language, true, guardian);
            ledger.note("client", "consent to hold health answers given", visitId.toString());
        }
    }

    /**
     * The client's yes before an earlier visit, where it was said to the very notice that stands now, in this language, and not taken
     * back since. A child's is asked for again.
     */
    Optional<HealthConsent> standing(Visit visit, String language) {
        return guardians.needed(visit) ? Optional.empty()
            : HealthConsent.newestOf(visit.client.id).filter(HealthConsent::isGiven)
                .filter(consent -> consent.noticeSha256().equals(of(language).sha256()));
    }

    /** It holds for this visit too; it was said when it was said. */
    void stillGiven(UUID visitId, HealthConsent earlier) {
        earlier.forVisit(Visit.findById(visitId)).persist();
        ledger.note("client", "consent to hold health answers still stands", visitId.toString());
    }

    /** A refusal is noted without a word about health: the desk hands out the paper form. */
    @Transactional
    void refuse(UUID visitId, String language) {
        if (!HealthConsent.refused(visitId)) {
            keep(visitId, language, false, Optional.empty());
            ledger.note("client", "consent to hold health answers refused", visitId.toString());
        }
    }

    /** The yes is taken back: from now on it stands for no other visit either. */
    @Transactional
    public void takeBack(UUID visitId, String language) {
        keep(visitId, language, false, Optional.empty());
    }

    private void keep(UUID visitId, String language, boolean given, Optional<Guardians.Named> guardian) {
        var consent = new HealthConsent(Visit.findById(visitId), given, clock.instant(), of(language));
        guardian.ifPresent(one -> guardians.keep(consent, one));
        consent.persist();
    }
}
