package foretress.skintest;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.FilePayload;
import foretress.Axe;
import foretress.Browser;
import foretress.MovedClock;
import foretress.Pictures;
import foretress.Walker;
import foretress.salon.OpenSalon;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URL;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
@DisplayName("The aftercare page on a phone of 390×844")
class AftercareBrowserTest {
    static Browser browser;
    @TestHTTPResource("/") URL base;
    @Inject OpenSalon salon;
    @Inject Chair chair;
    @Inject MovedClock clock;

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
    void open() {
        salon.open();
    }

    @AfterEach
    void now() {
        clock.reset();
    }

    private static void sign(Page page, String code) {
        page.locator("label.slip:has(input[value='" + code + "'])").click();
    }

    @ParameterizedTest(name = "with scripts: {0}")
    @ValueSource(booleans = { true, false })
    void urgentSignsFirstThenTheSkinThenWhatToDo(boolean scripts) throws IOException {
        UUID visit = chair.planned(Map.of());
        String link = chair.link(visit, chair.applied(visit));
        try (BrowserContext context = browser.phone(base.toString(), scripts)) {
            Page page = context.newPage();
            page.navigate(link);
            assertThat(page.locator("main").innerText()).contains("Call 999 at once if");
            if (scripts) {
                assertThat(Axe.findings(page)).isEmpty();
            }
            if (scripts) {
                Pictures.take(page, "aftercare-1-urgent");
            }
            page.locator("a.main").click();
            if (scripts) {
                Pictures.take(page, "aftercare-2-look");
            }
            sign(page, "blisters");
            sign(page, "itch");
            sign(page, "same-day");
            large(page.locator("main label.slip"), 48);
            large(page.locator("main button.main"), 48);
            page.waitForNavigation(() -> page.locator("main button.main").click());
            assertThat(page.locator("h1").innerText()).isEqualTo("Thank you for telling us");
            page.locator("input[type=file]")
                .setInputFiles(new FilePayload("skin.png", "image/png", picture(3000, 2000)));
            page.locator("form[action$='/photo'] button").click();
            assertThat(page.locator("main").innerText()).contains("Your photo has arrived");
            if (scripts) {
                assertThat(Axe.findings(page)).isEmpty();
            }
            if (scripts) {
                Pictures.take(page, "aftercare-3-told");
            }
        }
        assertThat(chair.standing(visit)).isEqualTo("prevents");
        thePhotoIsServedToStaffAlone(visit);
    }

    private static void large(Locator targets, int least) {
        for (Locator target : targets.all()) {
            assertThat(target.boundingBox().height).isGreaterThanOrEqualTo(least);
        }
    }

    private void thePhotoIsServedToStaffAlone(UUID visit) throws IOException {
        Walker petra = salon.as("petra").open("/visits/" + visit + "/skin-test");
        String photo = petra.page().selectFirst("a[href*=/photos/]").attr("href");
        byte[] served = petra.open(photo).expect(200).response().asByteArray();
        BufferedImage seen = ImageIO.read(new ByteArrayInputStream(served));
        assertThat(List.of(seen.getWidth(), seen.getHeight())).as("drawn anew, no larger than needed")
            .containsExactly(1500, 1000);
        salon.as("sanna").open(photo).expect(403);
        new Walker().open(photo);
        assertThat(new Walker().open(photo).response().contentType()).doesNotContain("image");
    }

    static byte[] picture(int width, int height) throws IOException {
        var out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "png", out);
        return out.toByteArray();
    }

    @Test
    void theStaffsPagesOnAPhoneHaveTargetsForAThumb() {
        UUID visit = chair.planned(Map.of());
        chair.shortVisit(visit);
        chair.agreed(visit);
        Walker petra = salon.as("petra");
        try (BrowserContext context = browser.sized(base.toString(), 390, 844);
            BrowserContext tablet = browser.tablet(base.toString())) {
            context.addCookies(cookies(petra));
            tablet.addCookies(cookies(petra));
            Page phone = context.newPage();
            Page wide = tablet.newPage();
            String at = "/visits/" + visit + "/skin-test";
            show(wide, "/desk/visits/" + visit + "/test-visit", "short-visit");
            phone.navigate(at + "/record");
            large(phone.locator("main label.slip"), 48);
            large(phone.locator("main button.main"), 48);
            Pictures.take(phone, "skin-test-record-390");
            show(wide, at + "/record", "skin-test-record");
            salon.as("petra").open(at + "/record").send(Chair.wellMade()).expect(200);
            String test = chair.newest(visit).toString();
            show(wide, at, "skin-test");
            phone.navigate(at + "/tests/" + test + "/read");
            large(phone.locator("main label.slip"), 48);
            Pictures.take(phone, "skin-test-read-390");
            phone.navigate(at);
            Pictures.take(phone, "skin-test-consent-390");
            clock.move(Duration.ofHours(49));
            chair.read(visit, UUID.fromString(test), Map.of("sign", "none", "spot", "yes"));
            tablet.addCookies(cookies(salon.as("petra")));
            show(wide, at, "skin-test-read");
            show(wide, "/day", "skin-test-day");
        }
    }

    private List<Cookie> cookies(Walker staff) {
        return staff.cookies().entrySet().stream()
            .map(c -> new Cookie(c.getKey(), c.getValue()).setUrl(base.toString())).toList();
    }

    private static void show(Page page, String path, String picture) {
        page.navigate(path);
        assertThat(((Number) page
            .evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth")).intValue())
            .as(path).isZero();
        Pictures.take(page, picture);
    }
}
