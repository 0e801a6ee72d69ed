package foretress.invitation;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import foretress.Axe;
import foretress.Browser;
import foretress.MovedClock;
import foretress.Walker;
import foretress.salon.OpenSalon;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The desk's pages and the door in a real browser: no accessibility violation, and a picture of each in target/screens. */
@QuarkusTest
class DeskScreensTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/London");

    @TestHTTPResource("/") URI base;
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Invitations invitations;
    @Inject MovedClock clock;
    UUID visit;

    @BeforeEach
    void aDayAtTheSalon() {
        salon.open();
        visit = make.visit(LocalDate.of(1990, 4, 3));
        make.busyDay();
    }

    private static void checked(Page page, String name) {
        page.screenshot(
            new Page.ScreenshotOptions().setPath(Path.of("target/screens", name + ".png")).setFullPage(true));
        assertThat(Axe.everything(page)).as(name + " " + page.url()).isEmpty();
        assertThat(
            (Integer) page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
            .as("sideways scrolling on " + name).isLessThanOrEqualTo(0);
    }

    @Test
    void theDoorIsUsableByEverybodyOnAPhone() {
        String link = "/i/" + invitations.issue(visit, Invitation.Way.SHOWN, "server").reveal();
        try (Browser browser = Browser.open(); BrowserContext phone = browser.phone(root(), true)) {
            Page page = phone.newPage();
            page.navigate(link);
            checked(page, "door");
            page.fill("#day", "31");
            page.selectOption("#month", "4");
            page.fill("#year", "90");
            page.click(".button.main");
            checked(page, "birth-date-wrong");
            page.fill("#day", "3");
            page.fill("#year", "1990");
            page.click(".button.main");
            page.navigate("/answers/stop");
            checked(page, "stop");
            make.is(visit, State.ANSWERING);
            page.navigate("/answers/stop");
            checked(page, "code");
            page.navigate("/i/nothing");
            checked(page, "no-such-link");
            phone.clearCookies();
            page.navigate("/answers/stop");
            checked(page, "use-your-link");
        }
    }

    private String root() {
        return base.toString().replaceAll("/$", "");
    }

    @Test
    void theDesksPagesAreUsableByEverybodyOnATabletAndAPhone() {
        Walker signedIn = salon.as("sanna");
        try (Browser browser = Browser.open()) {
            for (int width : List.of(1024, 360)) {
                try (BrowserContext tablet = browser.sized(root(), width, 768)) {
                    tablet.addCookies(signedIn.cookies().entrySet().stream()
                        .map(c -> new com.microsoft.playwright.options.Cookie(c.getKey(), c.getValue()).setUrl(root()))
                        .toList());
                    desk(tablet.newPage(), "-" + width);
                }
            }
        }
    }

    @Test
    @DisplayName("R55: the day sheet's names and acts are 44 px high or more, what is stopped and what is not answered is said with its act, answered needs no word")
    void theDaySheetSaysWhatToDoAndEveryTargetIsLargeEnough() {
        clock.move(Duration.between(clock.instant(),
            LocalDate.ofInstant(clock.instant(), ZONE).plusDays(60).atTime(11, 42).atZone(ZONE).toInstant()));
        make.busyDay();
        Walker signedIn = salon.as("petra");
        Walker owner = salon.as("edda");
        UUID paper = make.visit(LocalDate.of(1990, 4, 3));
        try (Browser browser = Browser.open()) {
            for (int width : List.of(1024, 390)) {
                try (BrowserContext tablet = browser.sized(root(), width, 768)) {
                    tablet.addCookies(signedIn.cookies().entrySet().stream()
                        .map(c -> new com.microsoft.playwright.options.Cookie(c.getKey(), c.getValue()).setUrl(root()))
                        .toList());
                    Page page = tablet.newPage();
                    page.navigate("/day");
                    checked(page, "day-" + width);
                    daySheet(page);
                    page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
                    checked(page, "day-dark-" + width);
                    page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
                    tablet.clearCookies();
                    tablet.addCookies(owner.cookies().entrySet().stream()
                        .map(c -> new com.microsoft.playwright.options.Cookie(c.getKey(), c.getValue()).setUrl(root()))
                        .toList());
                    page.navigate("/owner");
                    checked(page, "owner-" + width);
                    page.navigate("/visits/" + paper + "/paper");
                    checked(page, "paper-" + width);
                }
            }
        } finally {
            clock.reset();
        }
    }

    private static void daySheet(Page page) {
        assertThat((List<?>) page.evaluate("""
            () => [...document.querySelectorAll('.day a, .day button, .day summary')].filter(t => t.checkVisibility() && t.getBoundingClientRect().height < 44).map(t => t.textContent)
            """)).as("targets too small").isEmpty();
        assertThat(page.locator(".dayrows").textContent()).doesNotContain("Answered", "reaction", "allerg");
        assertThat(page.locator("li.stopped").textContent()).contains("Jon Abbot", "Stopped", "call by", "Call");
        assertThat(page.locator(".dayrows > li:has-text('Wanda Kubik')").textContent()).contains("Not answered",
            "1 hour 1", "Send again");
        assertThat(page.locator(".dayrows > li:has-text('Linh Tran')").textContent()).contains("Half answered",
            "Send again");
        assertThat(page.locator(".dayrows > li:has-text('Ruth Pellow')").textContent()).contains("Prevents",
            "Talk about another service");
        assertThat(page.locator("li.over").textContent()).contains("Amal Rezk", "closed").doesNotContain("Send",
            "Decide");
    }

    private void desk(Page page, String width) {
        page.navigate("/desk");
        checked(page, "desk" + width);
        page.navigate("/desk/new-visit");
        checked(page, "new-visit" + width);
        page.fill("#given", "Ottilie");
        page.fill("#email", "ottilie.example");
        page.fill("#birth-day", "31");
        page.click("main button[type=submit]");
        checked(page, "new-visit-wrong" + width);
        page.navigate("/desk/clients?q=brandt");
        checked(page, "clients" + width);
        page.navigate("/desk/clients/" + client());
        checked(page, "client" + width);
        page.navigate("/desk/visits/" + visit);
        checked(page, "visit" + width);
        page.click("form[action$='/link'] button");
        checked(page, "fresh-link" + width);
        page.click("a[href*='/slip/']");
        checked(page, "slip" + width);
        make.is(visit, State.ANSWERING);
        page.navigate("/desk/visits/" + visit);
        checked(page, "visit-half" + width);
        page.click("form[action$='/code'] button");
        checked(page, "read-out" + width);
    }

    private UUID client() {
        return QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).client.id);
    }
}
