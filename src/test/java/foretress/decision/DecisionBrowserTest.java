package foretress.decision;

import static foretress.decision.AtTheChair.press;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import foretress.Axe;
import foretress.Browser;
import foretress.MovedClock;
import foretress.Pictures;
import foretress.assessment.TestFact;
import foretress.bench.GivenTests;
import foretress.intake.Knocking;
import foretress.picture.Photos;
import foretress.salon.OpenSalon;
import foretress.skintest.Chair;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The day of the visit in a real browser, as a stylist's tablet goes it and as the client holds it in between. */
@QuarkusTest
class DecisionBrowserTest {
    private static final String TOO_WIDE =
        "() => document.documentElement.scrollWidth - document.documentElement.clientWidth";
    static Browser browser;
    @TestHTTPResource("/") URL base;
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Chair chair;
    @Inject GivenTests tests;
    @Inject MovedClock clock;
    UUID visit;
    private final List<String> found = new ArrayList<>();

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
    void aClientSigned() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
    }

    @AfterEach
    void backToNow() {
        clock.reset();
        assertThat(found).isEmpty();
    }

    private void signed(Map<String, List<String>> told) {
        knocking.come(visit, told).agree().all().readBack().sign("Ottilie Brandt");
        clock.move(Duration.ofDays(5));
    }

    private LocalDate today() {
        return clock.instant().atZone(QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).zone()))
            .toLocalDate();
    }

    private void signIn(Page page, String login, String to) {
        page.navigate("/sign-in?to=" + to);
        AtTheChair.signIn(page, login, OpenSalon.PASSWORD);
    }

    /** One page, on a tablet and as wide as a phone: a picture, nothing for axe, nothing too wide. */
    private void look(Page page, String name) {
        for (int width : List.of(390, 1024)) {
            page.setViewportSize(width, width == 390 ? 844 : 768);
            Pictures.take(page, name + "-" + width);
            if (((Number) page.evaluate(TOO_WIDE)).intValue() > 0) {
                found.add(name + " is too wide at " + width);
            }
        }
        page.evaluate("() => scrollTo(0, 0)"); // a button half under the bar that stays is whole once scrolled to
        found.addAll(Axe.findings(page));
    }

    @Test
    @DisplayName("A1, A3: asked again, handed over, signed, decided, closed and on the card, on one tablet")
    void fromTheMorningToTheCard() {
        signed(Map.of("asthma", List.of("yes")));
        tests.give(visit, TestFact.sound("skin-test", "negative", today().minusDays(3), today().minusDays(1)));
        String here = "/visits/" + visit;
        try (BrowserContext context = browser.tablet(base.toString())) {
            Page page = context.newPage();
            signIn(page, "petra", here + "/decision");
            look(page, "decision-before");
            page.navigate(here + "/today");
            look(page, "today");
            press(page);
            assertThat(page.locator(".mistakes").count()).as("nothing was chosen beforehand").isOne();
            look(page, "today-mistakes");
            for (int i = 0; i < 30 && page.locator("main form").count() > 0; i++) {
                page.evaluate(AtTheChair.SAY_NO);
                press(page);
            }
            look(page, "today-done");
            page.navigate(here + "/decision");
            handed(page);
            look(page, "decision");
            page.check("[name=verdict-0][value=proceed-with-changes]");
            press(page);
            assertThat(page.locator(".mistakes").textContent()).contains("Write down the changes");
            look(page, "decision-mistakes");
            page.fill("[name=conditions-0]", "Half the usual strength; the ends left out for the first ten minutes.");
            press(page);
            look(page, "decision-made");
            closed(page, here);
        }
        assertThat(QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).state))
            .isEqualTo(State.CLOSED);
    }

    /** The tablet goes to the client, who signs, and comes back. */
    private void handed(Page page) {
        AtTheChair.handedOver(page, "Ottilie Brandt", LocalDate.of(1965, 3, 4));
        look(page, "handed-back");
        AtTheChair.givenBack(page, "petra", OpenSalon.PASSWORD);
        assertThat(page.url()).endsWith("/decision");
    }

    private void closed(Page page, String here) {
        page.navigate(here + "/closing");
        look(page, "closing");
        page.click("main .button.main");
        assertThat(page.locator(".mistakes").textContent()).as("R3: nothing closes unsaid").contains("Say how it went",
            "Say whether something went wrong");
        look(page, "closing-mistakes");
        page.check("[name=course-0][value=changed]");
        AtTheChair.used(page, 0, "regrowth",
            Map.of("product", "Larkmoss", "shade", "4-0", "batch", "B117", "strength", "6 %", "minutes", "35"));
        page.check("[name=strand][value=good]");
        page.fill("[name=condition]", "Even and soft.");
        assertThat(page.locator(".closing .what").isVisible()).isFalse();
        page.check("[name=wrong][value=yes]");
        assertThat(page.locator(".closing .what").isVisible()).isTrue();
        page.check("[name=wrong-kind][value=sting]");
        page.check("[name=wrong-when][value=while-on]");
        page.fill("[name=wrong-helped]", "Rinsed at once; gone after two minutes.");
        page.click("[name=more]");
        assertThat(page.locator("[name=product-1]").count()).as("one empty line").isOne();
        assertThat(page.inputValue("[name=batch-0]")).as("what was typed stays").isEqualTo("B117");
        AtTheChair.used(page, 1, "ends", Map.of("product", "Larkmoss Soft", "ratio", "1 : 2"));
        look(page, "closing-filled");
        press(page);
        assertThat(page.url()).contains("/card");
        String card = page.url();
        look(page, "card");
        photos(page, here);
        page.navigate(here + "/closing");
        look(page, "closing-correct");
        page.navigate(card);
        look(page, "card-photos");
    }

    private void photos(Page page, String here) {
        page.navigate(here + "/hair");
        page.check("[name=moment][value=AFTER]");
        page.setInputFiles("[name=photo]", new FilePayload("hair.jpg", "image/jpeg", Photos.withExif(900, 600, 6)));
        press(page);
        assertThat(page.locator(".mistakes").textContent()).contains("Ask the client first");
        look(page, "photos-mistakes");
        page.check("[name=leave]");
        page.setInputFiles("[name=photo]", new FilePayload("hair.jpg", "image/jpeg", Photos.withExif(900, 600, 6)));
        press(page);
        assertThat(page.locator(".thumbs img").count()).isOne();
        look(page, "photos");
    }

    @Test
    @DisplayName("restorer lotion, the bench sees nothing at all: declined with an alternative; the owner sees no way past it either")
    void nothingAtAllIsDeclined() {
        signed(Map.of("darkening-lotion", List.of("some-time-ago"), "treatments.what", List.of("restorer"),
            "treatments.when.precision", List.of("years-ago"), "treatments.when.ago", List.of("1-2"), "treatments.zone",
            List.of("whole")));
        tests.give(visit, TestFact.sound("incompatibility-test", "nothing-happened", today(), today()));
        try (BrowserContext context = browser.tablet(base.toString())) {
            Page page = context.newPage();
            signIn(page, "edda", "/visits/" + visit + "/decision");
            assertThat(page.locator("main").textContent()).contains("Nobody can go against this.");
            assertThat(page.locator("[name=verdict-0][value=proceed-with-changes]").count()).isZero();
            look(page, "decision-nobody");
            page.check("[name=verdict-0][value=decline]");
            page.selectOption("[name=alternative-0]", "cut-and-dry");
            press(page);
            assertThat(page.locator("main").textContent()).contains("The decision is recorded.", "Proposed instead");
        }
    }

    @Test
    @DisplayName("A1, A3: two records of one person side by side")
    void twoRecords() {
        signed(Map.of("colour-reaction", List.of("yes"), "colour-reaction-what", List.of("swelling", "breathing")));
        UUID other = make.visit(LocalDate.of(1966, 3, 4));
        String one = client(visit);
        try (BrowserContext context = browser.tablet(base.toString())) {
            Page page = context.newPage();
            signIn(page, "petra", "/clients/" + one + "/merge");
            look(page, "merge-find");
            page.navigate("/clients/" + one + "/merge?with=" + client(other));
            look(page, "merge");
            press(page);
            assertThat(page.locator(".mistakes").count()).isOne();
            look(page, "merge-mistakes");
        }
    }

    /** What of the first screen ends below its fold, is cut off, or is smaller than a thumb. */
    private static final String BELOW_THE_FOLD = """
        () => [...document.querySelectorAll('.stays, .standing, .owed > li, .reasons > li, .ask')]
          .filter(e => e.offsetParent !== null && !e.closest('details:not([open])'))
          .filter(e => e.getBoundingClientRect().bottom > 768 || e.scrollWidth > e.clientWidth + 1)
          .map(e => e.className + ' ' + Math.round(e.getBoundingClientRect().bottom) + ': ' + e.textContent.trim().slice(0, 60))
          .concat([...document.querySelectorAll('main a, main button, main summary')]
            .filter(e => e.offsetParent !== null && !e.closest('.map') && e.getBoundingClientRect().height < 43.5)
            .map(e => 'under 44 px: ' + e.outerHTML.slice(0, 100)))""";

    @Test
    @DisplayName("R54, R55: at 1024 by 768 standing, whole reasons, owed tests, what to ask and the decision lie on the first screen; folded the page ends by 1,500")
    void theFirstScreenOfAVisit() {
        Map<String, Map<String, List<String>>> clients = Map.of(
            "plain", Map.of(), "unsure", knocking.knowsNothing(),
            "heavy",
            Map.of("darkening-lotion", List.of("some-time-ago"), "treatments.what", List.of("restorer"),
                "treatments.when.precision", List.of("years-ago"),
                "treatments.when.ago", List.of("1-2"), "treatments.zone", List.of("whole"), "asthma", List.of("yes")),
            "tattoo", Map.of("black-tattoo", List.of("yes"), "black-tattoo-reaction", List.of("yes"),
                "black-tattoo-what", List.of("blisters")));
        for (String name : clients.keySet()) {
            clock.reset();
            visit = make.visit(LocalDate.of(1965, 3, 4));
            signed(clients.get(name));
            firstScreen("first-" + name);
        }
        clock.reset();
        UUID unanswered = make.visit(LocalDate.of(1965, 3, 4));
        visit = unanswered;
        try (BrowserContext context = browser.tablet(base.toString())) {
            Page page = context.newPage();
            signIn(page, "petra", "/visits/" + unanswered);
            assertThat(page.locator(".owed").textContent()).as("a first colour owes its skin test, answered or not")
                .contains("Skin test");
            look(page, "first-unanswered");
        }
    }

    private void firstScreen(String name) {
        try (BrowserContext context = browser.tablet(base.toString())) {
            Page page = context.newPage();
            signIn(page, "petra", "/visits/" + visit);
            page.setViewportSize(1024, 768);
            ((List<?>) page.evaluate(BELOW_THE_FOLD)).forEach(what -> found.add(name + ": " + what));
            assertThat(page.locator(".stays a[href$='/decision']").isVisible()).isTrue();
            assertThat(page.locator(".owed a.button").count() > 0)
                .as("every test that can be begun has its button; who must not be tested owes none")
                .isEqualTo(!name.equals("first-tattoo"));
            assertThat(page.locator(".ask a[href$='/today']").textContent()).isEqualTo("Ask now");
            assertThat(page.locator(".button.main:visible").count()).as("one solid button").isLessThanOrEqualTo(1);
            assertThat(((Number) page.evaluate("() => document.documentElement.scrollHeight")).intValue())
                .isLessThanOrEqualTo(1500);
            page.evaluate("() => scrollTo(0, 600)");
            assertThat(page.locator(".stays").boundingBox().y).as("the line stays at the edge").isBetween(-1.0, 60.0);
            look(page, name);
            page.evaluate("() => { document.documentElement.style.fontSize = '200%'; }");
            if (((Number) page.evaluate(TOO_WIDE)).intValue() > 0) {
                found.add(name + " is too wide with text twice as large");
            }
        }
    }

    @Test
    @DisplayName("R35: of a client who knows nothing the stylist reads each act once; every finding with its sources is a tap or two away, and counted")
    void whoKnowsNothingIsReadByTheAct() {
        signed(knocking.knowsNothing());
        try (BrowserContext context = browser.tablet(base.toString())) {
            Page page = context.newPage();
            signIn(page, "petra", "/visits/" + visit);
            List<String> acts =
                page.locator(".reasons > li:has(> .because > details.why > ul.reasons) > p").allTextContents();
            assertThat(acts).contains("Ask again: Past reactions", "Ask again: Your health").doesNotHaveDuplicates();
            assertThat(page.locator("main .reasons > li:not(.ask):not(.pair)").count()).as("findings and acts")
                .isGreaterThan(60);
            assertThat(page.evaluate(UNCOUNTED)).as("acts that do not say how many they settle").isEqualTo(List.of());
            assertThat(page.evaluate(NO_SOURCE)).as("findings without their source").isEqualTo(List.of());
            page.locator("details.more > summary").click();
            page.locator(".reasons > li:has-text('Ask again: Your health') > .because > details > summary").first()
                .click();
            look(page, "unsure-open");
        }
    }

    @Test
    @DisplayName("R47, A3: a refused test leads from the visit to what the client decided; ticked there, its button makes it again; the owner's check of the chain")
    void aRefusedTestOnATablet() {
        visit = chair.refused();
        try (BrowserContext context = browser.tablet(base.toString())) {
            Page page = context.newPage();
            signIn(page, "petra", "/visits/" + visit);
            look(page, "refused-visit");
            page.locator(".owed a[href$='/refused']").click();
            press(page);
            assertThat(page.locator(".mistakes a").count()).isOne();
            look(page, "refused");
            page.check("[name=wanted][value=skin-test]");
            press(page);
            assertThat(page.locator(".owed a[href$='/skin-test']").count()).isOne();
        }
        try (BrowserContext context = browser.tablet(base.toString())) {
            Page page = context.newPage();
            signIn(page, "edda", "/owner");
            page.locator("#chain .button").click();
            assertThat(page.locator("#chain [role=status]").textContent()).contains("whole");
            look(page, "owner-chain");
        }
    }

    private static final String UNCOUNTED = """
        () => [...document.querySelectorAll('.because > details.why:has(> ul.reasons)')]
          .filter(act => act.querySelector('summary > span').textContent !== `settles ${act.querySelectorAll(':scope > ul > li').length} findings`)
          .map(act => act.textContent.trim().slice(0, 60))""";
    private static final String NO_SOURCE = """
        () => [...document.querySelectorAll('.reasons > li')].filter(e => e.querySelector('details.why > ul:not(.reasons)') === null && !e.matches('.ask, .pair'))
          .map(e => e.textContent.trim().slice(0, 60))""";

    @Test
    @DisplayName("R20: a called-off visit says so, has no standing, nothing owed and nothing to decide, and leads to the card")
    void aCalledOffVisit() {
        signed(Map.of());
        make.is(visit, State.CANCELLED);
        try (BrowserContext context = browser.tablet(base.toString())) {
            Page page = context.newPage();
            signIn(page, "petra", "/visits/" + visit);
            assertThat(page.locator("h1").textContent()).contains("Called off");
            assertThat(page.locator(".standing, .owed, a[href$='/decision']").count()).isZero();
            assertThat(page.locator("main a[href$='/card']").count()).isPositive();
            assertThat(page.locator("main").textContent()).doesNotContain("too soon");
            look(page, "called-off");
            make.is(visit, State.CLOSED);
            page.reload();
            assertThat(page.locator("h1").textContent()).contains("Closed");
            assertThat(page.locator("a[href$='/closing']").count()).isPositive();
            page.navigate("/visits/" + visit + "/bench");
            assertThat(page.locator(".benchstand, .owed").count()).isZero();
        }
    }

    private static String client(UUID visit) {
        return QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).client.id.toString());
    }
}
