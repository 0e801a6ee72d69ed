package foretress.demo;

import foretress.post.Letter;
import foretress.post.ShownMails;
import foretress.web.Language;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** In the demo only: the mails that would have been sent. Elsewhere there is no such page. */
@Path("/demo")
public class DemoPages {
    private static final DateTimeFormatter SENT =
        DateTimeFormatter.ofPattern("HH:mm:ss 'UTC'").withZone(ZoneOffset.UTC);

    @CheckedTemplate(basePath = "demo", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record DemoPage(List<Mail> mails, List<String> logins) implements TemplateInstance {}

    public record Mail(String to, String subject, String text, String link, String language, String sentAt) {}

    private final ShownMails shown;
    private final Language language;
    private final boolean demo;

    DemoPages(ShownMails shown, Language language, @ConfigProperty(name = "foretress.demo") Optional<Boolean> demo) {
        this.shown = shown;
        this.language = language;
        this.demo = demo.orElse(false);
    }

    @GET
    public TemplateInstance mails() {
        if (!demo) {
            throw new NotFoundException();
        }
        language.use("en");
        return new DemoPage(shown.newest().stream()
            .map(m -> new Mail(m.letter().to(), m.letter().subject(), m.letter().plain(),
                m.letter().link().map(Letter.Link::address).orElse(""), m.language(), SENT.format(m.sentAt())))
            .toList(), DemoSalon.LOGINS);
    }
}
