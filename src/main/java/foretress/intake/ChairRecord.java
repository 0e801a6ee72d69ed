package foretress.intake;

import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.LookedUp;
import foretress.assessment.TestFact;
import foretress.hair.Cut;
import foretress.hair.Growth;
import foretress.questionnaire.SaidTreatment;
import foretress.visit.Visit;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What a room above keeps of tests and measurements; an assessment takes in every bean of this kind. */
public interface ChairRecord {
    /** Tests of this client that may bear on this visit, those of earlier visits included, as they stand for it. */
    default List<TestFact> tests(Visit visit) {
        return List.of();
    }

    /** A test that was begun for this visit and waits to be read. */
    record Running(String test, Instant readableFrom) {}

    default List<Running> running(Visit visit) {
        return List.of();
    }

    /** The longest hair as staff measured it for this visit, drawn straight, in cm. */
    default Optional<Integer> measuredLengthCm(Visit visit) {
        return Optional.empty();
    }

    /** Cuts to a length that staff recorded for this client. */
    default List<Cut> cuts(Visit visit) {
        return List.of();
    }

    /** How fast this client's hair grows, where staff measured the band of new growth under a dated colour. */
    default Optional<Growth> growth(Visit visit) {
        return Optional.empty();
    }

    /** Doctors' words about this client, as they stand for this visit; they are among its tests too. */
    default List<TestFact> words(Visit visit) {
        return List.of();
    }

    /** Medicines that staff have looked up, for every client. */
    default List<LookedUp> lookedUp() {
        return List.of();
    }

    /** What was done to this client's hair here at earlier visits: it need not be asked again. */
    default List<SaidTreatment> treatments(Visit visit) {
        return List.of();
    }

    /** What staff saw go wrong at earlier visits, and what the client told of a reaction, as findings of this one. */
    default List<EarlierFindings.Earlier> wentWrong(Visit coming) {
        return List.of();
    }

    /** Findings of earlier visits that stand although today's answers do not make them; they weigh beside today's. */
    default List<Finding> earlier(Visit visit, Assessment now) {
        return List.of();
    }
}
