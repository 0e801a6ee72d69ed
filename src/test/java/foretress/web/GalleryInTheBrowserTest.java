package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ForcedColors;
import foretress.Axe;
import foretress.Browser;
import foretress.OnPaper;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URL;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class GalleryInTheBrowserTest {
    private static final String TOO_WIDE =
        "() => document.documentElement.scrollWidth - document.documentElement.clientWidth";
    /** Text spacing of WCAG 2.2, 1.4.12. */
    private static final String SPACED =
        "* { line-height: 1.5 !important; letter-spacing: .12em !important; word-spacing: .16em !important } p { margin-block-end: 2em !important }";
    /** A sheet made by script, which the policy allows where an inline one is refused. */
    private static final String WITH_STYLE =
        "css => { const sheet = new CSSStyleSheet(); sheet.replaceSync(css); document.adoptedStyleSheets = [sheet]; }";
    private static final String SMALL_TARGETS = """
        min => [...document.querySelectorAll('a[href], button, select, input:not([type=hidden]), summary, textarea')]
          .filter(e => !e.closest('[hidden]') && !e.matches('.skip') && e.getClientRects().length)
          .filter(e => { const r = (e.closest('label') ?? e).getBoundingClientRect(); return r.height < min - 0.5 || r.width < min - 0.5; })
          .map(e => e.outerHTML.slice(0, 120))""";

    static Browser browser;
    @TestHTTPResource("/") URL base;

    @BeforeAll
    static void openBrowser() {
        browser = Browser.open();
    }

    @AfterAll
    static void closeBrowser() {
        if (browser != null) {
            browser.close();
        }
        GallerySalon.close();
    }

    @BeforeEach
    void openTheSalon() {
        GallerySalon.open();
    }

    @Test
    @DisplayName("the control: what is wrong by day, and what is wrong by night alone, is found")
    void faultsAreFound() {
        try (BrowserContext context = sized(390)) {
            Page page = context.newPage();
            page.setContent("""
                <!doctype html><html lang="en"><title>Faults</title><style>body{background:#fff;color:#000}
                @media (prefers-color-scheme:dark){body{background:#000}p{color:#222}}</style>
                <main><h1>Faults</h1><img src="/x.png"><p>Dark on dark</p></main></html>""");
            assertThat(Axe.findings(page)).hasSize(2).anyMatch(found -> found.contains("image-alt"))
                .anyMatch(found -> found.contains("color-contrast"));
        }
    }

    @ParameterizedTest
    @MethodSource("foretress.web.GalleryPages#all")
    @DisplayName("A1: no machine-found failure, by day and by night")
    void nothingIsFoundByMachine(String name) {
        try (BrowserContext context = sized(390)) {
            Page page = open(context, name);
            for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
                assertThat(Axe.byTags(page)).as("%s %s", name, scheme).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("foretress.web.GalleryPages#all")
    @DisplayName("A3, A4: nothing scrolls sideways at any width, with text twice as large, with spaced text, from right to left")
    void nothingScrollsSideways(String name) {
        try (BrowserContext context = sized(320)) {
            Page page = open(context, name);
            for (Integer width : List.of(320, 390, 768, 1280)) {
                page.setViewportSize(width, 844);
                for (String dir : List.of("rtl", "ltr")) {
                    page.evaluate("dir => { document.documentElement.dir = dir; }", dir);
                    fits(page, "%s at %d, %s".formatted(name, width, dir));
                }
            }
            page.setViewportSize(640, 844);
            for (String style : List.of("html { font-size: 200% }", SPACED)) {
                page.evaluate(WITH_STYLE, style);
                fits(page, name + " with " + style);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("foretress.web.GalleryPages#all")
    @DisplayName("A2: a client's target is at least 44 px, a staff member's 24")
    void targetsCanBeHit(String name) {
        try (BrowserContext context = sized(390)) {
            Page page = open(context, name);
            int least = GalleryPages.CLIENT.contains(name) ? 44 : 24;
            assertThat((List<?>) page.evaluate(SMALL_TARGETS, least)).as("%s", name).isEmpty();
        }
    }

    @Test
    @DisplayName("A12: with reduced motion nothing moves")
    void nothingMovesWhenAskedNotTo() {
        try (BrowserContext context = sized(390)) {
            Page page = open(context, "question");
            page.emulateMedia(
                new Page.EmulateMediaOptions().setReducedMotion(com.microsoft.playwright.options.ReducedMotion.REDUCE));
            assertThat(page.evaluate("() => document.getAnimations().length")).isEqualTo(0);
        }
    }

    @ParameterizedTest
    @CsvSource({ "consultation, 3", "day, 2" })
    @DisplayName("A31: a stylist's page prints on few sheets, ink on white, with nothing to press")
    void aStylistsPagePrints(String name, int sheets) {
        try (BrowserContext context = browser.tablet(base.toString())) {
            Page page = open(context, name);
            assertThat(OnPaper.faults(page)).isEmpty();
            assertThat(OnPaper.printed(page, sheets)).isEmpty();
        }
    }

    @Test
    @DisplayName("A10: the whole slip shows the focus ring, and arrows choose without leaving the page (A17)")
    void theKeyboardChoosesASlip() {
        try (BrowserContext context = sized(390)) {
            Page page = open(context, "question");
            page.locator("input[value=past]").focus();
            page.keyboard().press("ArrowDown");
            assertThat(page.locator("input[value=no]").isChecked()).isTrue();
            assertThat(page.url()).endsWith("/gallery/question");
            assertThat(page.evaluate("() => getComputedStyle(document.activeElement).outlineWidth")).isEqualTo("3px");
            assertThat(page.evaluate(
                "() => { const r = document.activeElement.getBoundingClientRect(); return document.elementFromPoint(r.x + r.width / 2, r.y + r.height / 2).closest('label').contains(document.activeElement) }"))
                .isEqualTo(true);
        }
    }

    @Test
    @DisplayName("A6: the summary of mistakes has the focus, so that the next stop is its first link")
    void theSummaryHasTheFocus() {
        try (BrowserContext context = sized(390)) {
            Page page = open(context, "error");
            page.waitForFunction("() => document.activeElement.classList.contains('mistakes')");
            page.keyboard().press("Tab");
            page.keyboard().press("Enter");
            page.waitForURL(url -> url.endsWith("#year"));
            assertThat(page.evaluate("() => document.activeElement.id")).isEqualTo("year");
        }
    }

    @Test
    @DisplayName("forced colours: a chosen slip is still told from the others")
    void forcedColoursKeepTheChoice() {
        try (BrowserContext context = sized(390)) {
            Page page = open(context, "question");
            page.emulateMedia(new Page.EmulateMediaOptions().setForcedColors(ForcedColors.ACTIVE));
            String border = "e => getComputedStyle(e).borderInlineStartWidth";
            assertThat(page.locator("input[value=past]").evaluate(border)).isEqualTo("9px");
            assertThat(page.locator("input[value=no]").evaluate(border)).isNotEqualTo("9px");
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = { true, false })
    @DisplayName("A11: drawing is offered with script, typing always")
    void typingIsAlwaysThere(boolean scripts) {
        try (BrowserContext context = browser.phone(base.toString(), scripts)) {
            Page page = open(context, "sign");
            assertThat(page.locator("canvas").isVisible()).isEqualTo(scripts);
            if (scripts) {
                page.locator("input[type=radio][value=typed]").check();
            }
            assertThat(page.locator("input[name=typed]").isVisible()).isTrue();
            Object marks = page.evaluate("() => new FormData(document.forms[0]).getAll('mark')");
            assertThat(marks).isEqualTo(List.of("typed"));
        }
    }

    @Test
    @DisplayName("B21: a drawn mark is points between 0 and 1, without times; clear empties it")
    void aMarkIsPointsWithoutTimes() {
        try (BrowserContext context = sized(390)) {
            Page page = open(context, "sign");
            BoundingBox box = page.locator("canvas").boundingBox();
            page.mouse().move(box.x + 20, box.y + 20);
            page.mouse().down();
            page.mouse().move(box.x + 120, box.y + 80, new com.microsoft.playwright.Mouse.MoveOptions().setSteps(12));
            page.mouse().move(box.x + 900, box.y + 40);
            page.mouse().up();
            Object strokes = page.evaluate("() => JSON.parse(document.querySelector('[name=strokes]').value)");
            assertThat((List<?>) strokes).hasSize(1);
            ArrayList<?> points = new ArrayList<>((List<?>) ((List<?>) strokes).get(0));
            assertThat(points).hasSizeGreaterThan(8).allSatisfy(point -> assertThat((List<?>) point).hasSize(2)
                .allSatisfy(share -> assertThat(((Number) share).doubleValue()).isBetween(0.0, 1.0)));
            page.locator("[data-sign-clear]").click();
            assertThat(page.locator("[name=strokes]").inputValue()).isEmpty();
        }
    }

    @Test
    @DisplayName("A27: without a connection the page stays and says so; with it the form can be sent")
    void withoutAConnectionThePageStays() {
        try (BrowserContext context = sized(390)) {
            Page page = open(context, "question");
            context.setOffline(true);
            page.locator("button.main").click();
            assertThat(page.locator("[role=status]").textContent()).contains("still on this page");
            assertThat(page.locator("input[value=past]").isChecked()).isTrue();
            context.setOffline(false);
            page.waitForFunction("() => document.querySelector('[role=status]').textContent === ''");
            var sent = new ArrayList<String>();
            page.route("**/*", route -> {
                if (route.request().method().equals("POST")) {
                    sent.add(route.request().url());
                }
                route.abort();
            });
            page.locator("button.main").click();
            page.waitForCondition(() -> !sent.isEmpty());
            assertThat(sent).hasSize(1);
        }
    }

    @Test
    @DisplayName("F7: a double tap sends once")
    void aDoubleTapSendsOnce() {
        try (BrowserContext context = sized(390)) {
            Page page = open(context, "question");
            page.evaluate(
                "() => { window.sent = 0; document.forms[0].addEventListener('submit', e => { if (!e.defaultPrevented) window.sent++; e.preventDefault(); }) }");
            page.locator("button.main").dblclick();
            assertThat(page.evaluate("() => window.sent")).isEqualTo(1);
        }
    }

    private Page open(BrowserContext context, String name) {
        Page page = context.newPage();
        page.navigate("/gallery/" + name);
        return page;
    }

    private BrowserContext sized(int width) {
        return browser.sized(base.toString(), width, 844);
    }

    private static void fits(Page page, String what) {
        assertThat(((Number) page.evaluate(TOO_WIDE)).intValue()).as(what).isLessThanOrEqualTo(0);
    }
}
