package foretress.decision;

import foretress.assessment.Weight;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What was decided about one service.
 *
 * @param serviceId as planned at the moment of the decision
 * @param stepIds the steps that stayed in
 * @param bookedId the service first booked in its place, when that was another one
 * @param standing where it stood, the heaviest of today's and earlier findings
 * @param until the first day it may be thought of again; for a postponed one
 * @param conditions what must be kept to, in the decider's own words; blank when it goes ahead as it is
 * @param alternative id of the service proposed instead
 * @param against findings that stood in the way and were gone against
 */
public record ServiceDecision(String serviceId, List<String> stepIds, Optional<String> bookedId, Weight standing,
    Verdict verdict,
    Optional<LocalDate> until, String conditions, Optional<String> alternative, List<Against> against) {
    public ServiceDecision {
        stepIds = List.copyOf(stepIds);
        against = List.copyOf(against);
    }

    /** A finding gone against, and what it weighed. */
    public record Against(String ruleId, Weight weight) {}
}
