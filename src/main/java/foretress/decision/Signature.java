package foretress.decision;

import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Weight;
import foretress.consent.Consents;
import foretress.consent.SignedConsent;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.Intake;
import foretress.intake.KeptAssessment;
import foretress.intake.Refusals;
import foretress.intake.TakenBackElsewhere;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether what the client signed last is still what is planned and found. */
@Singleton
public class Signature {
    /** What is no longer as it was signed. */
    public enum Changed { NEVER_SIGNED, ANSWERS, FINDINGS, TESTS, SERVICE }

    /** @param consent the newest signing, whether or not it still holds */
    public record Holds(Optional<SignedConsent> consent, Set<Changed> changed) {
        public Holds {
            changed = Set.copyOf(changed);
        }

        public boolean holds() {
            return changed.isEmpty();
        }
    }

    private final Consents consents;
    private final Assessments assessments;
    private final BookedChemistry chemistry;
    private final Intake intake;
    private final Refusals refusals;
    private final TakenBackElsewhere elsewhere;

    Signature(Consents consents, Assessments assessments, BookedChemistry chemistry, Refusals refusals, Intake intake,
        TakenBackElsewhere elsewhere) {
        this.intake = intake;
        this.consents = consents;
        this.assessments = assessments;
        this.chemistry = chemistry;
        this.refusals = refusals;
        this.elsewhere = elsewhere;
    }

    public Holds of(Visit visit, CurrentAssessment.Now now) {
        Optional<SignedConsent> signed = consents.latest(visit.id);
        return signed.map(consent -> new Holds(signed, changed(visit, consent, now)))
            .orElseGet(() -> new Holds(signed, Set.of(Changed.NEVER_SIGNED)));
    }

    /** What is found otherwise than when the client signed last; empty when nothing was ever signed. */
    public Optional<Difference> since(Visit visit, CurrentAssessment.Now now) {
        return consents.latest(visit.id).flatMap(signed -> KeptAssessment.madeAt(visit.id, signed.signedAt()))
            .map(assessments::read)
            .map(then -> Difference.between(then, now.assessment(), chemistry.services(visit)));
    }

    private Set<Changed> changed(Visit visit, SignedConsent signed, CurrentAssessment.Now now) {
        Set<Changed> changed = EnumSet.noneOf(Changed.class);
        if (!intake.isCodeOf(visit, SignedConsent.ANSWERS, signed.answersCode(), now.said())) {
            changed.add(Changed.ANSWERS);
        }
        if (AdaptedService.anySince(visit.id, signed.signedAt())) {
            changed.add(Changed.SERVICE);
        }
        Optional<Assessment> then = KeptAssessment.madeAt(visit.id, signed.signedAt()).map(assessments::read);
        changed.addAll(changed(then, now.assessment(), chemistry.services(visit)));
        if (elsewhere.since(visit, signed.signedAt())) {
            changed.add(Changed.FINDINGS);
        }
        if (refusals.changedSince(visit, signed.signedAt())) {
            changed.add(Changed.TESTS);
        }
        return changed;
    }

    /** @param then as it was found when the client signed; where nobody kept that, everything may have changed */
    static Set<Changed> changed(Optional<Assessment> then, Assessment now, List<Service> planned) {
        Set<Changed> changed = EnumSet.noneOf(Changed.class);
        if (then.isEmpty() || !Difference.between(then.get(), now, planned).none()) {
            changed.add(Changed.FINDINGS);
        }
        if (then.isEmpty() || !demands(then.get(), planned).equals(demands(now, planned))) {
            changed.add(Changed.TESTS);
        }
        return changed;
    }

    private static Set<String> demands(Assessment assessment, List<Service> services) {
        return assessment.findings().stream().filter(f -> weighs(f, services)).flatMap(f -> f.demands().stream())
            .collect(Collectors.toSet());
    }

    private static boolean weighs(Finding finding, List<Service> services) {
        return services.stream().anyMatch(s -> finding.on(s) != Weight.NOTHING_FOUND);
    }
}
