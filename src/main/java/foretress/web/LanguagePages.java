package foretress.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;

/** Another language, each offered under its own name; then back to where the client was. */
@Path("/language")
@Produces(MediaType.TEXT_HTML)
public class LanguagePages {
    @CheckedTemplate(basePath = "web", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record LanguagePage(List<Offered> offered, String to) implements TemplateInstance {}

    private static final int A_YEAR = (int) Duration.ofDays(365).toSeconds();
    private final Language language;
    private final SpokenLanguages spoken;
    private final PublicAddress address;

    LanguagePages(Language language, SpokenLanguages spoken, PublicAddress address) {
        this.language = language;
        this.spoken = spoken;
        this.address = address;
    }

    @GET
    public TemplateInstance offer(@RestQuery String to) {
        return new LanguagePage(spoken.offered(language.getTag()),
            LocalPath.withQuery(to == null ? "" : to).orElse("/answers"));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response choose(MultivaluedMap<String, String> fields) {
        var form = new Form(fields);
        Optional<String> chosen = spoken.match(form.one("language"));
        Response.ResponseBuilder back =
            Response.seeOther(URI.create(LocalPath.withQuery(form.one("to")).orElse("/answers")));
        chosen.ifPresent(tag -> back.cookie(cookie(tag)));
        return back.build();
    }

    private NewCookie cookie(String tag) {
        return new NewCookie.Builder(Language.COOKIE).value(tag).path("/").httpOnly(true).maxAge(A_YEAR)
            .secure(address.secure()).sameSite(NewCookie.SameSite.LAX).build();
    }
}
