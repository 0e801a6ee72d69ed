package foretress.intake;

import static foretress.decision.AtTheChair.SAY_NO;
import static foretress.decision.AtTheChair.press;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import foretress.Browser;
import foretress.decision.AtTheChair;
import foretress.start.Launched;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is shipped, started as the README starts it, in a real browser, on each database one visit from its booking over door, signature,
 * bench, a decision that goes ahead and the closing to the record card. On the way happens what happens in a salon: a second tab, Back,
 * a page that looks again by itself, a lost cookie, a restart. The thirteen hours of a page left open are in {@link FormTokenTest}, since nothing moves a real start's clock.
 */
@DisplayName("R1: in the packaged program no typed word is lost and nobody types twice")
class PackagedIT {
    private static final String PASSWORD = "comb in the millrace";
    private static final String CLIENT = "Ida Ruth Marsh";
    private static final LocalDate BORN = LocalDate.of(1957, 6, 30);
    private static final Pattern VISIT = Pattern.compile(".*/visits/([0-9a-f-]{36}).*");
    private static Browser browser;
    @TempDir Path folder;

    @BeforeAll
    static void openBrowser() {
        Assumptions.assumeTrue(Launched.isPackaged(),
            "NOT RUN: there is no " + Launched.JAR + "; run mvn package first");
        browser = Browser.open();
    }

