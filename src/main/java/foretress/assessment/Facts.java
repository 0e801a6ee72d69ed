package foretress.assessment;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Every fact of one client at one moment, by its id. */
public record Facts(Map<String, FactValue> byId) {
    public Facts {
        byId = Collections.unmodifiableMap(new LinkedHashMap<>(byId)); // keeps its order, so that a stored one reads the same
    }

    public static Facts of(List<FactValue> values) {
        return new Facts(
            values.stream().collect(Collectors.toMap(FactValue::fact, v -> v, (a, b) -> b, LinkedHashMap::new)));
    }

    /** The value of a fact; one that is missing or could not be found is a fault, never a good class. */
    public FactValue get(String fact) {
        FactValue value = byId.get(fact);
        if (value == null) {
            throw new IllegalStateException("no fact is called " + fact);
        }
        value.fault().ifPresent(fault -> {
            throw new IllegalStateException("%s could not be found: %s".formatted(fact, fault));
        });
        return value;
    }

    public Facts with(FactValue value) {
        Map<String, FactValue> changed = new LinkedHashMap<>(byId);
        changed.put(value.fact(), value);
        return new Facts(changed);
    }
}
