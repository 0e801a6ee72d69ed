package foretress.skintest;

import foretress.intake.NextStep;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.util.Optional;

/** Once signed, the client finds the short visit among what comes next. */
@Singleton
class ShortVisitStep implements NextStep {
    @Override
    public Optional<Step> of(Visit visit) {
        return TestVisit.standing(visit.id)
            .map(planned -> new Step(
                TestMails.in(visit.client.language).short_visit_step(TestMails.moment(planned.startsAt(), visit)),
                "/answers/short-visit"));
    }
}
