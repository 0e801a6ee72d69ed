package foretress.knowledge;

import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Weight;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One case: a client before a visit, and what must come out.
 *
 * @param findings rules that must weigh on the service
 * @param not rules that must not
 * @param demands tests that the findings on the service ask for
 * @param weights what named rules must weigh on the service
 * @param standings where other services must stand
 */
record Case(String file, String name, Situation situation, Service service, Optional<Weight> standing, List<String> findings,
            List<String> not, List<String> demands, Map<String, Weight> weights, Map<String, Weight> standings) {}
