package foretress.web;

import io.quarkus.arc.Arc;
import io.quarkus.qute.EngineBuilder;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.event.Observes;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.UriInfo;
import java.util.Locale;
import java.util.Optional;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/** Settles the page's language: the cookie, else what the browser asks for, else English; and tells every template. */
public class LanguageFilter {
    private final Language language;
    private final SpokenLanguages spoken;

    LanguageFilter(Language language, SpokenLanguages spoken) {
        this.language = language;
        this.spoken = spoken;
    }

    @ServerRequestFilter(preMatching = true, priority = 100)
    public void settle(HttpHeaders headers, UriInfo address) {
        language.here(address.getRequestUri());
        Optional<String> chosen =
            Optional.ofNullable(headers.getCookies().get(Language.COOKIE)).flatMap(c -> spoken.match(c.getValue()));
        chosen.or(() -> asked(headers)).ifPresent(language::use);
    }

    private Optional<String> asked(HttpHeaders headers) {
        return headers.getAcceptableLanguages().stream().map(Locale::toLanguageTag)
            .flatMap(tag -> spoken.match(tag).stream()).findFirst();
    }

    void tellTemplates(@Observes EngineBuilder engine) {
        engine.addTemplateInstanceInitializer(LanguageFilter::speak);
    }

    /** Outside a request (a mail being sent) whoever renders names the language. */
    private static void speak(TemplateInstance page) {
        if (Arc.container().requestContext().isActive()) {
            page.setLocale(Arc.container().instance(Language.class).get().locale());
        }
    }
}
