package foretress.told;

import foretress.intake.Assessments;
import foretress.intake.Intake;
import foretress.intake.NextStep;
import foretress.intake.StrandMaps;
import foretress.knowledge.Knowledge;
import foretress.visit.Visit;
import jakarta.enterprise.context.RequestScoped;
import java.util.Optional;

/** Once signed, a client who told of anything that may still be in the hair, or who does not know, finds where photos are sent. */
@RequestScoped
class PhotosStep implements NextStep {
    private final SentPhotos photos;
    private final Assessments assessments;
    private final Intake intake;
    private final Knowledge knowledge;
    private final ClientSpeech speech;

    PhotosStep(SentPhotos photos, Assessments assessments, Intake intake, Knowledge knowledge, ClientSpeech speech) {
        this.photos = photos;
        this.assessments = assessments;
        this.intake = intake;
        this.knowledge = knowledge;
        this.speech = speech;
    }

    @Override
    public Optional<Step> of(Visit visit) {
        boolean wanted = SentPhotos.mayBeSent(visit) && (helps(visit) || !photos.of(visit.id).isEmpty());
        return wanted ? Optional.of(new Step(speech.pictures().send_step(), SentPhotoPages.AT)) : Optional.empty();
    }

    private boolean helps(Visit visit) {
        return !StrandMaps.map(assessments.told(visit, intake.said(visit)), knowledge, speech.words()).lanes()
            .isEmpty();
    }
}
