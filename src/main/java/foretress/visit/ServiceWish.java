package foretress.visit;

import java.util.Optional;

/** Which other service the client asked for; a room above knows. */
public interface ServiceWish {
    /** The id of the service. */
    Optional<String> of(Visit visit);
}
