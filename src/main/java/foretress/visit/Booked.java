package foretress.visit;

import java.util.List;

/** A service asked for, with the steps that stay in it. */
public record Booked(String serviceId, List<String> stepIds) {
    public Booked {
        stepIds = List.copyOf(stepIds);
        if (serviceId.isBlank() || stepIds.isEmpty()) {
            throw new IllegalArgumentException("A booked service needs a name and at least one step: " + serviceId);
        }
    }
}
