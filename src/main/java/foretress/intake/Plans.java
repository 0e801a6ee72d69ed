package foretress.intake;

import foretress.assessment.Assessment;
import foretress.knowledge.Knowledge;
import foretress.plan.Owed;
import foretress.plan.OpeningHours;
import foretress.plan.OpeningHours.Hours;
import foretress.plan.TestPlan;
import foretress.salon.Salon;
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
    private final Knowledge knowledge;
    private final BookedChemistry chemistry;
    private final Clock clock;

    Plans(Knowledge knowledge, BookedChemistry chemistry, Clock clock) {
        this.knowledge = knowledge;
        this.chemistry = chemistry;
        this.clock = clock;
    }

    public TestPlan of(Visit visit, Assessment assessment) {
        Salon salon = Salon.the();
        return TestPlan.of(assessment, chemistry.services(visit), visit.startsAt, knowledge.policy(salon.jurisdiction), hours(salon),
            clock.instant());
    }

    /** What the desk must call the client in for, and by when; never why. */
    Optional<Visit.Owed> first(Visit visit, Assessment assessment) {
        List<Owed> owed = of(visit, assessment).owed();
        return owed.stream().findFirst().map(o -> new Visit.Owed(o.test(), Optional.of(o.lastOpenStart().orElse(o.latestStart()))));
    }

    private static OpeningHours hours(Salon salon) {
        Map<DayOfWeek, List<Hours>> week = Arrays.stream(DayOfWeek.values()).collect(Collectors.toMap(Function.identity(),
            d -> salon.hours().on(d).stream().map(s -> new Hours(s.from(), s.to())).toList()));
        return new OpeningHours(week, salon.zoneId());
    }
}
