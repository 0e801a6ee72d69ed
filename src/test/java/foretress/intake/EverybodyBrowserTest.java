package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ForcedColors;
import com.microsoft.playwright.options.ReducedMotion;
import foretress.Browser;
import foretress.OnPaper;
import foretress.Spoken;
import foretress.consent.Consents;
import foretress.salon.OpenSalon;
import foretress.visit.VisitMaker;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * The client's whole path under everything at once that a page has to stand: no pointer, forced colours, reduced motion and
 * 400 % zoom (320×256 CSS px of a window of 1280×1024: WCAG 2.2, 1.4.10), and every page given to a screen reader and to a printer.
 */
@QuarkusTest
class EverybodyBrowserTest {
    private static final int ZOOMED_WIDTH = 320, ZOOMED_HEIGHT = 256;
    private static final Map<String, String> WORDS =
        Map.of("day", "4", "month", "Mar", "year", "1965", ".cm", "40", "typed", "Ottilie Brandt");
    private static final Set<String> TICKED = Set.of("none", "nothing");
    private static final Set<String> PRINTED = Set.of("/answers/reactions", "/answers/sign", "/answers/done");
    private static final Set<String> HASTY = Set.of("/answers/notice", "/answers/reactions", "/answers/sign");
    /** Faults that all pages share, in words. */
    private static final String FAULTS = """
        () => {
          const found = [], style = (e, part) => getComputedStyle(e, part);
          const root = document.documentElement;
          if (root.scrollWidth > root.clientWidth) found.push('scrolls both ways by ' + (root.scrollWidth - root.clientWidth));
          if (document.getAnimations().length) found.push('moves');
          for (const chosen of document.querySelectorAll('main input:checked')) {
            const other = [...document.getElementsByName(chosen.name)].find(i => !i.checked && i.type === chosen.type);
            const drawn = e => style(e, '::after').content !== 'none' && style(e, '::after').display !== 'none';
            if (!drawn(chosen) && !drawn(chosen.nextElementSibling)) found.push('no tick in ' + chosen.name);
            if (other && style(chosen).borderInlineStartWidth === style(other).borderInlineStartWidth && !chosen.closest('.agreed')) found.push('no edge in ' + chosen.name);
          }
          for (const svg of document.querySelectorAll('main [data-weight] svg, .strand .hair')) if (style(svg).fill === style(document.body).backgroundColor) found.push('a shape in the colour of its ground');
          return found;
        }""";

    static Browser browser;
    @TestHTTPResource("/") URL base;
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Consents consents;
    UUID visit;

    @BeforeAll
    static void openBrowser() {
        browser = Browser.open();
    }

    @AfterAll
    static void closeBrowser() {
        if (browser != null) {
            browser.close();
        }
    }

    @BeforeEach
    void aClientIsInvited() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
    }

    @Test
    @DisplayName("A3, A6, A10, A11, A12, A18, A31: by keyboard alone, at 400 %, in forced colours, from the door to the signature; every page can be heard and printed")
    void fromTheDoorToTheSignature() {
        try (BrowserContext context = browser.sized(base.toString(), ZOOMED_WIDTH, ZOOMED_HEIGHT)) {
            var client = new Keys(forced(context.newPage()), WORDS, TICKED, EverybodyBrowserTest::look);
            client.open(knocking.link(visit)).until("/answers/done", HASTY).through();
            assertThat(client.complaints()).isEmpty();
            assertThat(client.pages()).contains("/answers/reactions", "/answers/treatments", "/answers/sign",
                "/answers/done");
        }
        assertThat(consents.latest(visit).orElseThrow().markKind().code()).isEqualTo("typed");
    }

    private static Page forced(Page page) {
        page.emulateMedia(new Page.EmulateMediaOptions().setForcedColors(ForcedColors.ACTIVE)
            .setReducedMotion(ReducedMotion.REDUCE));
        return page;
    }

    private static void look(Keys client) {
        Page page = client.page();
        Spoken.faults(page).forEach(client::complain);
        ((List<?>) page.evaluate(FAULTS)).forEach(fault -> client.complain((String) fault));
        page.emulateMedia(new Page.EmulateMediaOptions().setForcedColors(ForcedColors.NONE));
        OnPaper.faults(page).forEach(client::complain);
        if (PRINTED.contains(client.at())) {
            OnPaper.printed(page, 2).forEach(client::complain);
        }
        page.emulateMedia(new Page.EmulateMediaOptions().setForcedColors(ForcedColors.ACTIVE));
    }
}
