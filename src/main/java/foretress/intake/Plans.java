package foretress.intake;

import foretress.assessment.Assessment;
import foretress.assessment.Policy;
import foretress.assessment.Stricter;
import foretress.plan.Owed;
import foretress.plan.OpeningHours;
import foretress.plan.OpeningHours.Hours;
import foretress.plan.TestPlan;
import foretress.questionnaire.Answers;
import foretress.salon.Policies;
import foretress.salon.Salon;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import io.quarkus.arc.All;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The tests a visit still owes, fitted between now and the visit inside the salon's opening hours. */
@Singleton
public class Plans {
    /** What the client comes in for once a test is running: that somebody looks at it. */
    public static final String READING = "reading";

    private final Assessments assessments;
    private final Policies policies;
    private final PlannedProducts planned;
    private final BookedChemistry chemistry;
    private final List<ChairRecord> records;
    private final Clock clock;

    Plans(Assessments assessments, Policies policies, PlannedProducts planned, BookedChemistry chemistry, @All List<ChairRecord> records,
          Clock clock) {
        this.assessments = assessments;
        this.policies = policies;
        this.planned = planned;
        this.chemistry = chemistry;
        this.records = records;
        this.clock = clock;
    }

    /** What must still be begun; a test that is running is not in it. */
    public TestPlan of(Visit visit, Assessment assessment) {
        TestPlan plan = whole(visit, assessment);
        Set<String> begun = running(visit).stream().map(ChairRecord.Running::test).collect(Collectors.toSet());
        return new TestPlan(plan.visit(), plan.owed().stream().filter(o -> !begun.contains(o.test())).toList(),
            plan.onTheDay().stream().filter(test -> !begun.contains(test)).toList());
    }

    /** What must still be begun as far as anybody knows: before the first answer, at least this. */
    public TestPlan of(Visit visit, Answers said) {
        return of(visit, said.byQuestion().isEmpty() ? assessments.atLeast(visit, said) : assessments.of(visit, said));
    }

    /** Tests that were begun for the visit and wait to be read, the next first. */
    public List<ChairRecord.Running> running(Visit visit) {
        return records.stream().flatMap(r -> r.running(visit).stream()).sorted(Comparator.comparing(ChairRecord.Running::readableFrom)).toList();
    }

    private TestPlan whole(Visit visit, Assessment assessment) {
        Salon salon = Salon.the();
        Policy policy = policies.effective();
        return TestPlan.of(assessment, chemistry.services(visit), visit.startsAt, policy, terms(visit, policy), hours(salon), clock.instant());
    }

    /** What policy and the planned product's leaflet ask of the skin test for this visit. */
    public Stricter skinTest(Visit visit) {
        return terms(visit, policies.effective());
    }

    private Stricter terms(Visit visit, Policy policy) {
        return Stricter.of(policy, planned.of(visit.id).map(p -> p.line().leaflet()));
    }

    /** What the desk must call the client in for, and by when; never why. */
    public Optional<Visit.Owed> first(Visit visit, Assessment assessment) {
        List<Owed> owed = of(visit, assessment).owed();
        return owed.stream().findFirst().map(o -> new Visit.Owed(o.test(), Optional.of(o.lastOpenStart().orElse(o.latestStart()))))
            .or(() -> running(visit).stream().findFirst().map(r -> new Visit.Owed(READING, Optional.of(visit.startsAt))));
    }

    public static OpeningHours hours(Salon salon) {
        Map<DayOfWeek, List<Hours>> week = Arrays.stream(DayOfWeek.values()).collect(Collectors.toMap(Function.identity(),
            d -> salon.hours().on(d).stream().map(s -> new Hours(s.from(), s.to())).toList()));
        return new OpeningHours(week, salon.zoneId());
    }
}
