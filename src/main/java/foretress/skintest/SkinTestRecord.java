package foretress.skintest;

import foretress.assessment.Situation;
import foretress.assessment.SkinTestDoubts;
import foretress.assessment.SkinTestOutcome;
import foretress.assessment.Stricter;
import foretress.assessment.TestFact;
import foretress.assessment.TestStanding;
import foretress.intake.Assessments;
import foretress.intake.ChairRecord;
import foretress.intake.Intake;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answers;
import foretress.salon.Policies;
import foretress.salon.ProductLine;
import foretress.salon.ProductLines;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What the skin tests of a client say for one visit; every assessment takes it in. */
@ApplicationScoped
public class SkinTestRecord implements ChairRecord {
    private final TestStore tests;
    private final ProductLines lines;
    private final PlannedProducts planned;
    private final Policies policies;
    private final Knowledge knowledge;
    private final Intake intake;
    private final Assessments assessments;

    SkinTestRecord(TestStore tests, ProductLines lines, PlannedProducts planned, Policies policies, Knowledge knowledge,
        Intake intake,
        Assessments assessments) {
        this.tests = tests;
        this.lines = lines;
        this.planned = planned;
        this.policies = policies;
        this.knowledge = knowledge;
        this.intake = intake;
        this.assessments = assessments;
    }

    @Override
    public List<TestFact> tests(Visit visit) {
        return tests.ofClient(visit.client.id).stream().filter(told -> !Visit.isTakenBack(told.test().visitId()))
            .map(told -> fact(told, visit)).toList();
    }

    /** Tests for this visit in which nothing was found yet and that nobody has read after the wait. */
    @Override
    public List<Running> running(Visit visit) {
        return tests.ofVisit(visit.client.id, visit.id).stream()
            .filter(told -> !told.reacted() && told.readNegative(last(told, visit)).isEmpty())
            .map(told -> new Running(TestFact.SKIN_TEST,
                told.readNegative(told.test().readableFrom()).isPresent() ? last(told, visit)
                    : told.test().readableFrom()))
            .toList();
    }

    /** From when on its last reading can be made: the one after the wait, or a later one that findings ask for. */
    Instant last(TestFile told, Visit visit) {
        Instant again =
            told.test().appliedAt().plus(Duration.ofDays(assessments.readAgainDays(visit, intake.said(visit))));
        return again.isAfter(told.test().readableFrom()) ? again : told.test().readableFrom();
    }

    TestFact fact(TestFile told, Visit visit) {
        Optional<PlannedProducts.Planned> now = planned.of(visit.id);
        ProductLine used = lines.version(told.test().lineVersion()).orElseThrow();
        boolean same = now.filter(product -> ProductSameness.covers(used, told.made().shade(), product)).isPresent();
        ProductLine leaflet = now.map(PlannedProducts.Planned::line).filter(line -> same).orElse(used);
        Instant readable = readable(told, leaflet, visit);
        Optional<TestFile.Seen> read = told.readNegative(readable);
        LocalDate started = told.test().appliedAt().atZone(visit.zone()).toLocalDate();
        return new TestFact(TestFact.SKIN_TEST, told.result().orElse(SkinTestOutcome.NEGATIVE).code(), started,
            readOn(told, read, visit), read.isPresent(), same,
            told.test().visitId().equals(visit.id), told.masked(), overtaken(told, started, visit),
            Optional.of(leaflet.leaflet()));
    }

    /** From when on a reading proves something: after the wait, or later where findings ask for a later one. */
    private Instant readable(TestFile told, ProductLine leaflet, Visit visit) {
        Duration wait = Duration.ofHours(Stricter.of(policies.effective(), Optional.of(leaflet.leaflet())).waitHours());
        Duration again = Duration.ofDays(assessments.readAgainDays(visit, intake.said(visit)));
        return told.test().appliedAt().plus(wait.compareTo(again) > 0 ? wait : again);
    }

    private static Optional<LocalDate> readOn(TestFile told, Optional<TestFile.Seen> read, Visit visit) {
        return read.or(() -> told.counting().stream().filter(TestFile.Seen::byStaff).findFirst())
            .map(one -> one.entry().madeAt().atZone(visit.zone()).toLocalDate());
    }

    private boolean overtaken(TestFile told, LocalDate started, Visit visit) {
        Answers then = intake.saidBy(Visit.findById(told.test().visitId()), told.test().appliedAt());
        return !doubts().since(started, then, situation(visit)).isEmpty();
    }

    /** Everything that speaks against the test for that visit. */
    TestStanding standing(TestFile told, Visit visit) {
        return doubts().standing(fact(told, visit), situation(visit));
    }

    /** Why it does not lift the demand, each reason once: what nobody has read was not read too early either, and a reaction counts whoever told of it, and when. */
    List<TestStanding.Reason> doubts(TestFile told, Visit visit) {
        List<TestStanding.Reason> reasons = standing(told, visit).reasons();
        if (told.reacted()) {
            return reasons.stream()
                .filter(one -> one != TestStanding.Reason.NOT_READ && one != TestStanding.Reason.READ_TOO_EARLY)
                .toList();
        }
        return reasons.contains(TestStanding.Reason.NOT_READ)
            ? reasons.stream().filter(one -> one != TestStanding.Reason.READ_TOO_EARLY).toList() : reasons;
    }

    /** Facts that may hide a reaction now, by what was answered. */
    List<String> masking(Visit visit) {
        return doubts().masking(situation(visit));
    }

    private Situation situation(Visit visit) {
        return assessments.told(visit, intake.said(visit));
    }

    private SkinTestDoubts doubts() {
        return knowledge.skinTestDoubts();
    }
}
