package foretress.web;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.Set;

/**
 * Refuses what another site makes a browser send here, before anything else looks at it. The forms' tokens refuse it once more.
 * Browsers that say where a request was made ({@code Sec-Fetch-Site}) are believed; for older ones the origin must be ours.
 * "null" says nothing: our own pages send it too, since they give no referrer.
 */
@Singleton
public class Origins {
    private static final Set<HttpMethod> READING = Set.of(HttpMethod.GET, HttpMethod.HEAD, HttpMethod.OPTIONS);
    private static final int EARLY = 9_000;

    private final PublicAddress address;

    Origins(PublicAddress address) {
        this.address = address;
    }

    void register(@Observes Filters filters) {
        filters.register(this::check, EARLY);
    }

    private void check(RoutingContext context) {
        if (READING.contains(context.request().method()) || !isElsewhere(context.request())) {
            context.next();
        } else {
            context.fail(403);
        }
    }

    private boolean isElsewhere(HttpServerRequest request) {
        String site = request.getHeader("Sec-Fetch-Site");
        if (site != null) {
            return !isHere(site);
        }
        String origin = request.getHeader("Origin");
        return origin != null && !origin.equals("null") && !isOurs(request, origin);
    }

    /** Whether the browser itself vouches that a page of ours sent this; false where it says nothing. */
    public boolean vouchedFor(HttpServerRequest request) {
        String site = request.getHeader("Sec-Fetch-Site");
        String origin = request.getHeader("Origin");
        return site != null ? isHere(site) : origin != null && isOurs(request, origin);
    }

    private static boolean isHere(String site) {
        return site.equals("same-origin") || site.equals("none");
    }

    private boolean isOurs(HttpServerRequest request, String origin) {
        return origin.equals(address.base()) || origin.equals(request.scheme() + "://" + request.authority());
    }
}
