package foretress.salon;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Keeps a session in use alive, unless the answer itself sets or ends one. */
public class SessionRenewal {
    private final Sessions sessions;
    private final Who who;

    SessionRenewal(Sessions sessions, Who who) {
        this.sessions = sessions;
        this.who = who;
    }

    @ServerResponseFilter
    public void renew(ContainerRequestContext request, ContainerResponseContext response) {
        if (!response.getCookies().containsKey(sessions.name())) {
            sessions.renewed(request.getCookies(), who)
                .ifPresent(c -> response.getHeaders().add(HttpHeaders.SET_COOKIE, c));
        }
    }
}
