package foretress.vault;

import jakarta.inject.Singleton;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Priorities;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/**
 * Every act that somebody is told was taken lies on the device before the answer leaves: no page has to remember it. A page that is
 * only looked at, and an act that is refused, kept nothing that was promised.
 */
@Singleton
public class DurableActs {
    private static final String REACHED = "foretress.reached";
    private static final Set<String> LOOKING = Set.of(HttpMethod.GET, HttpMethod.HEAD, HttpMethod.OPTIONS);
    private static final int REFUSED = 400;

    private final Durable durable;

    DurableActs(Durable durable) {
        this.durable = durable;
    }

    /** After every filter that turns somebody away: a stranger sent to the sign-in page is none who acts. */
    @ServerRequestFilter(priority = Priorities.USER + 1000)
    public void reached(ContainerRequestContext request) {
        request.setProperty(REACHED, true);
    }

    /** @throws IllegalStateException when the store could not be forced to the device; then nobody is told that it was kept */
    @ServerResponseFilter
    public void keep(ContainerRequestContext request, ContainerResponseContext answer) {
        boolean acted = request.getProperty(REACHED) != null && !LOOKING.contains(request.getMethod());
        if (acted && answer.getStatus() < REFUSED) {
            durable.force();
        }
    }
}
