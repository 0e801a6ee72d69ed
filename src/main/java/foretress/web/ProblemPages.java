package foretress.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import jakarta.inject.Singleton;
import java.util.Locale;

/** The page, or for a program the problem document (RFC 9457), that stands for an error: calm, with what to do, without insides. */
@Singleton
public class ProblemPages {
    public static final String JSON = "application/problem+json";

    @CheckedTemplate(basePath = "web", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ProblemPage(String title, String whatToDo) implements TemplateInstance {}

    private final ObjectMapper json;

    ProblemPages(ObjectMapper json) {
        this.json = json;
    }

    String page(int status, Locale locale) {
        Problem problem = Problem.of(status);
        ClientWords say = say(locale);
        var page = new ProblemPage(problem.title(say), problem.whatToDo(say));
        page.setLocale(locale);
        return page.render();
    }

    String document(int status, Locale locale) {
        Problem problem = Problem.of(status);
        ClientWords say = say(locale);
        ObjectNode document = json.createObjectNode().put("type", "about:blank").put("title", problem.title(say))
            .put("status", status).put("detail", problem.whatToDo(say));
        return document.toString();
    }

    private static ClientWords say(Locale locale) {
        return MessageBundles.get(ClientWords.class, Localized.Literal.of(locale.getLanguage()));
    }

    /** Whether the caller is a program: it asks for JSON and not for a page. */
    static boolean wantsDocument(String accept) {
        return accept != null && accept.contains("json") && !accept.contains("text/html");
    }
}
