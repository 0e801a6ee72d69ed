package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import foretress.BadLine;
import foretress.BadLine.Quality;
import foretress.Browser;
import foretress.consent.Consents;
import foretress.consent.SignedConsent;
import foretress.questionnaire.Answers;
import foretress.salon.OpenSalon;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URL;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The client's whole path over a line that breaks; with {@code -Dlines=5} also five times as slow as a telephone far out. */
@QuarkusTest
class BadLineTest {
    /** Far out: EDGE at 250 kbit/s down and 50 up, 300 ms each way, every twentieth request broken. */
    private static final Quality FAR_OUT = new Quality(0.05, 300, 31_250, 6_250);
    private static final Quality BREAKING = Quality.losing(0.2);
    private static final Map<String, List<String>> TOLD =
        Map.of("colour-reaction", List.of("yes"), "colour-reaction-what", List.of("itch-after"));

    static Browser browser;
    @TestHTTPResource("/") URL base;
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Consents consents;
    @Inject Intake intake;

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

    /** A client who looks at what the line left of a page and, where it left too little, loads it again. */
    private static final class Patient extends Tapping {
        private int pages;
        private int reloads;

        /** @param patience milliseconds until a page that does not come is loaded again; longer than the first try of a form and the pause behind it */
        Patient(Page page, int patience) {
            super(page, TOLD, at -> {});
            page.setDefaultNavigationTimeout(patience);
        }

        @Override
        void open(String address) {
            onceMore(() -> super.open(address));
        }

        @Override
        void tap(String button) {
            onceMore(() -> super.tap(button));
        }

        private void onceMore(Runnable act) {
            pages++;
            boolean whole = worked(act);
            for (int i = 0; !whole && i < 20; i++) {
                reloads++;
                whole = worked(() -> page().reload());
            }
            assertThat(whole).as("%s came at last", page().url()).isTrue();
        }

        private boolean worked(Runnable act) {
            try {
                act.run();
            } catch (PlaywrightException broken) {
                return false;
            }
            return page().locator("footer.help").count() > 0;
        }
    }

    /** What is kept of one client in the end: what she said, how many pages she sent, how often she signed. */
    private record Kept(Answers said, long pages, long consents) {}

    private UUID invited() {
        return make.visit(LocalDate.of(1965, 3, 4));
    }

    private Kept kept(UUID visit) {
        return QuarkusTransaction.requiringNew().call(() -> new Kept(intake.said(Visit.findById(visit)),
            KeptTopic.count("visitId", visit),
            SignedConsent.count("visitId", visit)));
    }

    private static void walks(Tapping client, String link) {
        client.enter(link, "4", "3", "1965").agree().all().send().tickEveryStatement();
        client.page().locator("input[type=radio][name=mark][value=typed]").check();
        client.page().locator("[name=typed]").fill("Ottilie Brandt");
        client.send();
        assertThat(client.at()).isEqualTo("/answers/done");
    }

    private Kept onAGoodLine() {
        UUID visit = invited();
        try (BrowserContext phone = browser.phone(base.toString(), true)) {
            walks(new Tapping(phone.newPage(), TOLD, at -> {}), knocking.link(visit));
        }
        return kept(visit);
    }

    static Stream<Arguments> lines() {
        return Stream.concat(Stream.of(Arguments.of(BREAKING, 11)),
            IntStream.range(0, Integer.getInteger("lines", 0)).mapToObj(seed -> Arguments.of(FAR_OUT, seed)));
    }

    @ParameterizedTest(name = "{0}, seed {1}")
    @MethodSource("lines")
    @DisplayName("A27: over a line that breaks no answer is lost and none counts twice")
    void nothingIsLostAndNothingCountsTwice(Quality quality, int seed) throws IOException {
        Kept wanted = onAGoodLine();
        UUID visit = invited();
        try (var line = new BadLine(base.getPort(), quality, seed);
            BrowserContext phone = browser.phone(line.address(), true)) {
            var client = new Patient(phone.newPage(), quality.latencyMs() == 0 ? 4_000 : 30_000);
            long began = System.nanoTime();
            walks(client, knocking.link(visit));
            System.out.printf("%s, seed %d: %d pages, %d loaded again by hand, %d requests, broken %s, %d s%n",
                quality, seed, client.pages, client.reloads, line.requests(), line.broken(),
                (System.nanoTime() - began) / 1_000_000_000);
            assertThat(line.broken()).as("it did break").isNotEmpty();
            assertThat(kept(visit)).isEqualTo(wanted);
        }
    }

    @Test
    @DisplayName("A27: a page sent while the line is away stays, says so, and goes once by itself when it is back")
    void whatWasSentWhileTheLineWasAwayGoesOnce() throws IOException {
        UUID visit = invited();
        try (var line = new BadLine(base.getPort(), Quality.losing(0), 1);
            BrowserContext phone = browser.phone(line.address(), true)) {
            Tapping client =
                new Tapping(phone.newPage(), Map.of(), at -> {}).enter(knocking.link(visit), "4", "3", "1965").agree();
            Page page = client.page();
            String here = page.url();
            page.locator("[data-kind=ONE_OF] input[value=no]").all().forEach(box -> box.check());
            line.away(true);
            page.locator(".button.main").tap();
            page.waitForCondition(() -> page.locator("[role=status]").textContent().contains("still on this page"));
            assertThat(page.url()).isEqualTo(here);
            assertThat(kept(visit).pages()).isZero();
            page.waitForNavigation(() -> line.away(false));
            assertThat(page.url()).isNotEqualTo(here);
            assertThat(kept(visit).pages()).isEqualTo(1);
            assertThat(phone.storageState()).contains("\"origins\":[]");
        }
    }

    @Test
    @DisplayName("A27: of two buttons pressed while the line is away the last one counts: who refuses has not agreed")
    void herLastPressCounts() throws IOException {
        UUID visit = invited();
        try (var line = new BadLine(base.getPort(), Quality.losing(0), 1);
            BrowserContext phone = browser.phone(line.address(), true)) {
            Page page = new Tapping(phone.newPage(), Map.of(), at -> {})
                .enter(knocking.link(visit), "4", "3", "1965").page();
            page.locator("input[name=agree]").check();
            line.away(true);
            page.locator("button[value=agree]").tap();
            page.waitForCondition(() -> page.locator("[role=status]").textContent().contains("still on this page"));
            page.locator("button[value=refuse]").tap();
            line.away(false);
            page.waitForURL("**/answers/notice/paper");
            assertThat(QuarkusTransaction.requiringNew().call(() -> HealthConsent.given(visit))).isFalse();
        }
    }
}
