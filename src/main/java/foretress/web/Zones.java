package foretress.web;

import java.time.ZoneId;
import java.util.Set;
import java.util.stream.Collectors;

/** Time zones a person may name. The calendar library registers zones of its own that have no rules; those are nobody's. */
public final class Zones {
    private Zones() {}

    public static Set<String> ids() {
        return ZoneId.getAvailableZoneIds().stream().filter(id -> ZoneId.of(id).getRules() != null)
            .collect(Collectors.toUnmodifiableSet());
    }
}
