package foretress.web;

import io.quarkus.runtime.configuration.MemorySize;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpVersion;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Refuses a body that is announced as too large before a byte of it is read; the framework would answer with an empty page. */
@Singleton
class Sizes {
    private static final int EARLY = 8_000;
    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,18}");

    private final long most;

    Sizes(@ConfigProperty(name = "quarkus.http.limits.max-body-size") MemorySize most) {
        this.most = most.asLongValue();
    }

    void register(@Observes Filters filters) {
        filters.register(this::check, EARLY);
    }

    private void check(RoutingContext context) {
        if (announced(context.request()) <= most) {
            context.next();
            return;
        }
        if (context.request().version() != HttpVersion.HTTP_2) {
            context.response().putHeader("Connection", "close");
        }
        context.fail(413);
    }

    /** Bytes; more than any when what is said is no number. */
    static long announced(HttpServerRequest request) {
        String length = request.getHeader("Content-Length");
        if (length == null) {
            return 0;
        }
        return NUMBER.matcher(length).matches() ? Long.parseLong(length) : Long.MAX_VALUE;
    }
}
