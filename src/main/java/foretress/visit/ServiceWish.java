package foretress.visit;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Which other service the client asked for; a room above knows. */
public interface ServiceWish {
    /** The id of the service. */
    Optional<String> of(Visit visit);

    /** The same of many visits at once, by their ids; who asked for nothing is left out. */
    Map<UUID, String> of(Collection<Visit> visits);
}
