package foretress.consultation;

import foretress.assessment.Assessment;
import foretress.consent.ConsentCopies;
import foretress.consent.Consents;
import foretress.consent.SignedConsent;
import foretress.consultation.VisitView.Folded;
import foretress.consultation.VisitView.Paper;
import foretress.consultation.VisitView.Point;
import foretress.consultation.VisitView.Since;
import foretress.decision.DecisionText;
import foretress.decision.Difference;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.Intake;
import foretress.intake.KeptAssessment;
import foretress.questionnaire.Answers;
import foretress.told.SentPhotoViews;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.ChairTime;
import foretress.web.Language;
import foretress.web.StylistWords;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** What lies folded behind a visit's first screen: what changed, notes, answers, papers. */
@RequestScoped
class VisitFolds {
    private final Intake intake;
    private final Assessments assessments;
    private final BookedChemistry chemistry;
    private final Consents consents;
    private final ConsentCopies copies;
    private final Language language;
    private final Visits visits;
    private final DecisionText text;
    private final AnswerChapters chapters;
    private final SentPhotoViews photos;
    private final StylistWords say;
    private final ChairTime time;

    VisitFolds(Intake intake, Assessments assessments, BookedChemistry chemistry, Consents consents,
        ConsentCopies copies, Language language, Visits visits, DecisionText text, AnswerChapters chapters,
        SentPhotoViews photos, StylistWords say, ChairTime time) {
        this.intake = intake;
        this.assessments = assessments;
        this.chemistry = chemistry;
        this.consents = consents;
        this.copies = copies;
        this.language = language;
        this.visits = visits;
        this.text = text;
        this.chapters = chapters;
        this.photos = photos;
        this.say = say;
        this.time = time;
    }

    Folded of(Visit visit, List<Point> notes, Assessment assessment, Answers said) {
        return new Folded(notes, since(visit, assessment, said), chapters.of(visit, said),
            chapters.brief(visit, said), photos.of(visit), papers(visit));
    }

    /** Answers given both times that differ, and what is found otherwise; empty for a first visit. */
    private Optional<Since> since(Visit visit, Assessment assessment, Answers said) {
        Optional<Visit> last = visits.of(visit.client.id).stream()
            .filter(v -> v.state == State.CLOSED && v.startsAt.isBefore(visit.startsAt)).findFirst();
        return last.map(v -> {
            Answers then = intake.said(v);
            List<Difference> found = KeptAssessment.newest(v.id).map(assessments::read)
                .map(kept -> Difference.between(kept, assessment, chemistry.services(visit))).stream().toList();
            return new Since(time.day(v.startsThere()) + " " + v.startsThere().getYear(),
                text.answers(both(then, said), both(said, then)),
                found.stream().flatMap(d -> text.changes(d).stream()).toList());
        });
    }

    private static Answers both(Answers these, Answers others) {
        return new Answers(these.byQuestion().entrySet().stream().filter(e -> others.to(e.getKey()).isPresent())
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
    }

    private List<Paper> papers(Visit visit) {
        List<SignedConsent> signed = consents.all(visit.id);
        Set<UUID> copied = copies.of(signed, language.getTag());
        return signed.stream()
            .map(c -> new Paper(c.versionNo(),
                say.consultation_paper(c.versionNo(), time.dayAndTime(c.signedAt().atZone(visit.zone()))),
                copied.contains(c.id())))
            .toList();
    }
}
