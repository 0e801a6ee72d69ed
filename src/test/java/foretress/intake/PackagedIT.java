package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import foretress.Browser;
import foretress.Launched;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is shipped, started as the README starts it, in a real browser, one start for each database: from the door to the signature,
 * at the bench, over a decision. On the way happens what happens in a salon: a second tab, Back, a page that looks again by itself,
 * a lost cookie, a restart. The thirteen hours of a page left open are in {@link FormTokenTest}, since nothing moves a real start's clock.
 */
@DisplayName("R1: in the packaged program no typed word is lost and nobody types twice")
class PackagedIT {
    private static final String PASSWORD = "comb in the millrace";
    private static final Pattern VISIT = Pattern.compile(".*/visits/([0-9a-f-]{36}).*");
    /** The answer that says no wherever nothing is chosen. */
    private static final String SAY_NO = """
        () => {
          const boxes = [...document.querySelectorAll('main [data-kind] input[type=radio], main [data-kind] input[type=checkbox]')];
          for (const name of new Set(boxes.map(b => b.name))) {
            const group = boxes.filter(b => b.name === name);
            if (group.some(b => b.checked)) continue;
            (['none', 'no', 'never', 'not-pregnant', 'nothing'].map(v => group.find(b => b.value === v)).find(b => b) ?? group[0]).click();
          }
        }""";

    private static Browser browser;
    @TempDir Path folder;

    @BeforeAll static void openBrowser() {
        Assumptions.assumeTrue(Launched.isPackaged(), "NOT RUN: there is no " + Launched.JAR + "; run mvn package first");
        browser = Browser.open();
    }

    @AfterAll static void closeBrowser() {
        if (browser != null) browser.close();
    }

    @Test void onTheEmbeddedDatabase() throws Exception {
        walk(Launched.JAR, Map.of());
    }

    @Test void onPostgres() throws Exception {
        Assumptions.assumeTrue(Files.exists(Launched.POSTGRES_JAR), "NOT RUN: there is no " + Launched.POSTGRES_JAR);
        try (var postgres = EmbeddedPostgres.start()) {
            walk(Launched.POSTGRES_JAR, Map.of("QUARKUS_DATASOURCE_JDBC_URL", postgres.getJdbcUrl("postgres", "postgres"), "QUARKUS_DATASOURCE_USERNAME", "postgres"));
        }
    }

    private Map<String, String> demo(Map<String, String> database, int port) {
        var environment = new HashMap<>(database);
        environment.put("FORETRESS_DEMO", "1");
        environment.put("QUARKUS_HTTP_PORT", "" + port);
        return environment;
    }

    private void walk(Path jar, Map<String, String> database) throws Exception {
        int port = Launched.freePort();
        String base = "http://127.0.0.1:" + port;
        try (var phone = browser.phone(base, true); var tablet = browser.tablet(base)) {
            Tapping client;
            try (var server = Launched.in(jar, folder, demo(database, port)).untilReady()) {
                staffWithTwoTabs(tablet);
                atTheBench(tablet);
                client = client(phone, link(server));
                assertThatNothingIsWrongWith(server);
            }
            client.page().evaluate(SAY_NO);
            try (var again = Launched.in(jar, folder, demo(database, port)).untilReady()) {
                goesOn(client.page());
                sign(client.all());
                decided(tablet);
                assertThatNothingIsWrongWith(again);
            }
        }
    }

    private static void assertThatNothingIsWrongWith(Launched server) {
        assertThat(server.out()).noneMatch(line -> line.contains(" ERROR ") || line.startsWith("\tat "));
    }

    /** The link that the demo prints for a client who has not answered yet. */
    private static String link(Launched server) {
        return server.said("Wanda Kubik").orElseThrow().replaceAll(".*(/i/[A-Za-z0-9_-]+).*", "$1");
    }

    private static void press(Page page) {
        page.waitForNavigation(() -> page.locator("main .button.main").last().click());
    }

    private static Locator kept(Page page) {
        return page.locator("form[data-kept]");
    }

    /** Sends the page's form, which is taken: no page that keeps it comes back, and no mistake. */
    private static void goesOn(Page page) {
        press(page);
        assertThat(kept(page).count()).as("%s: %s", page.url(), page.locator("main").textContent()).isZero();
        assertThat(page.locator(".mistakes").count()).as("%s: %s", page.url(), page.locator("main").textContent()).isZero();
    }

    /** The notice with a lost cookie; the first topics with a second tab and Back. Stops before the page that a restart will meet. */
    private static Tapping client(BrowserContext phone, String link) {
        var page = phone.newPage();
        var client = new Tapping(page, Map.of(), same -> {}).enter(link, "30", "6", "1957");
        assertThat(client.at()).isEqualTo("/answers/notice");
        page.locator("input[name=agree]").check();
        phone.clearCookies();
        press(page);
        assertThat(kept(page).locator("[name=agree]").inputValue()).isEqualTo("yes");
        var tab = phone.newPage();
        new Tapping(tab, Map.of(), same -> {}).enter(link, "30", "6", "1957");
        goesOn(page);
        tab.navigate(client.at());
        tab.navigate("/answers");
        page.evaluate(SAY_NO);
        goesOn(page);
        page.goBack();
        page.evaluate(SAY_NO);
        goesOn(page);
        tab.close();
        return client;
    }

