package foretress.web;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;

/**
 * What every answer carries, pages, files and errors alike (OWASP HTTP Headers; ASVS 3.4): nothing but our own files runs or
 * loads, nobody frames us, nothing private stays in a cache, no address leaks to another site.
 */
@Singleton
class Headers {
    static final String POLICY =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; "
            + "connect-src 'self'; manifest-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'; object-src 'none'";
    /** Short on purpose: it travels with every file, and the first page has to fit the first round trip. */
    static final String PERMISSIONS = "camera=(), geolocation=(), microphone=(), payment=(), usb=()";
    private static final int BEFORE_ALL_OTHERS = 10_000;

    private final PublicAddress address;

    Headers(PublicAddress address) {
        this.address = address;
    }

    void register(@Observes Filters filters) {
        filters.register(this::add, BEFORE_ALL_OTHERS);
    }

    private void add(RoutingContext context) {
        context.addHeadersEndHandler(end -> write(context));
        context.next();
    }

    private void write(RoutingContext context) {
        MultiMap headers = context.response().headers();
        if (!SentFile.SANDBOX.equals(headers.get("Content-Security-Policy"))) {
            headers.set("Content-Security-Policy", POLICY);
        }
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Referrer-Policy", "no-referrer");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Permissions-Policy", PERMISSIONS);
        if (headers.contains("Location")) {
            headers.set("Location", Redirects.here(headers.get("Location")));
        }
        if (address.secure()) {
            headers.set("Strict-Transport-Security", "max-age=31536000; includeSubDomains");
        }
        cache(context, headers);
    }

    /** Only our own files may stay in a cache: a day, or for good where the address names their very content. */
    private static void cache(RoutingContext context, MultiMap headers) {
        boolean kept = Assets.isAsset(context.normalizedPath()) && context.response().getStatusCode() < 400;
        if (!kept) {
            headers.set("X-Robots-Tag", "noindex").set("Cache-Control", "no-store");
        } else if (context.request().getParam("v") != null) {
            headers.set("Cache-Control", "public, max-age=31536000, immutable");
        } else {
            headers.set("Cache-Control", "public, max-age=86400");
        }
    }
}
