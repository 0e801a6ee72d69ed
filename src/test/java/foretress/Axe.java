package foretress;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.stream.Stream;

/** What axe-core finds against WCAG 2.2 A and AA on the page as it stands; by night only colours differ. */
public final class Axe {
    public static final List<String> WCAG = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

    private Axe() {}

    public static List<String> findings(Page page) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
        var byDay = new AxeBuilder(page).withTags(WCAG).analyze();
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        var byNight = new AxeBuilder(page).withRules(List.of("color-contrast")).analyze();
        return Stream.of(byDay, byNight).flatMap(found -> found.getViolations().stream())
            .map(v -> "%s: %s: %s".formatted(page.url(), v.getId(), v.getNodes().get(0).getHtml())).toList();
    }
}
