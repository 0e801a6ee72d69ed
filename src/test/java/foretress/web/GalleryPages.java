package foretress.web;

import io.quarkus.qute.Engine;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;

/** Every kind of page with invented words in it, made of the real shells and tags: to look at, and to copy from. */
@Path("/gallery/{page}")
@PermitAll
public class GalleryPages {
    static final List<String> CLIENT = List.of("door", "question", "history", "error", "read-back", "sign", "care", "done");
    static final List<String> STAFF = List.of("sign-in", "day", "desk", "new-visit", "invite", "consultation");

    public record Mistake(String field, String text) {}

    private final Engine engine;

    GalleryPages(Engine engine) {
        this.engine = engine;
    }

    @GET
    @Produces("text/html; charset=utf-8")
    public TemplateInstance show(@RestPath String page) {
        return engine.getTemplate("gallery/" + page + ".html").instance()
            .data("share", 0.48)
            .data("mistakes", List.of(new Mistake("year", "The year of your last perm")))
            .data("statements", List.of("What I have answered is true as far as I know.",
                "I agree to a skin test and a test on cut hair first.",
                "I agree to permanent colour on 11 June, if the tests and Petra allow it."));
    }
}
