package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Cookie;
import foretress.Browser;
import foretress.Walker;
import foretress.salon.OpenSalon;
import foretress.visit.VisitMaker;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What really travels to a phone, headers and letters included, counted in the browser: in every language, since each has its own letters. */
@QuarkusTest
class PageSizeTest {
    private static final int FIRST = 14 * 1024;
    private static final int COLD = 50 * 1024;
    private static final int WARM = 20 * 1024;
    private static final String DRAWN = "() => document.fonts.ready.then(() => true)";

    static Browser browser;
    @TestHTTPResource("/") URL base;
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;

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
    void theSalonIsOpen() {
        salon.open();
    }

    private static Map<String, List<String>> muchToTell() {
        return Map.of("darkening-lotion", List.of("some-time-ago"), "home-colour", List.of("yes"), "henna",
            List.of("dont-know"), "treatments.what", List.of("restorer"), "treatments.when.precision",
            List.of("dont-know"), "treatments.zone", List.of("whole"));
    }

    @ParameterizedTest
    @ValueSource(strings = { "en", "es", "fr", "pl", "ar", "vi" })
    @DisplayName("A24: the first page fits 14 kB, any page 50 kB with an empty cache and 20 kB with a filled one")
    void noPageIsHeavy(String language) {
        String link = knocking.link(make.visit(LocalDate.of(1965, 3, 4)));
        Walker client = new Walker().with("language", language).open(link)
            .send(Map.of("day", "4", "month", "3", "year", "1965"));
        Answering answering = new Answering(client, muchToTell()).agree().all().readBack();
        Set<String> pages = new LinkedHashSet<>(List.of("/answers/notice"));
        pages.addAll(answering.pages());
        pages.addAll(List.of("/answers/read-back", "/answers/sign"));
        try (BrowserContext phone = browser.phone(base.toString(), true)) {
            Map<String, Integer> heavy = new LinkedHashMap<>();
            var scales = new Scales(phone.newPage());
            phone.addCookies(List.of(new Cookie("language", language).setUrl(base.toString())));
            note(heavy, link, scales.cold(link), FIRST);
            phone.addCookies(client.cookies().entrySet().stream()
                .map(c -> new Cookie(c.getKey(), c.getValue()).setUrl(base.toString())).toList());
            for (String page : pages) {
                note(heavy, page, scales.cold(page), COLD);
                note(heavy, page + " again", scales.warm(page), WARM);
            }
            assertThat(heavy).as("too heavy in %s", language).isEmpty();
        }
    }

    private static void note(Map<String, Integer> heavy, String page, int bytes, int most) {
        if (Boolean.getBoolean("sizes")) {
            System.out.println("size " + page.replaceAll("/i/.*", "/i/…") + " " + bytes);
        }
        if (bytes > most) {
            heavy.put(page, bytes);
        }
    }

    /** Counts what the network brings, as it came over the wire. */
    private static final class Scales {
        private final Page page;
        private final CDPSession network;
        private final AtomicInteger sum = new AtomicInteger();

        Scales(Page page) {
            this.page = page;
            this.network = page.context().newCDPSession(page);
            network.send("Network.enable");
            network.on("Network.loadingFinished", this::add);
        }

        private void add(JsonObject finished) {
            sum.addAndGet(finished.get("encodedDataLength").getAsInt());
        }

        int cold(String address) {
            network.send("Network.clearBrowserCache");
            return warm(address);
        }

        int warm(String address) {
            sum.set(0);
            page.navigate(address);
            page.evaluate(DRAWN);
            return sum.get();
        }
    }
}
