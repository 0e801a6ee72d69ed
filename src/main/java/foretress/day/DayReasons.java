package foretress.day;

import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Weight;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.KeptAssessment;
import foretress.knowledge.Knowledge;
import foretress.vault.Vault;
import foretress.visit.Visit;
import foretress.web.Language;
import jakarta.enterprise.context.RequestScoped;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jboss.logging.Logger;

/** The one finding that weighs most on each visit of a day, by its title: as many reads for thirty visits as for one. */
@RequestScoped
class DayReasons {
    private static final Logger LOG = Logger.getLogger(DayReasons.class);

    private final Assessments assessments;
    private final BookedChemistry chemistry;
    private final Knowledge knowledge;
    private final Vault vault;
    private final Language language;

    DayReasons(Assessments assessments, BookedChemistry chemistry, Knowledge knowledge, Vault vault,
        Language language) {
        this.assessments = assessments;
        this.chemistry = chemistry;
        this.knowledge = knowledge;
        this.vault = vault;
        this.language = language;
    }

    /** By visit; a visit that was not signed, or on which nothing weighs, is not in it. */
    Map<UUID, String> of(List<Visit> visits) {
        Map<UUID, Visit> signed = visits.stream().filter(v -> v.signed().isPresent())
            .collect(Collectors.toMap(v -> v.id, Function.identity()));
        List<KeptAssessment> kept = KeptAssessment.newest(signed.keySet());
        vault.fetchKeys(kept.stream().map(k -> k.clientId()).distinct().toList());
        Map<UUID, String> reasons = new HashMap<>();
        kept.forEach(k -> heaviest(signed.get(k.visitId()), k).ifPresent(title -> reasons.put(k.visitId(), title)));
        return reasons;
    }

    /** One record that cannot be read must not take the whole day away; its own page says what is wrong with it. */
    private Optional<String> heaviest(Visit visit, KeptAssessment kept) {
        try {
            return heaviest(visit, assessments.read(kept));
        } catch (RuntimeException damaged) {
            LOG.errorf("The assessment %s cannot be read: %s", kept.id(), damaged.getClass().getSimpleName());
            return Optional.empty();
        }
    }

    private Optional<String> heaviest(Visit visit, Assessment assessment) {
        List<Service> booked = chemistry.services(visit);
        return assessment.findings().stream()
            .filter(f -> f.speaksOn(booked) && weight(f, booked) != Weight.NOTHING_FOUND)
            .max(Comparator.comparing(f -> weight(f, booked)))
            .map(f -> knowledge.words(language.getTag()).finding(f, booked).title());
    }

    private static Weight weight(Finding finding, List<Service> booked) {
        return Weight.heaviest(booked.stream().map(finding::on).toList());
    }
}
