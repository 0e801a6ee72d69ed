package foretress.web;

import io.quarkus.arc.Arc;
import io.quarkus.qute.Engine;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.stream.Stream;

/**
 * Every kind of page with invented words in it, made of the real shells and tags, at {@code /gallery/name}: to look at, to measure
 * and to copy from. It stands beside the routes of the application, so the table of rights need not know it.
 */
@Singleton
public class GalleryPages {
    static final List<String> CLIENT = List.of("door", "question", "history", "error", "read-back", "sign", "care", "done");
    static final List<String> STAFF = List.of("sign-in", "day", "desk", "new-visit", "invite", "consultation");
    static final List<String> PAPER = List.of("slip");

    public record Mistake(String field, String text) {}

    private final Engine engine;

    GalleryPages(Engine engine) {
        this.engine = engine;
    }

    static Stream<String> all() {
        return Stream.of(CLIENT, STAFF, PAPER).flatMap(List::stream);
    }

    void hang(@Observes Router router) {
        router.get("/gallery/:page").blockingHandler(this::show);
    }

    private void show(RoutingContext request) {
        var scope = Arc.container().requestContext();
        scope.activate();
        try {
            request.put("csrf_token", "not a real one");
            Arc.container().instance(CurrentVertxRequest.class).get().setCurrent(request);
            request.response().putHeader("Content-Type", "text/html; charset=utf-8").end(page(request.pathParam("page")));
        } finally {
            scope.terminate();
        }
    }

    private String page(String name) {
        return engine.getTemplate("gallery/" + name + ".html").instance()
            .data("share", 0.48)
            .data("mistakes", List.of(new Mistake("year", "The year of your last perm")))
            .data("statements", List.of("What I have answered is true as far as I know.",
                "I agree to a skin test and a test on cut hair first.",
                "I agree to permanent colour on 11 June, if the tests and Petra allow it."))
            .render();
    }
}
