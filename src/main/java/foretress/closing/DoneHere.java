package foretress.closing;

import foretress.assessment.Placing;
import foretress.assessment.RuleSet;
import foretress.assessment.Service;
import foretress.assessment.Step;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidTreatment;
import foretress.visit.Booked;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A service done in this salon, as an entry of the hair's history; where its place is not certain, the larger part of the hair. */
public final class DoneHere {
    private DoneHere() {}

    /** One entry for each step that leaves something in or on the hair; a cut or a lash tint leaves none. */
    public static List<SaidTreatment> of(Booked done, LocalDate day, RuleSet rules) {
        Placing placing = rules.service(done.serviceId()).map(Service::placing).orElse(Placing.ANYWHERE);
        return done.stepIds().stream().flatMap(id -> rules.step(id).stream()).flatMap(step -> what(step, placing)
            .map(what -> new SaidTreatment(what, new SaidDate.OnDay(day), zone(step, placing), "salon", "once"))
            .stream()).distinct().toList();
    }

    private static Optional<String> what(Step step, Placing placing) {
        return Optional.ofNullable(placing.countsAs().get(step.id())).or(step.afterwards()::countsAs);
    }

    private static String zone(Step step, Placing placing) {
        return placing.foundIn().or(step.afterwards()::foundIn).orElse(Placing.WHOLE);
    }
}
