package foretress.web;

import io.quarkus.runtime.configuration.MemorySize;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.Vertx;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpVersion;
import io.vertx.core.http.impl.HttpServerRequestInternal;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * What is sent is received to the last byte before anything is done about it, so that somebody who sends slowly holds a connection and
 * never one of the few workers that make pages. Who is slower than a bad telephone line is cut off; what waits in memory has a bound.
 */
@Singleton
class BodyBuffering {
    /** Before all other filters, which run once the body is here. */
    private static final int VERY_FIRST = 30_000;
    private static final Set<HttpMethod> READING = Set.of(HttpMethod.GET, HttpMethod.HEAD, HttpMethod.OPTIONS);

    private final Vertx vertx;
    private final long longest;
    private final Waiting waiting = new Waiting(Runtime.getRuntime().maxMemory() / 8);
    private Router router;

    BodyBuffering(Vertx vertx, @ConfigProperty(name = "quarkus.http.limits.max-body-size") MemorySize longest) {
        this.vertx = vertx;
        this.longest = longest.asLongValue();
    }

    void register(@Observes Filters filters) {
        filters.register(this::receive, VERY_FIRST);
    }

    void know(@Observes Router main) {
        router = main;
    }

    private void receive(RoutingContext context) {
        HttpServerRequestInternal request = (HttpServerRequestInternal) context.request();
        if (Receiving.received(request).isPresent()) {
            Receiving.received(request).get().follow(context);
        } else if (bringsABody(request) && Sizes.announced(request) <= longest) {
            new Receiving(context, vertx, waiting, longest, router).begin();
        } else {
            context.next();
        }
    }

    /** In HTTP/2 a form needs no header that announces it. */
    private static boolean bringsABody(HttpServerRequest request) {
        String length = request.getHeader("Content-Length");
        if (length != null) {
            return !length.equals("0");
        }
        return request.headers().contains("Transfer-Encoding")
            || request.version() == HttpVersion.HTTP_2 && !READING.contains(request.method());
    }
}