    private static void sign(Tapping client) {
        var page = client.page();
        client.send();
        page.locator("input[name=agree]").all().forEach(box -> box.check());
        page.check("input[type=radio][name=mark][value=typed]");
        page.fill("[name=typed]", "Wanda Kubik");
        goesOn(page);
        assertThat(client.at()).isEqualTo("/answers/done");
    }

    private static void signIn(Page page, String login, String to) {
        page.navigate("/sign-in?to=" + to);
        page.fill("[name=login]", login);
        page.fill("[name=password]", PASSWORD);
        press(page);
    }

    /** A new visit is typed while another tab goes through other pages. */
    private static void staffWithTwoTabs(BrowserContext tablet) {
        var page = tablet.newPage();
        signIn(page, "petra", "/desk/new-visit");
        page.fill("[name=given]", "Ida");
        page.fill("[name=family]", "Marsh");
        var tab = tablet.newPage();
        for (var path : new String[] { "/desk/new-visit", "/day", "/desk" }) tab.navigate(path);
        press(page);
        assertThat(kept(page).count()).isZero();
        assertThat(page.locator("[name=family]").inputValue()).as("the form itself, which lacks a date").isEqualTo("Marsh");
        tablet.clearCookies();
        page.fill("[name=given]", "Ida Ruth");
        press(page);
        page.fill("[name=login]", "petra");
        page.fill("[name=password]", PASSWORD);
        press(page);
        assertThat(kept(page).locator("[name=given]").inputValue()).isEqualTo("Ida Ruth");
        press(page);
        assertThat(page.locator("[name=given]").inputValue()).isEqualTo("Ida Ruth");
        tab.close();
        page.close();
    }

    private static String visitOf(Page page, String name) {
        page.navigate("/desk");
        var href = page.locator("a[href*='/visits/']", new Page.LocatorOptions().setHasText(name)).first().getAttribute("href");
        var found = VISIT.matcher(href);
        assertThat(found.matches()).as(href).isTrue();
        return "/visits/" + found.group(1);
    }

    /** A tap after the page has looked again by itself for a while, and another tab has gone its way. */
    private static void atTheBench(BrowserContext tablet) {
        var page = tablet.newPage();
        var bench = visitOf(page, "Ottilie") + "/bench";
        page.navigate(bench);
        page.locator(".owed a.button.main").first().click();
        press(page);
        page.fill("#strength", "40");
        page.locator("form[action$='/mix'] .button").click();
        page.locator("form[action$='/start'] .button.main").click();
        page.waitForSelector("button[value='A:SLIGHTLY_LIGHTER']");
        for (int i = 0; i < 3; i++) page.waitForResponse(answer -> answer.url().endsWith("/live"), () -> {});
        var tab = tablet.newPage();
        tab.navigate(bench);
        tab.close();
        page.locator("button[value='A:SLIGHTLY_LIGHTER']").click();
        page.waitForSelector("button[value='A:SLIGHTLY_LIGHTER'][aria-pressed=true]");
        page.reload();
        assertThat(page.locator("button[value='A:SLIGHTLY_LIGHTER']").getAttribute("aria-pressed")).as("stored, not only shown").isEqualTo("true");
        page.close();
    }

    /** Asked again on the day, handed over, signed on the salon's tablet, given back, decided in one of two tabs. */
    private static void decided(BrowserContext tablet) {
        var page = tablet.newPage();
        signIn(page, "petra", "/day");
        var here = visitOf(page, "Amal");
        page.navigate(here + "/today");
        for (int i = 0; i < 30 && page.locator("main form").count() > 0; i++) {
            page.evaluate(SAY_NO);
            press(page);
        }
        page.navigate(here + "/decision");
        if (page.locator("form[action$='/hand-over'] button").count() > 0) handedOver(page, here);
        var tab = tablet.newPage();
        tab.navigate(here + "/decision");
        tab.navigate("/day");
        page.locator("[name=verdict-0]").first().check();
        press(page);
        assertThat(kept(page).count()).as("taken, or asked for what the verdict lacks: %s", page.url()).isZero();
        tab.close();
        page.close();
    }

    private static void handedOver(Page page, String here) {
        page.waitForNavigation(() -> page.locator("form[action$='/hand-over'] button").click());
        press(page);
        page.fill("#day", "2");
        page.selectOption("#month", "9");
        page.fill("#year", "1988");
        press(page);
        press(page);
        page.locator("input[name=agree]").all().forEach(box -> box.check());
        page.check("input[type=radio][name=mark][value=typed]");
        page.fill("[name=typed]", "Amal Rezk");
        press(page);
        page.waitForNavigation(() -> page.locator("a[href^='/sign-in']").click());
        page.fill("[name=login]", "petra");
        page.fill("[name=password]", PASSWORD);
        press(page);
        page.navigate(here + "/decision");
    }
}
