package foretress.web;

import foretress.running.LoggableFailure;
import io.quarkus.arc.Arc;
import io.quarkus.arc.ManagedContext;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.Locale;
import java.util.Optional;
import org.jboss.logging.Logger;

/** Errors that never reach a resource method: no such page, too large, refused at the door. They get the same pages. */
@Singleton
class Fallback {
    private static final Logger LOG = Logger.getLogger(Fallback.class);
    private static final int AFTER_ALL_OTHERS = 1_000_000;

    private final ProblemPages pages;
    private final SpokenLanguages spoken;

    Fallback(ProblemPages pages, SpokenLanguages spoken) {
        this.pages = pages;
        this.spoken = spoken;
    }

    void register(@Observes Router router) {
        router.route().order(-10_000).failureHandler(this::failed);
        router.route().order(AFTER_ALL_OTHERS).handler(context -> answer(context, 404));
    }

    private void failed(RoutingContext context) {
        if (context.response().headWritten()) {
            context.response().reset();
            return;
        }
        if (context.failure() != null && context.statusCode() >= 500) {
            LOG.error("a request failed", LoggableFailure.of(context.failure()));
        }
        answer(context, context.statusCode() < 400 ? 500 : context.statusCode());
    }

    private void answer(RoutingContext context, int status) {
        String accept = context.request().getHeader(HttpHeaders.ACCEPT);
        Locale locale = locale(context);
        context.response().setStatusCode(status);
        String path = String.valueOf(context.request().path());
        if (ApiProblem.isFor(path)) {
            end(context, ProblemPages.JSON, ApiProblem.of(status, path).document());
        } else if (ProblemPages.wantsDocument(accept)) {
            end(context, ProblemPages.JSON, pages.document(status, locale));
        } else {
            end(context, "text/html;charset=UTF-8", page(status, locale));
        }
    }

    /** A template's beans live in a request, which may not have begun yet. */
    private String page(int status, Locale locale) {
        ManagedContext request = Arc.container().requestContext();
        if (request.isActive()) {
            return pages.page(status, locale);
        }
        request.activate();
        try {
            Arc.container().instance(Language.class).get().use(locale.getLanguage());
            return pages.page(status, locale);
        } finally {
            request.terminate();
        }
    }

    private static void end(RoutingContext context, String type, String body) {
        context.response().putHeader(HttpHeaders.CONTENT_TYPE, type).end(body);
    }

    private Locale locale(RoutingContext context) {
        Cookie cookie = context.request().getCookie(Language.COOKIE);
        Optional<String> asked = context.acceptableLanguages().stream().map(l -> l.tag())
            .flatMap(tag -> spoken.match(tag).stream()).findFirst();
        Optional<String> tag = cookie == null ? asked : spoken.match(cookie.getValue()).or(() -> asked);
        return Locale.forLanguageTag(tag.orElse(Supported.ORIGINAL));
    }
}
