package foretress.running;

import jakarta.inject.Singleton;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/** From here on a request remembers what it has asked. */
@Singleton
public class RequestBegins {
    private final Asked asked;

    RequestBegins(Asked asked) {
        this.asked = asked;
    }

    /** Before every other filter. */
    @ServerRequestFilter(priority = 0)
    public void begin() {
        asked.begin();
    }
}
