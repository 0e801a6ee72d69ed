package foretress;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What axe-core finds on the page as it stands. Its script is put into the page itself, once: the library's own way opens another page
 * for every look, for the sake of frames, and we have none.
 */
public final class Axe {
    /** WCAG 2.2 A and AA. */
    public static final List<String> WCAG = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");
    private static final String SCRIPT = script();
    private static final String RUN = """
        run => axe.run(document, { ...run, resultTypes: ['violations'] })
          .then(found => found.violations.map(v => v.id + ': ' + v.nodes.map(n => n.html).join(' | ')))""";

    private Axe() {}

    /** By day against WCAG 2.2 A and AA; by night only colours differ. */
    public static List<String> findings(Page page) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
        List<String> found = new ArrayList<>(byTags(page));
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        found.addAll(run(page, Map.of("runOnly", Map.of("type", "rule", "values", List.of("color-contrast")))));
        return found;
    }

    /** Against WCAG 2.2 A and AA, as the page is coloured now. */
    public static List<String> byTags(Page page) {
        return run(page, Map.of("runOnly", Map.of("type", "tag", "values", WCAG)));
    }

    /** Against every rule that is on by itself, good practice included. */
    public static List<String> everything(Page page) {
        return run(page, Map.of());
    }

    private static List<String> run(Page page, Map<String, Object> options) {
        if (page.frames().size() > 1) {
            throw new IllegalStateException("%s has frames, which this does not look into".formatted(page.url()));
        }
        if (!(Boolean) page.evaluate("() => 'axe' in window")) {
            page.evaluate(SCRIPT);
        }
        return ((List<?>) page.evaluate(RUN, options)).stream().map(found -> page.url() + ": " + found).toList();
    }

    private static String script() {
        try (InputStream axe = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
            return new String(axe.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
