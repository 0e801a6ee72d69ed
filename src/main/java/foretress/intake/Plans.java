package foretress.intake;

import foretress.assessment.Policy;
import foretress.assessment.Service;
import foretress.assessment.Stricter;
import foretress.plan.Owed;
import foretress.plan.Owing;
import foretress.plan.TestPlan;
import foretress.plan.Waits;
import foretress.questionnaire.Answers;
import foretress.salon.Policies;
import foretress.salon.Salon;
import foretress.visit.Foresight;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import io.quarkus.arc.All;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The tests a visit still owes, fitted between now and the visit inside the salon's opening hours. */
@Singleton
public class Plans implements Foresight {
    /** What the client comes in for once a test is running: that somebody looks at it. */
    public static final String READING = "reading";
    /** Nothing can be tested before something is cleared up with the client. */
    public static final String CLEAR_UP = "clear-up";
    /** The client does not want a test that comes first: somebody talks with them before they are called in for anything. */
    public static final String TALK = "talk";

    private final Assessments assessments;
    private final Policies policies;
    private final PlannedProducts planned;
    private final List<ChairRecord> records;
    private final Refusals refusals;
    private final Clock clock;

    Plans(Assessments assessments, Policies policies, PlannedProducts planned, @All List<ChairRecord> records,
        Refusals refusals, Clock clock) {
        this.assessments = assessments;
        this.policies = policies;
        this.planned = planned;
        this.records = records;
        this.refusals = refusals;
        this.clock = clock;
    }

    /**
     * What must still be begun; a test that is running is not in it. Before the first answer it is what is owed at least,
     * whatever is answered.
     */
    public TestPlan of(Visit visit, Answers said) {
        return still(visit, assessments.owing(visit, said), running(visit));
    }

    private TestPlan still(Visit visit, Owing owing, List<ChairRecord.Running> running) {
        return whole(visit, owing).without(running.stream().map(ChairRecord.Running::test).collect(Collectors.toSet()));
    }

    /** The same for services that could be booked in place of those that are. */
    public TestPlan instead(Visit visit, Answers said, List<Service> planned) {
        return still(visit, assessments.owing(visit, said, planned), running(visit));
    }

    @Override
    public TestPlan plan(Visit visit) {
        return of(visit, Answers.NONE);
    }

    /** Everything that is owed, tests that are running included: what the client agrees to. */
    public List<String> owed(Visit visit, Answers said) {
        return assessments.owing(visit, said).tests();
    }

    /** Tests that were begun for the visit and wait to be read, the next first. */
    public List<ChairRecord.Running> running(Visit visit) {
        return records.stream().flatMap(r -> r.running(visit).stream())
            .sorted(Comparator.comparing(ChairRecord.Running::readableFrom)).toList();
    }

    private TestPlan whole(Visit visit, Owing owing) {
        return TestPlan.of(owing, visit.startsAt, waits(visit, owing.readAgainDays()), Salon.the().hours(),
            clock.instant());
    }

    private Waits waits(Visit visit, int readAgainDays) {
        Policy policy = policies.effective();
        return new Waits(policy, terms(visit, policy), readAgainDays,
            visit.client.birthDate().map(policy::oldEnough));
    }

    /** What policy and the planned product's leaflet ask of the skin test for this visit. */
    public Stricter skinTest(Visit visit) {
        return terms(visit, policies.effective());
    }

    private Stricter terms(Visit visit, Policy policy) {
        return Stricter.of(policy, planned.of(visit.id).map(p -> p.line().leaflet()));
    }

    /** What the desk must call the client in for, and by when; never why. */
    public Optional<Visit.Owed> first(Visit visit, Answers said) {
        Owing owing = assessments.owing(visit, said);
        List<ChairRecord.Running> running = running(visit);
        TestPlan plan = still(visit, owing, running);
        return talk(visit, owing, plan)
            .or(() -> plan.owed().stream().findFirst().map(o -> new Visit.Owed(o.test(), Optional.of(o.latestStart()))))
            .or(() -> running.stream().findFirst()
                .map(r -> new Visit.Owed(READING, Optional.of(visit.startsAt))))
            .or(() -> clearedUpBy(visit, plan).map(by -> new Visit.Owed(CLEAR_UP, Optional.of(by))));
    }

    /** Nobody comes in for a visit that does not go ahead; the talk comes no later than the test would have. */
    private Optional<Visit.Owed> talk(Visit visit, Owing owing, TestPlan plan) {
        Set<String> refused = refusals.of(visit);
        if (owing.tests().stream().noneMatch(refused::contains)) {
            return Optional.empty();
        }
        Stream<Instant> starts = plan.owed().stream().filter(o -> refused.contains(o.test())).map(Owed::latestStart);
        return Optional
            .of(new Visit.Owed(TALK, Optional.of(starts.min(Comparator.naturalOrder()).orElse(visit.startsAt))));
    }

    /** The last moment at which a test could begin that would prove nothing now. */
    private Optional<Instant> clearedUpBy(Visit visit, TestPlan plan) {
        return TestPlan.of(plan.waiting(), visit.startsAt, waits(visit, 0), Salon.the().hours(), clock.instant()).owed()
            .stream()
            .map(Owed::latestStart).min(Comparator.naturalOrder());
    }
}
