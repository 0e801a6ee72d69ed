package foretress.bench;

import foretress.assessment.Policy;
import foretress.assessment.TestFact;
import foretress.intake.BookedChemistry;
import foretress.intake.ChairRecord;
import foretress.intake.Intake;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.SaidTreatment;
import foretress.salon.Policies;
import foretress.vault.SealedJson;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The bench's results as an assessment takes them in. A warning stands for every later visit until a newer test; a good result
 * of elasticity, porosity or a cutting counts for its own visit only; a quiet metal test counts until the hair was treated again.
 */
@Singleton
public class BenchFacts implements ChairRecord {
    private static final Set<BenchKind> ONE_VISIT =
        Set.of(BenchKind.ELASTICITY, BenchKind.POROSITY, BenchKind.CUTTING);

    private final BenchReadings readings;
    private final SealedJson bodies;
    private final Intake intake;
    private final BookedChemistry chemistry;
    private final Visits visits;
    private final Knowledge knowledge;
    private final Policies policies;
    private final Clock clock;

    BenchFacts(BenchReadings readings, SealedJson bodies, Intake intake, BookedChemistry chemistry,
        Visits visits,
        Knowledge knowledge, Policies policies, Clock clock) {
        this.readings = readings;
        this.bodies = bodies;
        this.intake = intake;
        this.chemistry = chemistry;
        this.visits = visits;
        this.knowledge = knowledge;
        this.policies = policies;
        this.clock = clock;
    }

    @Override
    public List<TestFact> tests(Visit visit) {
        return BenchRecord.ofClient(visit.client.id).stream().filter(test -> !Visit.isTakenBack(test.visitId()))
            .flatMap(test -> facts(visit, test).stream()).toList();
    }

    @Override
    public Optional<Integer> measuredLengthCm(Visit visit) {
        return BenchRecord.ofClient(visit.client.id).stream()
            .filter(t -> t.visitId().equals(visit.id) && t.kind() == BenchKind.LENGTH && !t.struck()).findFirst()
            .map(t -> bodies.open(t, BenchLengthBody.class).cm());
    }

    /** What one test says for this visit, of the whole and of the roots; empty for what says nothing, and for what no fact is made of. */
    List<TestFact> facts(Visit visit, BenchRecord test) {
        String id = test.kind().code();
        Optional<TestFact> whole = readings.outcome(test).filter(any -> TestFact.OUTCOMES.containsKey(id))
            .map(outcome -> fact(visit, test, id, outcome));
        Optional<TestFact> roots = whole.flatMap(said -> readings.rootsOutcome(test))
            .map(outcome -> fact(visit, test, id.replaceFirst("-test$", "-of-roots"), outcome));
        return Stream.of(whole, roots).flatMap(Optional::stream).toList();
    }

    private TestFact fact(Visit visit, BenchRecord test, String id, String outcome) {
        LocalDate started = test.begun().atZone(visit.zone()).toLocalDate();
        boolean thisVisit = test.visitId().equals(visit.id);
        boolean overtaken = ONE_VISIT.contains(test.kind()) && !thisVisit || treatedSince(visit, test, started);
        return new TestFact(id, outcome, started, read(test, started), waitKept(test), thisVisit,
            thisVisit, false, overtaken);
    }

    /** A metal test is read whole only with the look on the next day. */
    private Optional<LocalDate> read(BenchRecord test, LocalDate started) {
        return test.kind() == BenchKind.METAL ? nextDay(test).map(look -> LocalDate.parse(look.day()))
            : Optional.of(started);
    }

    private boolean waitKept(BenchRecord test) {
        long hours = policy().incompatibilityTestHours();
        return test.kind() != BenchKind.METAL
            || nextDay(test).filter(l -> l.afterMillis() >= Duration.ofHours(hours).toMillis()).isPresent();
    }

    private Optional<BenchMetalBody.NextDay> nextDay(BenchRecord test) {
        return bodies.open(test, BenchMetalBody.class).nextDay();
    }

    /** A service was done here since, or the client tells of a treatment that was not told of when the test was made. */
    private boolean treatedSince(Visit visit, BenchRecord test, LocalDate started) {
        return visits.of(test.clientId()).stream()
            .filter(v -> v.startsAt.isAfter(test.begun()) && mayHaveTakenPlace(v))
            .anyMatch(v -> !knowledge.chemistries().dry(chemistry.of(v))) || toldSince(visit, test, started);
    }

    /** Consent taken back hides what was done and does not undo it: such a visit in the past counts as one that was. */
    private boolean mayHaveTakenPlace(Visit visit) {
        return visit.state == State.CLOSED
            || visit.state == State.WITHDRAWN && !visit.startsAt.isAfter(clock.instant());
    }

    /** As a test keeps it. How many cm it was makes it no other treatment: tests from before that was asked still know it. */
    static String told(SaidTreatment treatment) {
        return treatment.toString().replaceFirst(", extent=[^]]*", "");
    }

    private boolean toldSince(Visit visit, BenchRecord test, LocalDate started) {
        List<String> known = List.of(bodies.open(test.clientId(), test.place("told"), test.told(), String[].class));
        LocalDate today = clock.instant().atZone(visit.zone()).toLocalDate();
        return treatments(intake.said(visit)).filter(t -> !known.contains(told(t)))
            .anyMatch(t -> !t.when().span(today, policy().hemisphere()).latest().isBefore(started));
    }

    static Stream<SaidTreatment> treatments(Answers said) {
        return said.byQuestion().values().stream()
            .flatMap(a -> a instanceof Answer.Treatments list ? list.list().stream() : Stream.empty());
    }

    private Policy policy() {
        return policies.effective();
    }
}
