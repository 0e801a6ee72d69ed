package foretress.intake;

import foretress.assessment.Assessment;
import foretress.assessment.Policy;
import foretress.assessment.Stricter;
import foretress.plan.Owed;
import foretress.plan.OpeningHours;
import foretress.plan.OpeningHours.Hours;
import foretress.plan.TestPlan;
import foretress.salon.Policies;
import foretress.salon.Salon;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The tests a visit still owes, fitted between now and the visit inside the salon's opening hours. */
@Singleton
public class Plans {
    private final Policies policies;
    private final PlannedProducts planned;
    private final BookedChemistry chemistry;
    private final Clock clock;

    Plans(Policies policies, PlannedProducts planned, BookedChemistry chemistry, Clock clock) {
        this.policies = policies;
        this.planned = planned;
        this.chemistry = chemistry;
        this.clock = clock;
    }

    public TestPlan of(Visit visit, Assessment assessment) {
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
    Optional<Visit.Owed> first(Visit visit, Assessment assessment) {
        List<Owed> owed = of(visit, assessment).owed();
        return owed.stream().findFirst().map(o -> new Visit.Owed(o.test(), Optional.of(o.lastOpenStart().orElse(o.latestStart()))));
    }

    public static OpeningHours hours(Salon salon) {
        Map<DayOfWeek, List<Hours>> week = Arrays.stream(DayOfWeek.values()).collect(Collectors.toMap(Function.identity(),
            d -> salon.hours().on(d).stream().map(s -> new Hours(s.from(), s.to())).toList()));
        return new OpeningHours(week, salon.zoneId());
    }
}