    @AfterAll
    static void closeBrowser() {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void onTheEmbeddedDatabase() throws Exception {
        walk(Launched.JAR, Map.of());
    }

    @Test
    void onPostgres() throws Exception {
        Assumptions.assumeTrue(Files.exists(Launched.POSTGRES_JAR), "NOT RUN: there is no " + Launched.POSTGRES_JAR);
        try (EmbeddedPostgres postgres = EmbeddedPostgres.start()) {
            walk(Launched.POSTGRES_JAR, Map.of("QUARKUS_DATASOURCE_JDBC_URL",
                postgres.getJdbcUrl("postgres", "postgres"), "QUARKUS_DATASOURCE_USERNAME", "postgres"));
        }
    }

    private Map<String, String> demo(Map<String, String> database, int port) {
        HashMap<String, String> environment = new HashMap<>(database);
        environment.put("FORETRESS_DEMO", "1");
        environment.put("QUARKUS_HTTP_PORT", "" + port);
        return environment;
    }

    private void walk(Path jar, Map<String, String> database) throws Exception {
        int port = Launched.freePort();
        String base = "http://127.0.0.1:" + port;
        try (BrowserContext phone = browser.phone(base, true); BrowserContext tablet = browser.tablet(base)) {
            Page desk;
            Page bench;
            Tapping client;
            try (Launched server = Launched.in(jar, folder, demo(database, port)).untilReady()) {
                desk = bookedWithTwoTabs(tablet);
                atTheBench(tablet);
                client = client(phone, link(desk));
                bench = hairInHand(tablet, here(desk));
                assertThatNothingIsWrongWith(server);
            }
            client.page().evaluate(SAY_NO);
            pulled(bench);
            try (Launched again = Launched.in(jar, folder, demo(database, port)).untilReady()) {
                goesOn(client.page());
                goesOn(bench);
                sign(client.all());
                passed(bench);
                handedOver(tablet, here(desk));
                Page live = lookingByItself(tablet, here(desk));
                decided(tablet, here(desk), live);
                closed(tablet, here(desk), live);
                assertThatNothingIsWrongWith(again);
            }
        }
    }

    private static void assertThatNothingIsWrongWith(Launched server) {
        assertThat(server.out()).noneMatch(line -> line.contains(" ERROR ") || line.startsWith("\tat "));
    }

    /** The address of a visit for those who work at it, from its page at the desk. */
    private static String here(Page desk) {
        return visit(desk.url());
    }

    private static String visit(String address) {
        Matcher found = VISIT.matcher(address);
        assertThat(found.matches()).as(address).isTrue();
        return "/visits/" + found.group(1);
    }

    /** The link as the desk shows it. */
    private static String link(Page desk) {
        desk.waitForNavigation(() -> desk.locator("form[action$='/link'] button").click());
        return desk.inputValue("[name=link]").replaceAll("^https?://[^/]+", "");
    }

    private static Locator kept(Page page) {
        return page.locator("form[data-kept]");
    }

    /** Sends the page's form, which is taken: no page that keeps it comes back, and no mistake. */
    private static void goesOn(Page page) {
        press(page);
        assertThat(kept(page).count()).as("%s: %s", page.url(), page.locator("main").textContent()).isZero();
        assertThat(page.locator(".mistakes").count()).as("%s: %s", page.url(), page.locator("main").textContent())
            .isZero();
    }

    /** The notice with a lost cookie; the first topics with a second tab and Back. Stops before the page that a restart will meet. */
    private static Tapping client(BrowserContext phone, String link) {
        Page page = phone.newPage();
        Tapping client =
            new Tapping(page, Map.of("hair-state", List.of("breaks")), same -> {}).enter(link, "30", "6", "1957");
        assertThat(client.at()).isEqualTo("/answers/notice");
        page.locator("input[name=agree]").check();
        phone.clearCookies();
        press(page);
        assertThat(kept(page).locator("[name=agree]").inputValue()).isEqualTo("yes");
        Page tab = phone.newPage();
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
        client.send();
        AtTheChair.signs(client.page(), CLIENT);
        assertThat(kept(client.page()).count()).isZero();
        assertThat(client.at()).isEqualTo("/answers/done");
    }

    private static void signIn(Page page, String login, String to) {
        page.navigate("/sign-in?to=" + to);
        AtTheChair.signIn(page, login, PASSWORD);
    }

    /**
     * The owner moves the salon to where it is about noon: only answers of the very day of a visit are good enough for its decision, and
     * so that day does not end on the way, whenever this runs.
     */
    private static ZoneId salonAtNoon(Page page) {
        signIn(page, "edda", "/salon");
        String zone = page.locator("[name=zone] option").allTextContents().stream().filter(PackagedIT::isAboutNoon)
            .findFirst().orElseThrow();
        page.selectOption("[name=zone]", zone);
        goesOn(page);
        return ZoneId.of(zone);
    }

    private static boolean isAboutNoon(String zone) {
        return !zone.isBlank() && Math.abs(Instant.now().atZone(ZoneId.of(zone)).getHour() - 12) <= 2;
    }

    /** A new visit is typed while another tab goes through other pages; the cookie is lost, and a field was left out. */
    private static Page bookedWithTwoTabs(BrowserContext tablet) {
        Page page = tablet.newPage();
        ZoneId zone = salonAtNoon(page);
        signIn(page, "petra", "/desk/new-visit");
        page.fill("[name=given]", "Ida");
        page.fill("[name=family]", "Marsh");
        Page tab = tablet.newPage();
        for (String path : new String[] { "/desk/new-visit", "/day", "/desk" }) {
            tab.navigate(path);
        }
        press(page);
        assertThat(kept(page).count()).isZero();
        assertThat(page.locator("[name=family]").inputValue()).as("the form itself, which lacks a date")
            .isEqualTo("Marsh");
        tablet.clearCookies();
        page.fill("[name=given]", "Ida Ruth");
        press(page);
        AtTheChair.signIn(page, "petra", PASSWORD);
        assertThat(kept(page).locator("[name=given]").inputValue()).isEqualTo("Ida Ruth");
        press(page);
        assertThat(page.locator("[name=given]").inputValue()).isEqualTo("Ida Ruth");
        tab.close();
        booked(page, LocalDate.now(zone));
        return page;
    }

    private static void booked(Page page, LocalDate today) {
        page.fill("#birth-day", "" + BORN.getDayOfMonth());
        page.selectOption("[name=birth-month]", "" + BORN.getMonthValue());
        page.fill("[name=birth-year]", "" + BORN.getYear());
        page.fill("[name=date]", today.toString());
        page.fill("[name=time]", "18:00");
        page.selectOption("[name=stylist]", new SelectOption().setLabel("Petra Lind"));
        page.check("[name=service][value=perm-alkaline]");
        goesOn(page);
        assertThat(page.locator("h1").textContent()).contains(CLIENT);
    }

    private static String visitOf(Page page, String name) {
        page.navigate("/desk");
        String href = page.locator("a[href*='/visits/']", new Page.LocatorOptions().setHasText(name)).first()
            .getAttribute("href");
        return visit(href);
    }

    /** A tap after the page has looked again by itself for a while, and another tab has gone its way. */
    private static void atTheBench(BrowserContext tablet) {
        Page page = tablet.newPage();
        String bench = visitOf(page, "Ottilie") + "/bench";
        page.navigate(bench);
        page.locator(".owed a.button.main").first().click();
        press(page);
        page.fill("#strength", "40");
        page.locator("form[action$='/mix'] .button").click();
        page.locator("form[action$='/start'] .button.main").click();
        page.waitForSelector("button[value='A:SLIGHTLY_LIGHTER']");
        for (int i = 0; i < 3; i++) {
            page.waitForResponse(answer -> answer.url().endsWith("/live"), () -> {});
        }
        Page tab = tablet.newPage();
        tab.navigate(bench);
        tab.close();
        page.locator("button[value='A:SLIGHTLY_LIGHTER']").click();
        page.waitForSelector("button[value='A:SLIGHTLY_LIGHTER'][aria-pressed=true]");
        page.reload();
        assertThat(page.locator("button[value='A:SLIGHTLY_LIGHTER']").getAttribute("aria-pressed"))
            .as("stored, not only shown").isEqualTo("true");
        page.close();
    }

    /** The page on which the first hair is written down, shown before the program stops. */
    private static Page hairInHand(BrowserContext tablet, String here) {
        Page page = tablet.newPage();
        page.navigate(here + "/bench/elasticity-test");
        return page;
    }

    /** Wet hair, stretched to its mark, that came back at once. */
    private static void pulled(Page page) {
        page.fill("[name=rest]", "50");
        page.fill("[name=stretched]", "65");
        page.check("[name=ending][value=SPRANG_BACK]");
    }

    /** The client said that her hair breaks: it owes this test until hairs of every part have passed. */
    private static void passed(Page page) {
        for (String part : List.of("MID_LENGTHS", "ENDS")) {
            assertThat(page.locator("[name=part]:checked").inputValue()).isEqualTo(part);
            pulled(page);
            goesOn(page);
        }
        assertThat(page.locator(".benchstand.big").textContent()).contains("Pass");
        page.close();
    }

    /** The bench left open in another tab. */
    private static Page lookingByItself(BrowserContext tablet, String here) {
        Page page = tablet.newPage();
        page.navigate(here + "/bench");
        return page;
    }

    private static void looksTwice(Page live) {
        for (int i = 0; i < 2; i++) {
            live.waitForResponse(answer -> answer.url().endsWith("/live") && answer.ok(), () -> {});
        }
    }

    /** What was found changed since she signed: the tablet is handed over, signed on, given back. */
    private static void handedOver(BrowserContext tablet, String here) {
        Page page = tablet.newPage();
        page.navigate(here + "/decision");
        assertThat(page.locator("[name=verdict-0][value=proceed-with-changes]").count())
            .as("not before she has signed for what is found now").isZero();
        AtTheChair.handedOver(page, CLIENT, BORN);
        AtTheChair.givenBack(page, "petra", PASSWORD);
        page.close();
    }

    /** It goes ahead with changes, written down twice after Back and once more in another tab. */
    private static void decided(BrowserContext tablet, String here, Page live) {
        Page page = tablet.newPage();
        page.navigate(here + "/decision");
        Page tab = tablet.newPage();
        tab.navigate(here + "/decision");
        goesAhead(page, live, "Rods one size up.");
        page.goBack();
        goesAhead(page, live, "Rods one size up; five minutes less.");
        chosen(tab, "Rods one size up; five minutes less; ends papered.");
        goesOn(tab);
        assertThat(tab.locator("main").textContent()).as("decided in the other tab meanwhile")
            .contains("A newer assessment holds");
        press(tab);
        assertThat(tab.inputValue("[name=conditions-0]")).as("typed once")
            .isEqualTo("Rods one size up; five minutes less; ends papered.");
        goesAhead(tab, live, "Rods one size up; five minutes less; ends papered.");
        tab.close();
        page.close();
    }

    private static void chosen(Page page, String changes) {
        page.check("[name=verdict-0][value=proceed-with-changes]");
        page.fill("[name=conditions-0]", changes);
    }

    private static void goesAhead(Page page, Page live, String changes) {
        chosen(page, changes);
        looksTwice(live);
        goesOn(page);
        assertThat(page.locator("main").textContent()).contains("The decision is recorded.", changes);
    }

    /** Filled in in two tabs: one closes, the other keeps what was typed and corrects; Back leads to a form that can be sent. */
    private static void closed(BrowserContext tablet, String here, Page live) {
        Page page = closing(tablet, here, "Sat well.");
        Page tab = closing(tablet, here, "Sat well; the nape needs a minute more.");
        looksTwice(live);
        onTheCard(page, "Sat well.");
        press(tab);
        assertThat(tab.inputValue("[name=notes]")).as("closed in the other tab meanwhile")
            .isEqualTo("Sat well; the nape needs a minute more.");
        because(tab, "Written in the other tab.");
        onTheCard(tab, "the nape needs a minute more");
        page.goBack();
        page.fill("[name=notes]", "Sat well; the nape two minutes.");
        because(page, "Looked again.");
        onTheCard(page, "the nape two minutes");
        for (String paper : List.of(page.url() + "/paper", here + "/consent/1", here + "/consent/2")) {
            assertThatIsPaper(tablet, paper);
        }
        page.navigate(here);
        assertThat(page.locator("h1").textContent()).contains("Closed");
    }

    private static Page closing(BrowserContext tablet, String here, String notes) {
        Page page = tablet.newPage();
        page.navigate(here + "/closing");
        page.check("[name=course-0][value=as-planned]");
        AtTheChair.used(page, 0, "whole", Map.of("product", "Invented Wave", "batch", "W-31", "minutes", "20"));
        page.check("[name=strand][value=good]");
        page.check("[name=wrong][value=no]");
        page.fill("[name=condition]", "Even curl, no sting.");
        page.fill("[name=notes]", notes);
        return page;
    }

    private static void because(Page page, String why) {
        page.fill("[name=why]", why);
    }

    private static void onTheCard(Page page, String notes) {
        goesOn(page);
        assertThat(page.url()).endsWith("/card");
        assertThat(page.locator("article.visit").first().textContent()).contains("Invented Wave", "W-31",
            "Even curl, no sting.", notes);
    }

    private static void assertThatIsPaper(BrowserContext tablet, String address) {
        APIResponse paper = tablet.request().get(address);
        assertThat(paper.status()).as(address).isEqualTo(200);
        assertThat(new String(paper.body(), 0, 5, StandardCharsets.US_ASCII)).as(address).isEqualTo("%PDF-");
    }
}
