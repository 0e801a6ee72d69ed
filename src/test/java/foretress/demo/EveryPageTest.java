package foretress.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import foretress.Axe;
import foretress.Browser;
import foretress.consent.ConsentInput;
import foretress.intake.ChairRecord;
import foretress.intake.ConsentDraft;
import foretress.intake.Intake;
import foretress.intake.Plans;
import foretress.invitation.Invitations;
import foretress.plan.TestPlan;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import foretress.web.Wire;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.RestAssured;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.inject.Inject;
import java.net.URL;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo salon's real pages, found by following links and filling in forms, never listed by hand. */
@QuarkusTest
@TestProfile(EveryPageTest.TheDemo.class)
public class EveryPageTest {
    /** The demo on a database of its own. */
    public static class TheDemo implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of("foretress.demo", "true",
                "quarkus.datasource.jdbc.url", "jdbc:h2:mem:every-page;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=10000");
        }
    }

    private static final String TOO_WIDE =
        "() => document.documentElement.scrollWidth - document.documentElement.clientWidth";
    /** Links to further pages of ours: no files, no other scheme. */
    private static final String LINKS =
        """
        () => [...document.querySelectorAll('a[href^="/"]:not([download])')].map(a => a.getAttribute('href').split('#')[0])
          .filter(h => !/\\/copy|\\/consent\\/|\\/paper-form|\\/card\\/paper|\\/sent-photos\\/|^\\/language/.test(h))""";
    /** The lightest answer wherever nothing is chosen yet, as somebody in a hurry would give it. */
    private static final String ANSWER = """
        () => {
          const boxes = [...document.querySelectorAll('main input[type=radio], main input[type=checkbox]')];
          const list = document.querySelector('main select[name$=".what"], main input[name$=".name"]');
          for (const name of new Set(boxes.map(b => b.name))) {
            const group = boxes.filter(b => b.name === name);
            const notKnown = name.endsWith('.precision') && group.find(b => b.value === 'dont-know');
            if (notKnown) { notKnown.click(); continue; }
            if (group.some(b => b.checked) || list && !group.some(b => b.value === 'none')) continue;
            const wanted = ['none', 'no', 'never', 'yes', 'typed'].map(v => group.find(b => b.value === v)).find(b => b) ?? group[0];
            if (group.length > 1 || wanted.value !== 'dont-know') wanted.click();
          }
          for (const box of boxes.filter(b => b.name === 'agree' && !b.checked)) box.click();
          for (const field of document.querySelectorAll('main input[inputmode=decimal]')) field.value = '40';
        }""";

    private static final Predicate<String> SKIN_TEST_PROMISED =
        line -> line.contains("a small spot of your skin") || line.contains("small spot of skin first");

    static Browser browser;
    @TestHTTPResource("/") URL base;
    @Inject Invitations invitations;
    @Inject Intake intake;
    @Inject Plans plans;
    @Inject ConsentDraft consents;

    private final List<String> complaints = new ArrayList<>();

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

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = { "petra", "sanna", "edda" })
    @DisplayName("A1, A3, B17: every page a member of staff can reach")
    void everyPageOfTheStaff(String login) {
        try (BrowserContext context = browser.sized(base.toString(), 1024, 768)) {
            Page page = listening(context);
            page.navigate("/sign-in");
            look(page, 1024);
            page.fill("[name=login]", login);
            page.fill("[name=password]", "comb in the millrace");
            page.locator("main button.main").click();
            follow(page);
        }
        assertThat(complaints).isEmpty();
    }

    @ParameterizedTest(name = "{0} in {1}")
    @CsvSource({ "Kubik, en", "Ferrer, es" })
    @DisplayName("A1, A3, B17: every page from the door to the copy, empty, mistaken and answered")
    void everyPageOfAClient(String family, String language) {
        UUID visit = visitOf(family);
        try (BrowserContext context = browser.sized(base.toString(), 390, 844)) {
            Page page = listening(context);
            page.navigate(invitations.issueLink(visit, "server").replaceAll("^https?://[^/]+", ""));
            look(page, 390);
            if (page.locator(".tongues [value=" + language + "]").count() > 0) {
                page.locator(".tongues [value=" + language + "]").click();
                look(page, 390);
            }
            birthDate(page, visit);
            answer(page);
            assertThat(page.url()).endsWith("/answers/done");
            assertThat(page.getAttribute("html", "lang")).isEqualTo(language);
            look(page, 390);
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    @ActivateRequestContext
    @DisplayName("R13, R36: for every demo client who has answered, plan, consent and desk name the same tests")
    void planConsentAndDeskNameTheSameTests() {
        int looked = 0;
        int waits = 0;
        for (Visit visit : QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>listAll())) {
            Answers said = intake.said(visit);
            if (visit.state.isAhead() && !said.byQuestion().isEmpty()) {
                List<String> running = plans.running(visit).stream().map(ChairRecord.Running::test).toList();
                TestPlan plan = plans.of(visit, said);
                List<String> agreed = consents.of(visit, said).tests().stream().map(ConsentInput.Test::id).toList();
                assertThat(plan.tests()).as("still to be begun, %s", visit.client.fullName())
                    .containsExactlyInAnyOrderElementsOf(
                        agreed.stream().filter(test -> !running.contains(test)).toList());
                assertThat(agreed).noneMatch(plan.waiting()::contains);
                List<String> found = consents.of(visit, said).found().stream().map(ConsentInput.Found::text).toList();
                assertThat(agreed.contains("skin-test") || found.stream().noneMatch(SKIN_TEST_PROMISED))
                    .as("no skin test is promised that is not agreed to, %s: %s", visit.client.fullName(), found)
                    .isTrue();
                waits +=
                    (int) found.stream().filter(line -> line.contains("You do not agree to that test here")).count();
                Optional<String> desk = plans.first(visit, said).map(Visit.Owed::what);
                assertThat(plan.owed().isEmpty() || desk.filter(plan.owed().get(0).test()::equals).isPresent())
                    .as("the desk is told the first").isTrue();
                looked++;
            }
        }
        assertThat(looked).isGreaterThan(3);
        assertThat(waits).as("a medicine hides reactions, so the test waits").isPositive();
    }

    @Test
    @DisplayName("A24: the real door fits 14 kB on the wire, style, drawing and headers included")
    void theDoorFitsTheFirstRoundTrip() throws Exception {
        String door = invitations.issueLink(visitOf("Tran"), "server").replaceAll("^https?://[^/]+", "");
        assertThat(Wire.bytes(base.toURI(), door, RestAssured.get(door).asString())).isLessThanOrEqualTo(14 * 1024);
    }

    @Test
    @DisplayName("a page that is not there still has the salon's name and a number to call")
    void aMissingPageIsAPageToo() {
        try (BrowserContext context = browser.sized(base.toString(), 390, 844)) {
            Page page = context.newPage();
            assertThat(page.navigate("/nowhere").status()).isEqualTo(404);
            assertThat(page.locator(".salon").textContent()).contains("Alder & Wren");
            assertThat(page.locator(".help a[href^='tel:']").count()).isEqualTo(1);
            look(page, 390);
        }
        assertThat(complaints).isEmpty();
    }

    private void follow(Page page) {
        Deque<String> open = new ArrayDeque<>(List.of("/password"));
        Set<String> seen = new HashSet<>(open);
        Set<String> kinds = new LinkedHashSet<>();
        String here = page.url().replaceAll("^https?://[^/]+", "");
        open.push(here);
        seen.add(here);
        while (!open.isEmpty()) {
            String path = open.pop();
            assertThat(page.navigate(path).status()).as(path).isEqualTo(200);
            look(page, 1024, kinds.add(kind(path)));
            for (Object link : (List<?>) page.evaluate(LINKS)) {
                if (seen.add(kept((String) link))) {
                    open.add((String) link);
                }
            }
        }
        assertThat(kinds).contains("/desk", "/desk/new-visit", "/password");
    }

    /** Every consultation is opened, since each has other findings; of all other kinds of page the first one. */
    private static String kept(String path) {
        return path.matches("/visits/[^/?]+") ? path : kind(path);
    }

    /** Addresses that differ by what they show, not by what they are, are of one kind. */
    private static String kind(String path) {
        return path.replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "*").replaceAll("\\?.*", "");
    }

    private void answer(Page page) {
        for (int step = 0; step < 40 && !page.url().endsWith("/answers/done"); step++) {
            String before = page.url();
            look(page, 390);
            if (page.url().endsWith("/answers/care")) {
                page.locator("a.button.main").click();
                continue;
            }
            if (step < 16 && page.locator("main input:not([type=hidden])").count() > 0) {
                press(page);
                if (page.locator(".mistakes").count() > 0) {
                    look(page, 390);
                }
            }
            if (page.locator("input[name=typed]").count() > 0) {
                page.locator("input[type=radio][value=typed]").check();
                page.fill("input[name=typed]", "A. Client");
            }
            if (page.url().equals(before)) {
                page.evaluate(ANSWER);
                press(page);
                assertThat(page.locator(".mistakes li").allTextContents()).as(before).isEmpty();
            }
        }
    }

    /** Waits for the page it leads to: a script may send the form first. */
    private static void press(Page page) {
        page.waitForNavigation(() -> page.locator("main button.main").click());
    }

    private void birthDate(Page page, UUID visit) {
        LocalDate born =
            QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).client.birthDate().orElseThrow());
        page.fill("[name=day]", String.valueOf(born.getDayOfMonth()));
        page.selectOption("[name=month]", String.valueOf(born.getMonthValue()));
        page.fill("[name=year]", String.valueOf(born.getYear()));
        page.locator("main button.main").click();
    }

    private UUID visitOf(String family) {
        return QuarkusTransaction.requiringNew()
            .call(() -> Visit.<Visit>find("client.familyName", family).firstResult().id);
    }

    private Page listening(BrowserContext context) {
        Page page = context.newPage();
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") && !message.text().contains("422")) {
                complaints.add(page.url() + ": " + message.text());
            }
        });
        page.onPageError(error -> complaints.add(page.url() + ": " + error));
        return page;
    }

    /** One page in one state: nothing for axe, nothing too wide at its own width or at 320, one heading, a title. */
    private void look(Page page, int width) {
        look(page, width, true);
    }

    private void look(Page page, int width, boolean ofANewKind) {
        String where = page.url().replaceAll("^https?://[^/]+", "") + " " + page.title();
        if (ofANewKind) {
            complaints.addAll(Axe.byTags(page));
        }
        for (Integer size : List.of(width, 320)) {
            page.setViewportSize(size, 800);
            if (((Number) page.evaluate(TOO_WIDE)).intValue() > 0) {
                complaints.add(where + ": too wide at " + size);
            }
        }
        page.setViewportSize(width, 800);
        if (page.locator("h1").count() != 1) {
            complaints.add(where + ": " + page.locator("h1").count() + " headings");
        }
        if (page.title().isBlank()) {
            complaints.add(where + ": no title");
        }
    }
}
