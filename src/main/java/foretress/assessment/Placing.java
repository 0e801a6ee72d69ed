package foretress.assessment;

import java.util.Map;
import java.util.Optional;

/**
 * Where on the hair a service goes.
 *
 * @param appliedTo the zone that is filled in beforehand when the service is closed
 * @param foundIn the zone of the hair its traces are found in later; empty where its steps say, or nobody: then the whole of it
 * @param countsAs by step, the treatment it is in this service, where that is another than everywhere else
 */
public record Placing(String appliedTo, Optional<String> foundIn, Map<String, String> countsAs) {
    public static final String WHOLE = "whole";
    public static final Placing ANYWHERE = new Placing(WHOLE, Optional.empty(), Map.of());

    public Placing {
        countsAs = Map.copyOf(countsAs);
    }
}
