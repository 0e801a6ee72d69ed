package foretress.web;

import foretress.hair.HairHistory;
import foretress.hair.HairLength;
import foretress.hair.Residue;
import foretress.hair.StrandMap;
import foretress.hair.StrandSvg;
import foretress.hair.StrandWords;
import foretress.hair.Treatment;
import foretress.hair.Zone;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import io.quarkus.arc.Arc;
import io.quarkus.arc.ManagedContext;
import io.quarkus.qute.Engine;
import io.quarkus.qute.RawString;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Every kind of page with invented words in it, made of the real shells and tags, at {@code /gallery/name}: to look at, to measure
 * and to copy from. It stands beside the routes of the application, so the table of rights need not know it.
 */
@Singleton
public class GalleryPages {
    static final List<String> CLIENT =
        List.of("door", "question", "history", "error", "read-back", "sign", "care", "done");
    static final List<String> STAFF = List.of("sign-in", "day", "desk", "new-visit", "invite", "consultation");
    static final List<String> PAPER = List.of("slip");

    /** These echo nothing that was typed or asked for, so the application marks them @Compressed; see application.properties. */
    private static final Set<String> COMPRESSED = Set.of("door", "consultation");

    public record Mistake(String field, String text) {}

    private final Engine engine;
    private final Knowledge knowledge;

    GalleryPages(Engine engine, Knowledge knowledge) {
        this.engine = engine;
        this.knowledge = knowledge;
    }

    static Stream<String> all() {
        return Stream.of(CLIENT, STAFF, PAPER).flatMap(List::stream);
    }

    void hang(@Observes Router router) {
        router.get("/gallery/:page").blockingHandler(this::show);
    }

    private void show(RoutingContext request) {
        ManagedContext scope = Arc.container().requestContext();
        scope.activate();
        try {
            Arc.container().instance(CurrentVertxRequest.class).get().setCurrent(request);
            if (COMPRESSED.contains(request.pathParam("page"))) {
                request.response().headers().remove("Content-Encoding");
            }
            request.response().putHeader("Content-Type", "text/html; charset=utf-8")
                .end(page(request.pathParam("page")));
        } finally {
            scope.terminate();
        }
    }

    /** Two summers after a darkening lotion, with a box dye, highlights and a wash-out colour since. */
    private String map() {
        LocalDate today = LocalDate.of(2026, 6, 11);
        HairHistory history = HairHistory.of(HairLength.measured(42), List.of(
            Treatment.once(Residue.METAL, LocalDate.of(2024, 6, 1), LocalDate.of(2024, 8, 31), Zone.WHOLE,
                "Darkening lotion").said("summer 2024"),
            Treatment.once(Residue.OXIDATIVE, LocalDate.of(2025, 2, 1), LocalDate.of(2025, 2, 28), Zone.REGROWTH,
                "Box dye, dark brown").said("February 2025"),
            Treatment.once(Residue.LIGHTENED, LocalDate.of(2023, 9, 1), LocalDate.of(2023, 11, 30), Zone.STRANDS,
                "Highlights").said("autumn 2023"),
            Treatment.once(Residue.WASHES_OUT, LocalDate.of(2026, 5, 4), LocalDate.of(2026, 5, 4), Zone.WHOLE,
                "Wash-out colour").said("4 May 2026")));
        Words words = knowledge.words("en");
        return StrandSvg.figure(StrandMap.of(history, today),
            new StrandWords(Locale.ENGLISH, key -> words.text("strand.texts." + key)), "map");
    }

    private String page(String name) {
        return engine.getTemplate("gallery/" + name + ".html").instance()
            .data("share", 0.48)
            .data("map", new RawString(map()))
            .data("mistakes", List.of(new Mistake("year", "The year of your last perm")))
            .data("statements", List.of("What I have answered is true as far as I know.",
                "I agree to a skin test and a test on cut hair first.",
                "I agree to permanent colour on 11 June, if the tests and Petra allow it."))
            .render();
    }
}
