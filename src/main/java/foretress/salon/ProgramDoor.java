package foretress.salon;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import java.util.Optional;

/** Knows a program by its token. A room above says who it is, since tokens are its business. */
public interface ProgramDoor {
    /**
     * @param scope what the token must be for; blank when any token will do
     * @return nothing when the program may go on; else what it is answered
     */
    Optional<Response> turnAway(ContainerRequestContext request, String scope);
}
