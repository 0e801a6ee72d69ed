package foretress.note;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Cookie;
import foretress.Axe;
import foretress.Browser;
import foretress.intake.Knocking;
import foretress.salon.ExampleLine;
import foretress.salon.OpenSalon;
import foretress.salon.ProductLine;
import foretress.salon.ProductLines;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What staff write down, on a tablet and on a phone, with mistakes and without. Pictures go to target/noted. */
@QuarkusTest
class NotedBrowserTest {
    private static final String TOO_WIDE =
        "() => document.documentElement.scrollWidth - document.documentElement.clientWidth";

    static Browser browser;
    @TestHTTPResource("/") URL base;
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject ProductLines lines;
    @Inject Clock clock;
    private final List<String> complaints = new ArrayList<>();
    UUID visit;
    String at;

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
    void aClientWithAWoundWhoOnceReacted() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
        at = "/visits/" + visit + "/noted";
        QuarkusTransaction.requiringNew().run(() -> lines.add(salon.stylist().id,
            ExampleLine.leaflet("Fernpool Rinse", "direct-dye", ProductLine.ParaGroup.NO, "resorcinol")));
        knocking.come(visit, Map.of("illness-lately", List.of("scalp-wound"))).agree().all().readBack()
            .sign("Ottilie Brandt");
    }

    private void look(Page page, String name) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
        page.screenshot(
            new Page.ScreenshotOptions().setPath(Path.of("target/noted/" + name + ".png")).setFullPage(true));
        complaints.addAll(Axe.findings(page));
        if (((Number) page.evaluate(TOO_WIDE)).intValue() > 0) {
            complaints.add(name + ": too wide");
        }
    }

    private void walk(BrowserContext context, String name) {
        try (context) {
            context.addCookies(salon.as("petra").cookies().entrySet().stream()
                .map(c -> new Cookie(c.getKey(), c.getValue()).setUrl(base.toString())).toList());
            Page page = context.newPage();
            page.navigate("/visits/" + visit);
            page.locator("a[href$='/noted']").first().click();
            look(page, name + "-empty");
            page.locator("a[href$='/word']").first().click();
            look(page, name + "-word");
            page.locator("form.form .button.main").click();
            look(page, name + "-word-mistakes");
            page.locator("input[value=scalp-wound]")
                .check(new com.microsoft.playwright.Locator.CheckOptions().setForce(true));
            page.locator("input[value=with-care]")
                .check(new com.microsoft.playwright.Locator.CheckOptions().setForce(true));
            page.locator("input[value=doctor]")
                .check(new com.microsoft.playwright.Locator.CheckOptions().setForce(true));
            page.fill("#by", "Practice Invented");
            page.fill("#said", LocalDate.now(clock).minusDays(2).toString());
            page.locator("form.form .button.main").click();
            look(page, name + "-kept");
            for (String kind : List.of("letter", "cut", "growth")) {
                page.navigate(at + "/" + kind);
                look(page, name + "-" + kind);
            }
        }
    }

    @Test
    @DisplayName("every page of what is noted holds at both widths, by day and night")
    void onATabletAndOnAPhone() {
        walk(browser.tablet(base.toString()), "tablet");
        walk(browser.phone(base.toString(), true), "phone");
        assertThat(complaints).isEmpty();
    }
}
