package foretress.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Cookie;
import foretress.Axe;
import foretress.Browser;
import foretress.intake.Knocking;
import foretress.salon.OpenSalon;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.nio.file.Path;
import java.time.Duration;
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

/** The bench in real browsers: a tablet at the dish and a phone in the owner's hand. Pictures go to target/bench. */
@QuarkusTest
class BenchBrowserTest {
    private static final String SMALL = """
        () => [...document.querySelectorAll('main button, main a.button, main input:not([type=hidden]), main select, .timers a, .choose a')]
          .filter(e => e.offsetParent !== null && e.getBoundingClientRect().height < 47.5 && !e.closest('.beside, td, .said, .owed p'))
          .map(e => e.outerHTML.slice(0, 120))""";
    private static final String SMALL_SIGNS =
        """
        () => [...document.querySelectorAll('.signs button')].filter(e => e.getBoundingClientRect().height < 59.5).map(e => e.value)""";
    private static final String TOO_WIDE =
        "() => document.documentElement.scrollWidth - document.documentElement.clientWidth";

    static Browser browser;
    @TestHTTPResource("/") URL base;
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject MovedNanos nanos;
    @Inject BenchRecords tests;
    private final List<String> complaints = new ArrayList<>();
    UUID visit;
    String bench;

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
    void aClientOnceUsedADarkeningLotion() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
        bench = "/visits/" + visit + "/bench";
        knocking
            .come(visit, Map.of("darkening-lotion", List.of("some-time-ago"), "treatments.what", List.of("restorer"),
                "treatments.when.precision", List.of("years-ago"), "treatments.when.ago", List.of("1-2"),
                "treatments.zone", List.of("whole")))
            .agree().all().readBack().sign("Ottilie Brandt");
    }

    private Page as(String login, BrowserContext context) {
        context.addCookies(salon.as(login).cookies().entrySet().stream()
            .map(c -> new Cookie(c.getKey(), c.getValue()).setUrl(base.toString())).toList());
        Page page = context.newPage();
        page.onConsoleMessage(m -> {
            if (m.type().equals("error") && !m.text().contains("422")) {
                complaints.add(page.url() + ": " + m.text());
            }
        });
        page.onPageError(e -> complaints.add(page.url() + ": " + e));
        return page;
    }

    private void look(Page page, String name) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
        page.screenshot(
            new Page.ScreenshotOptions().setPath(Path.of("target/bench/" + name + ".png")).setFullPage(true));
        complaints.addAll(Axe.findings(page));
        ((List<?>) page.evaluate(SMALL_SIGNS))
            .forEach(small -> complaints.add("R55: " + name + ": a sign under 60 px: " + small));
        ((List<?>) page.evaluate(SMALL)).forEach(small -> complaints.add(name + ": under 48 px: " + small));
        if (((Number) page.evaluate(TOO_WIDE)).intValue() > 0) {
            complaints.add(name + ": too wide");
        }
    }

    private static Locator sign(Page page, String value) {
        return page.locator("button[value='" + value + "']");
    }

    private void start(Page page, String name) {
        page.navigate(bench);
        look(page, name + "-overview");
        page.locator(".owed a.button.main").first().click();
        look(page, name + "-cut");
        page.locator("form.wide .button.main").click();
        look(page, name + "-mix-empty");
        page.fill("#strength", "40");
        page.locator("form[action$='/mix'] .button").click();
        look(page, name + "-mix");
        page.locator("form[action$='/start'] .button.main").click();
    }

    @Test
    @DisplayName("two devices on one bench follow along; the time is said when it is up; nothing is too small for a glove")
    void twoDevicesOnOneBench() {
        try (BrowserContext tablet = browser.tablet(base.toString());
            BrowserContext phone = browser.phone(base.toString(), true)) {
            Page petra = as("petra", tablet);
            start(petra, "tablet");
            look(petra, "tablet-watch");
            Page edda = as("edda", phone);
            edda.navigate(petra.url().replaceAll("^https?://[^/]+", ""));
            look(edda, "phone-watch");
            nanos.move(Duration.ofMinutes(10));
            sign(edda, "A:SLIGHTLY_LIGHTER").tap();
            edda.waitForSelector("button[value='A:SLIGHTLY_LIGHTER'][aria-pressed=true]");
            petra.waitForSelector("button[value='A:SLIGHTLY_LIGHTER'][aria-pressed=true]");
            petra.locator("[data-sound]").click();
            assertThat(petra.locator("[data-sound]").getAttribute("aria-pressed")).isEqualTo("true");
            tapsWithoutAConnection(edda, phone);
            nanos.move(Duration.ofMinutes(20));
            petra.waitForFunction("() => document.title.startsWith('Time: Incompatibility test')");
            edda.waitForFunction("() => document.title.startsWith('Time: Incompatibility test')");
            petra.waitForSelector("h1:has-text('Read tuft')");
            look(petra, "tablet-due");
            sign(petra, "B:NOTHING").click();
            sign(petra, "C:SLIGHTLY_LIGHTER").click();
            edda.waitForSelector("button[value='C:SLIGHTLY_LIGHTER'][aria-pressed=true]");
            edda.waitForSelector("[data-holds]");
            look(edda, "phone-read");
            petra.waitForSelector("form[action$='/end'] .button.main");
            petra.locator("form[action$='/end'] .button.main").click();
            look(petra, "tablet-result");
            edda.waitForSelector("h1:has-text('No change at all')");
            look(edda, "phone-result");
            assertThat(petra.locator(".tail form[action$='/strike']").count())
                .as("R10: what prevents is not a stylist's to strike out").isZero();
            edda.locator(".tail summary:has-text('Entered in error')").click();
            edda.fill("#why", "Another client's hair");
            look(edda, "phone-strike");
            edda.locator("form[action$='/strike'] button").click();
            assertThat(edda.inputValue("#why")).isEqualTo("Another client's hair");
            look(edda, "phone-strike-no-password");
        }
        assertThat(complaints).isEmpty();
    }

    /** R1: a tap without a connection waits in sight, survives a press on the same button, and is one observation in the end. */
    private void tapsWithoutAConnection(Page edda, BrowserContext phone) {
        String tap = "B:NOTHING";
        phone.setOffline(true);
        sign(edda, tap).tap();
        edda.waitForSelector("button[value='" + tap + "'][data-waiting]");
        assertThat(edda.locator("[data-waits]").textContent()).contains("Not sent yet", "B: ");
        sign(edda, tap).tap();
        nanos.move(Duration.ofSeconds(40));
        look(edda, "phone-waiting");
        phone.setOffline(false);
        edda.waitForSelector("button[value='" + tap + "'][aria-pressed=true]:not([data-waiting])");
        assertThat(edda.locator("[data-waits]").textContent()).isBlank();
        assertThat(seen("B")).as("exactly one observation").isOne();
        complaints.removeIf(c -> c.contains("ERR_INTERNET_DISCONNECTED"));
    }

    private long seen(String tuft) {
        return QuarkusTransaction.requiringNew()
            .call(() -> tests.ofVisit(visit).stream().flatMap(t -> tests.sights(t).stream())
                .filter(s -> s.seen().tuft().equals(tuft)).count());
    }

    @Test
    @DisplayName("the bench follows a test that is begun and ended elsewhere")
    void theOverviewFollowsToo() {
        try (BrowserContext tablet = browser.tablet(base.toString());
            BrowserContext phone = browser.phone(base.toString(), true)) {
            Page edda = as("edda", phone);
            edda.navigate(bench);
            look(edda, "phone-overview");
            Page petra = as("petra", tablet);
            petra.navigate(bench + "/elasticity-test");
            look(petra, "tablet-elasticity-empty");
            petra.fill("#stretched", "52");
            petra.locator("input[name=part][value=ENDS]").check();
            petra.locator("input[name=ending][value=BROKE]").check();
            petra.locator("form[action*='elasticity-test'] .button.main").click();
            look(petra, "tablet-elasticity");
            edda.waitForSelector("li:has-text('Elasticity') [data-weight=prevents]");
            edda.waitForSelector(".benchstand [data-weight=prevents]");
            edda.navigate(petra.url().replaceAll("^https?://[^/]+", ""));
            look(edda, "phone-elasticity");
            petra.fill("#stretched", "40");
            petra.locator("form[action*='elasticity-test'] .button.main").click();
            look(petra, "tablet-elasticity-mistake");
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void theOtherPagesOfTheBench() {
        try (BrowserContext tablet = browser.tablet(base.toString());
            BrowserContext phone = browser.phone(base.toString(), true)) {
            Page petra = as("petra", tablet);
            petra.navigate(bench + "/porosity-test");
            look(petra, "tablet-porosity");
            petra.locator("main .button.main").click();
            look(petra, "tablet-porosity-mistake");
            for (String part : List.of("roots", "mid-lengths", "ends")) {
                petra.locator("input[name=" + part + "][value=POROUS]").check();
            }
            petra.locator("main .button.main").click();
            look(petra, "tablet-porosity-read");
            petra.navigate(bench + "/test-cutting");
            petra.fill("#product", "Larkmoss 4-0");
            petra.fill("#strength", "20");
            petra.fill("#minutes", "35");
            look(petra, "tablet-cutting");
            petra.locator("main .button.main").click();
            look(petra, "tablet-cutting-runs");
            Page edda = as("edda", phone);
            edda.navigate(petra.url().replaceAll("^https?://[^/]+", ""));
            look(edda, "phone-cutting-runs");
            nanos.move(Duration.ofMinutes(35));
            petra.reload();
            petra.locator("input[name=colour][value=OTHERWISE]").check();
            petra.locator("input[name=condition][value=AS_BEFORE]").check();
            petra.locator("input[name=bounce][value=SPRANG_BACK]").check();
            petra.locator("form:has(#colour) .button.main").click();
            look(petra, "tablet-cutting-read");
            petra.locator(".tail summary:has-text('Entered in error')").click();
            petra.fill("#why", "");
            petra.locator("form[action$='/strike'] button").click();
            look(petra, "tablet-strike-mistake");
            petra.navigate("/visits/" + visit);
            look(petra, "tablet-consultation");
        }
        complaints.removeIf(c -> c.startsWith("tablet-consultation: under"));
        assertThat(complaints).isEmpty();
    }
}
