package foretress.web;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.jboss.logging.Logger;

/**
 * One line a request at level DEBUG of the category {@code foretress.access}: method, path, status, milliseconds. Never what was
 * sent, never a query, and of a path that opens something only where it begins.
 */
@Singleton
class AccessLog {
    static final Logger LOG = Logger.getLogger("foretress.access");
    private static final Pattern SECRET = Pattern.compile("^(/(?:i|a|set-up)/)[^/]+");
    private static final Pattern UNPRINTABLE = Pattern.compile("[^!-~]");
    private static final int LONGEST = 200;
    private static final int FIRST = 20_000;

    void register(@Observes Filters filters) {
        filters.register(this::follow, FIRST);
    }

    private void follow(RoutingContext context) {
        if (LOG.isDebugEnabled()) {
            long begun = System.nanoTime();
            context.addEndHandler(
                end -> LOG.debugf("%s %s %d %d ms", context.request().method(), masked(context.request().path()),
                    context.response().getStatusCode(), TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun)));
        }
        context.next();
    }

    static String masked(String path) {
        String masked = SECRET.matcher(UNPRINTABLE.matcher(String.valueOf(path)).replaceAll("?")).replaceFirst("$1...");
        return masked.length() <= LONGEST ? masked : masked.substring(0, LONGEST) + "...";
    }
}
