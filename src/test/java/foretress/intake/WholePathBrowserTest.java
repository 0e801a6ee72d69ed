package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitUntilState;
import foretress.Browser;
import foretress.Overheard;
import foretress.Pictures;
import foretress.consent.Consents;
import foretress.consent.SealedPapers;
import foretress.consent.SignedConsent;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Question;
import foretress.questionnaire.Walk;
import foretress.salon.OpenSalon;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URL;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The main path in a real browser, from the link to the copy, as a client's thumb and a stylist's tablet go it. */
@QuarkusTest
class WholePathBrowserTest {
    private static final int PAPER_DPI = 110;
    /** Everything a page could leave behind in a browser, counted. */
    private static final String LEFT_BEHIND = """
        async () => localStorage.length + sessionStorage.length + (await indexedDB.databases()).length
          + (await caches.keys()).length + (await navigator.serviceWorker.getRegistrations()).length""";

    static Browser browser;
    @TestHTTPResource("/") URL base;
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Consents consents;
    @Inject SealedPapers papers;
    @Inject Knowledge knowledge;
    @Inject Intake intake;
    UUID visit;

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
    void aClientIsInvited() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
    }

    /** A darkening lotion the summer before last, on hair that has not been cut since. */
    private static Map<String, List<String>> lotion() {
        Map<String, List<String>> told = new HashMap<>();
        told.put("darkening-lotion", List.of("some-time-ago"));
        told.put("treatments.what", List.of("restorer"));
        told.put("treatments.when.precision", List.of("years-ago"));
        told.put("treatments.when.ago", List.of("1-2"));
        told.put("treatments.zone", List.of("whole"));
        told.put("treatments.by", List.of("home"));
        told.put("treatments.often", List.of("regularly"));
        told.put("treatments.every", List.of("6-weeks"));
        told.put("treatments.since.precision", List.of("years-ago"));
        told.put("treatments.since.ago", List.of("3-5"));
        return told;
    }

    private String link() {
        return knocking.link(visit);
    }

    private byte[] signAndDownload(Tapping client) throws IOException {
        client.send();
        assertThat(client.at()).isEqualTo("/answers/done");
        Download download = client.page().waitForDownload(() -> client.page().locator("a.button.main").tap());
        return Files.readAllBytes(download.path());
    }

    private void sameAsKept(byte[] copy, String markKind) throws IOException {
        SignedConsent kept = consents.latest(visit).orElseThrow();
        assertThat(copy).isEqualTo(papers.of(kept));
        assertThat(kept.markKind().code()).isEqualTo(markKind);
        try (PDDocument paper = Loader.loadPDF(copy)) {
            assertThat(new PDFTextStripper().getText(paper)).contains("Ottilie Brandt", "Alder & Wren",
                "How this was signed");
        }
    }

    private void nothingLeaked(BrowserContext context, Overheard overheard) {
        assertThat(overheard.hosts()).isNotEmpty().containsOnly(base.getAuthority());
        assertThat(overheard.complaints()).isEmpty();
        assertThat(context.storageState()).contains("\"origins\":[]");
    }

    @Test
    @DisplayName("A7, A9, B35, D10: on a phone a client answers by touch, draws a signature and downloads the very bytes that are kept")
    void aClientSignsWithAFinger() throws IOException {
        try (BrowserContext context = browser.phone(base.toString(), true)) {
            var overheard = new Overheard(context);
            Tapping client =
                new Tapping(context.newPage(), lotion(), at -> {}).enter(link(), "4", "3", "1965").agree().all().send();
            client.tickEveryStatement();
            new Finger(client.page(), "canvas").signs();
            assertThat(client.page().locator("[name=strokes]").inputValue()).startsWith("[[[0.");
            sameAsKept(signAndDownload(client), "drawn");
            assertThat(client.page().evaluate(LEFT_BEHIND)).isEqualTo(0);
            nothingLeaked(context, overheard);
        }
    }

    @Test
    @DisplayName("A7, B35: without JavaScript the whole path is open as well, signed by typing")
    void withoutAScript() throws IOException {
        try (BrowserContext context = browser.phone(base.toString(), false)) {
            var overheard = new Overheard(context);
            Tapping client =
                new Tapping(context.newPage(), lotion(), at -> {}).enter(link(), "4", "3", "1965").agree().all().send();
            client.tickEveryStatement();
            assertThat(client.page().locator("canvas").isVisible()).isFalse();
            client.page().locator("[name=typed]").fill("Ottilie Brandt");
            sameAsKept(signAndDownload(client), "typed");
            nothingLeaked(context, overheard);
        }
    }

    /** Opens whatever an answer can open for the booked colour: yes to every gate, and home colour without the lotion. */
    private Map<String, List<String>> opensEverything() {
        Map<String, List<String>> told =
            new HashMap<>(Map.of("darkening-lotion", List.of("no"), "colour-reaction-what", List.of("itch-after")));
        knowledge.questionnaire().questions().stream().filter(q -> !q.id().equals("unsure-what"))
            .forEach(q -> q.when().forEach((opener, codes) -> told.putIfAbsent(opener, List.of(codes.get(0)))));
        return told;
    }

    private List<String> openNow() {
        return QuarkusTransaction.requiringNew().call(() -> {
            Visit now = Visit.findById(visit);
            Walk walk = intake.walk(now, intake.said(now));
            return walk.topics().stream().flatMap(t -> walk.open(t).stream()).map(Question::id).toList();
        });
    }

    @SuppressWarnings("unchecked")
    private static List<String> questionsOn(Page page) {
        return (List<String>) page.evaluate(
            "() => [...new Set([...document.querySelectorAll('[data-kind] [name]')].map(q => q.name.split('.')[0]))]");
    }

    @Test
    @DisplayName("R2, R7: a fresh client sees every question that her answers open, what opens on a page alone on the next, with the reason in focus")
    void everyConditionalQuestionIsSeen() {
        try (BrowserContext context = browser.phone(base.toString(), true)) {
            context.addInitScript("addEventListener('focusin', e => window.landed ??= e.target.textContent)");
            Set<String> seen = new LinkedHashSet<>();
            List<String> reasons = new ArrayList<>();
            new Tapping(context.newPage(), opensEverything(), at -> {
                if (at.page().url().contains("opened") && at.page().locator("[data-kind=DETAIL]").count() == 0) {
                    assertThat(seen).as("only what is new").doesNotContainAnyElementsOf(questionsOn(at.page()));
                    reasons.add((String) at.page().evaluate("() => window.landed"));
                    Pictures.take(at.page(), "opened-" + at.at().replaceAll(".*/", ""));
                }
                seen.addAll(questionsOn(at.page()));
            }).enter(link(), "4", "3", "1965").agree().all();
            assertThat(seen).containsAll(openNow()).contains("ingredient-list", "last-colour-product",
                "home-colour-cues",
                "skin-test-when");
            assertThat(reasons).hasSizeGreaterThan(1).allSatisfy(said -> assertThat(said).startsWith("You said"));
        }
    }

    @Test
    @DisplayName("R6: where sending a page breaks off without a script, Back leads to it, with everything still chosen")
    void aBrokenSendingLosesNothing() {
        try (BrowserContext context = browser.phone(base.toString(), false)) {
            Tapping client = new Tapping(context.newPage(), Map.of(), at -> {}).enter(link(), "4", "3", "1965").agree();
            Page page = client.page();
            String at = client.at();
            List<String> chosen = List.of("colour-reaction", "tint-reaction");
            chosen.forEach(q -> page.locator("input[name=" + q + "][value=no]").check());
            context.route("**/answers/**", route -> {
                if (route.request().method().equals("POST")) {
                    route.abort();
                } else {
                    route.resume();
                }
            });
            page.locator(".button.main").tap();
            page.waitForURL(url -> url.startsWith("chrome-error") || url.contains("kept"),
                new Page.WaitForURLOptions().setWaitUntil(WaitUntilState.COMMIT));
            context.unroute("**/answers/**");
            page.goBack();
            assertThat(client.at()).isEqualTo(at);
            chosen.forEach(q -> assertThat(page.locator("input[name=" + q + "][value=no]").isChecked()).as(q).isTrue());
        }
    }

    @Test
    @DisplayName("A1, E5: every kind of page stands in a picture, on a phone and on a tablet of 1024×768")
    void pictures() throws IOException {
        try (BrowserContext context = browser.phone(base.toString(), true)) {
            pictureClient(context.newPage());
        }
        try (BrowserContext context = browser.tablet(base.toString())) {
            pictureStaff(context.newPage());
        }
        visit = make.visit(LocalDate.of(1965, 3, 4));
        try (BrowserContext context = browser.phone(base.toString(), true)) {
            pictureCare(context.newPage());
        }
    }

    private void pictureClient(Page page) throws IOException {
        String link = link();
        page.navigate(link);
        Pictures.take(page, "door");
        Tapping client =
            new Tapping(page, lotion(), WholePathBrowserTest::pictureQuestion).enter(link, "4", "3", "1965");
        client.agree().all();
        Pictures.take(page, "read-back");
        client.send();
        take(page, "/answers/tests", "tests");
        page.navigate("/answers/sign");
        client.tickEveryStatement();
        new Finger(page, "canvas").signs();
        Pictures.take(page, "sign");
        client.send();
        Pictures.take(page, "done");
        try (PDDocument paper = Loader.loadPDF(consents.pdf(consents.latest(visit).orElseThrow()))) {
            Pictures.keep(new PDFRenderer(paper).renderImageWithDPI(0, PAPER_DPI), "consent-1");
        }
    }

    private static void pictureQuestion(Tapping client) {
        Map<String, String> names =
            Map.of("/answers/reactions", "question", "/answers/treatments", "history", "/answers/care", "care");
        if (names.containsKey(client.at())) {
            Pictures.take(client.page(), names.get(client.at()));
        }
    }

    private void pictureStaff(Page page) {
        make.busyDay();
        if (Boolean.getBoolean("pictures")) {
            theDaysClientsAnswer();
        }
        page.navigate("/sign-in");
        page.locator("[name=login]").fill("petra");
        page.locator("[name=password]").fill(OpenSalon.PASSWORD);
        page.locator(".button.main").click();
        Pictures.take(page, "day");
        take(page, "/visits/" + visit, "consultation");
        take(page, "/desk", "desk");
        page.navigate("/desk/visits/" + visit);
        page.locator("form[action$='/link'] button").click();
        Pictures.take(page, "invite");
    }

    /** The day was made up of states alone; for a picture its clients answer and sign. */
    private void theDaysClientsAnswer() {
        List<Visit> madeUp =
            QuarkusTransaction.requiringNew().call(() -> Visit.list("state = ?1 and signedAt is null", State.SIGNED));
        for (Visit one : madeUp) {
            make.is(one.id, State.INVITED);
            Map<String, List<String>> told =
                one.client.givenName.equals("Ottilie") ? lotion() : Map.<String, List<String>>of();
            knocking.come(one.id, one.client.birthDate().orElseThrow(), told).agree().all().readBack()
                .sign(one.client.fullName());
        }
    }

    private static void take(Page page, String path, String name) {
        page.navigate(path);
        Pictures.take(page, name);
    }

    private void pictureCare(Page page) {
        Map<String, List<String>> told =
            Map.of("colour-reaction", List.of("yes"), "colour-reaction-what", List.of("swelling", "breathing"));
        Tapping client =
            new Tapping(page, told, WholePathBrowserTest::pictureCareOnly).enter(link(), "4", "3", "1965").agree();
        client.send();
        Pictures.take(page, "error");
        client.all().send().tickEveryStatement();
        Pictures.take(page, "sign-prevented");
        new Finger(page, "canvas").signs();
        client.send();
        Pictures.take(page, "done-prevented");
    }

    private static void pictureCareOnly(Tapping client) {
        if (client.at().equals("/answers/care")) {
            Pictures.take(client.page(), "care");
        }
    }
}
