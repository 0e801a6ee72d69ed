package foretress.salon;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.FilePayload;
import foretress.Axe;
import foretress.Browser;
import foretress.Pictures;
import foretress.Walker;
import foretress.intake.Answering;
import foretress.intake.Knocking;
import foretress.knowledge.Knowledge;
import foretress.picture.Photos;
import foretress.questionnaire.Topic;
import foretress.skintest.Chair;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The pages are taken from the table of rights: a new one is opened and looked at without anybody remembering to. */
@QuarkusTest
@DisplayName("A1, A3: no page that anybody can reach has a machine-found failure by day or night, or scrolls sideways")
class AxeTest {
    /** Routes that answer with no page of their own, and why. */
    private static final Map<String, String> NO_PAGE = Map.ofEntries(
        Map.entry("GET /", "sends on to whoever's first page"),
        Map.entry("GET /answers", "sends on to the page that is next"),
        Map.entry("GET /answers/copy", "the signed PDF"),
        Map.entry("GET /visits/{id}/consent/{version}", "a signed PDF"),
        Map.entry("GET /visits/{id}/consent/{version}/copy", "a PDF"),
        Map.entry("GET /complaints/{complaint}", "looked at below, where one was made"),
        Map.entry("GET /answers/reaction/told", "looked at below, once something was told"),
        Map.entry("GET /answers/after", "looked at below, where the service took place"),
        Map.entry("GET /desk/visits/{id}/paper-form", "a PDF to print"),
        Map.entry("GET /programs/openapi", "a document for programs"),
        Map.entry("GET /answers/rights/record", "a file, after a one-use code"),
        Map.entry("GET /seal.pem", "certificates for a program that checks papers"),
        Map.entry("GET /visits/{id}/paper", "leads to the visit once the client has answered; it is looked at below"),
        Map.entry("GET /visits/{id}/paper/picture", "the paper as a file"),
        Map.entry("GET /answers/phone", "asked only where no number is on file"),
        Map.entry("GET /answers/skin-test", "on the salon's own tablet alone, where it is looked at below"),
        Map.entry("GET /demo", "is there in the demo alone"),
        Map.entry("GET /visits/{id}/bench/live", "a part of a page; the bench's own browser test looks at it"),
        Map.entry("GET /visits/{id}/skin-test/consent/{version}", "a signed PDF"),
        Map.entry("GET /visits/{id}/noted/{note}/papers/{paper}", "a letter as a photo or a PDF"),
        Map.entry("GET /visits/{id}/skin-test/photos/{photo}", "a photo"),
        Map.entry("GET /visits/{id}/hair/photo/{photo}", "a photo"),
        Map.entry("GET /answers/photos/{photo}", "a photo"),
        Map.entry("GET /answers/photos/{photo}/small", "a photo"),
        Map.entry("GET /visits/{id}/sent-photos/{photo}", "a photo"),
        Map.entry("GET /visits/{id}/sent-photos/{photo}/small", "a photo"),
        Map.entry("GET /clients/{id}/card/paper", "a PDF to print"),
        Map.entry("GET /clients/{id}/card/paper/{visit}", "a PDF to print"));
    private static final List<String> GATES =
        List.of("colour-reaction", "tint-reaction", "black-tattoo", "bleach-reaction", "perm-reaction");

    private static final String SEEN =
        "() => [...document.images].every(image => image.complete && image.naturalWidth > 0)";

    static Browser browser;
    @TestHTTPResource("/") URL base;
    @Inject OpenSalon salon;
    @Inject ProductLines lines;
    @Inject Chair chair;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Knowledge knowledge;
    @Inject Clock clock;
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
    void aClientIsInvited() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
    }

    @AfterEach
    void nothingWasFound() {
        assertThat(found).isEmpty();
    }

    /** A test that was begun at the bench is looked at where it is begun: the bench's own browser test. */
    private static List<String> pages(Right.Kind kind) {
        return Rights.table().stream().filter(right -> right.kind() == kind).map(Right::route)
            .filter(route -> route.startsWith("GET ") && !NO_PAGE.containsKey(route) && !route.contains("{test}"))
            .map(route -> route.substring(4)).toList();
    }

    /** A client who has something to tell at every gate, so that every topic is asked. */
    private static Map<String, List<String>> everything() {
        Map<String, List<String>> told = new HashMap<>();
        GATES.forEach(gate -> told.put(gate, List.of("yes")));
        told.put("colour-reaction-what", List.of("swelling", "breathing"));
        return told;
    }

    private Answering client() {
        return knocking.come(visit, everything()).agree();
    }

    private BrowserContext as(Walker walker, boolean client) {
        BrowserContext context = client ? browser.phone(base.toString(), true) : browser.tablet(base.toString());
        context.addCookies(walker.cookies().entrySet().stream()
            .map(c -> new Cookie(c.getKey(), c.getValue()).setUrl(base.toString())).toList());
        return context;
    }

    private void look(Page page, String path) {
        assertThat(open(page, path)).as(path).isEqualTo(200);
        assertThat(URI.create(page.url()).getPath()).as("where %s leads", path)
            .isEqualTo(URI.create(path).getPath());
        examine(page);
    }

    /** With axe, and for anything that scrolls sideways. */
    private void examine(Page page) {
        found.addAll(Axe.findings(page));
        int over = ((Number) page
            .evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth")).intValue();
        if (over > 0) {
            found.add(page.url() + " is " + over + " px too wide");
        }
    }

    private static int open(Page page, String path) {
        Response response = page.navigate(path);
        assertThat(response.headerValue("content-type")).as(path).startsWith("text/html");
        return response.status();
    }

    /** Presses the main button of a page on which nothing was filled in. */
    private int lookAtMistakes(Page page, String path) {
        open(page, path);
        Response answer = page.waitForNavigation(() -> page.locator("main .button.main").first().click());
        if (answer.status() == 422) {
            examine(page);
        }
        return answer.status();
    }

    private void lookAtStatus(Page page, String path, int status) {
        assertThat(open(page, path)).as(path).isEqualTo(status);
        examine(page);
    }

    @Test
    void theClientsPages() {
        Answering client = client().all().readBack();
        Walker walker = client.walker();
        client.sign("Ottilie Brandt");
        Walker second = knocking.come(visit, Map.of()).walker();
        UUID tested = make.visit(LocalDate.of(1965, 3, 4));
        Answering awaited = knocking.come(tested, Map.of()).agree().all().readBack().sign("Ottilie Brandt");
        chair.shortVisit(tested);
        try (BrowserContext context = as(walker, true); BrowserContext other = as(second, true);
            BrowserContext third = as(awaited.walker(), true)) {
            look(third.newPage(), "/answers/short-visit");
            Page page = context.newPage();
            Page otherPage = other.newPage();
            for (String route : pages(Right.Kind.GUEST)) {
                if (!List.of("/answers/short-visit", "/answers/last-time", "/answers/visit.ics", "/answers/withdraw",
                    "/answers/withdraw/done")
                    .contains(route)) {
                    paths(route, "")
                        .forEach(path -> lookWhereAsked(path.equals("/code") ? otherPage : page, path, route));
                }
            }
        }
    }

    @Test
    @DisplayName("what is told by a client's own link, before the service and after it")
    void whatIsToldByTheLink() {
        Walker walker = client().all().readBack().sign("Ottilie Brandt").walker();
        walker.open("/answers/complaint").send(Map.of("words", "Nobody told me how long it takes."));
        String link = knocking.link(visit);
        try (BrowserContext context = as(walker, true); BrowserContext staff = as(salon.as("edda"), false)) {
            Page page = context.newPage();
            picture(page, "/answers/complaint", "link-complaint");
            assertThat(lookAtMistakes(page, "/answers/complaint")).isEqualTo(422);
            picture(page, "/answers/reaction", "link-reaction-first");
            assertThat(lookAtMistakes(page, "/answers/reaction/tell")).isEqualTo(422);
            Pictures.take(page, "link-reaction-mistakes");
            picture(page, "/answers/reaction/tell", "link-reaction-tell");
            picture(page, "/answers/done", "link-done");
            walker.open("/answers/reaction/tell").send(Map.of("felt", "blisters", "began", "later", "where", "scalp"));
            picture(page, "/answers/reaction/told", "link-reaction-told");
            make.is(visit, State.DECIDED);
            make.is(visit, State.CLOSED);
            picture(page, "/answers/after", "link-after");
            look(browser.phone(base.toString(), true).newPage(), link);
            Page chair = staff.newPage();
            picture(chair, "/visits/" + visit, "link-staff-visit");
            picture(chair, "/visits/" + visit + "/told", "link-staff-told");
            picture(chair, "/owner", "link-staff-owner");
            String complaint = chair.locator("a[href^='/complaints/']").last().getAttribute("href");
            picture(chair, complaint, "link-staff-complaint");
            assertThat(open(chair, complaint)).isEqualTo(200);
            chair.waitForNavigation(() -> chair.locator("form[action$='/answer'] button").click());
            examine(chair);
            look(page, "/answers/withdraw");
            walker.open("/answers/withdraw").send("main form", Map.of());
            picture(page, "/answers/withdraw/done", "link-withdrawn");
            picture(page, "/verify", "verify");
            page.setInputFiles("#paper", new FilePayload("paper.pdf", "application/pdf",
                RestAssured.given().cookies(walker.cookies()).get("/answers/copy").asByteArray()));
            page.waitForNavigation(() -> page.locator("main button[type=submit]").click());
            examine(page);
            Pictures.take(page, "verify-found");
        }
    }

    @Test
    @DisplayName("photos are made small on the phone and sent one after another, once although the line broke; the stylist opens them large")
    void photosSentByTheLink() throws IOException {
        Walker walker = client().all().readBack().sign("Ottilie Brandt").walker();
        try (BrowserContext context = as(walker, true); BrowserContext staff = as(salon.as("petra"), false)) {
            Page page = context.newPage();
            picture(page, "/answers/photos", "photos-none");
            AtomicInteger sent = new AtomicInteger();
            page.route("**/answers/photos/send", route -> {
                if (sent.getAndIncrement() == 0) {
                    route.abort();
                } else {
                    route.resume();
                }
            });
            page.setInputFiles("#front", photo("image/png", Photos.of("png", 3000, 2000)));
            page.setInputFiles("#box", photo("image/jpeg", Photos.withExif(600, 900, 1)));
            page.locator("#of-front .said-so").filter(new Locator.FilterOptions().setHasText("No connection"))
                .waitFor();
            Pictures.take(page, "photos-waiting");
            examine(page);
            page.evaluate("() => dispatchEvent(new Event('online'))");
            page.locator("#of-box .sent img").waitFor();
            assertThat(page.locator(".sent img").count()).isEqualTo(2);
            assertThat(page.locator("#arrived").textContent()).isEqualTo("Photos that have arrived: 2");
            assertThat(sent.get()).as("one broke off, two arrived").isEqualTo(3);
            page.setInputFiles("#ingredients", photo("image/jpeg", "%PDF-1.4".getBytes(StandardCharsets.US_ASCII)));
            page.locator("#ingredients-mistake").waitFor();
            page.waitForFunction(SEEN);
            examine(page);
            Pictures.take(page, "photos-sent");
            context.addCookies(List.of(new Cookie("language", "ar").setUrl(base.toString())));
            look(page, "/answers/photos");
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
            Pictures.take(page, "photos-arabic");
            Page chair = staff.newPage();
            chair.navigate("/visits/" + visit);
            chair.locator("details:has(.thumbs) > summary").click();
            chair.waitForFunction(SEEN);
            examine(chair);
            Pictures.take(chair, "photos-staff");
            byte[] large = chair.request().get(chair.locator(".thumbs a").first().getAttribute("href")).body();
            assertThat(ImageIO.read(new ByteArrayInputStream(large)).getWidth()).as("as the phone made it")
                .isEqualTo(1600);
        }
    }

    private static FilePayload photo(String type, byte[] bytes) {
        return new FilePayload("IMG_1", type, bytes);
    }

    private void picture(Page page, String path, String name) {
        look(page, path);
        Pictures.take(page, name);
    }

    /** A topic that asks this client nothing leads on. */
    private void lookWhereAsked(Page page, String path, String route) {
        if (!route.contains("{topic}")) {
            look(page, path);
            return;
        }
        assertThat(open(page, path)).as(path).isEqualTo(200);
        if (URI.create(page.url()).getPath().equals(path)) {
            examine(page);
        }
    }

    /** Every topic of the questionnaire stands for the one route that shows them. */
    private Stream<String> paths(String route, String token) {
        if (!route.contains("{topic}")) {
            return Stream.of(route.replace("{token}", token));
        }
        return knowledge.questionnaire().topics().stream().map(Topic::id).map(id -> route.replace("{topic}", id));
    }

    @Test
    void theClientsPagesWithMistakes() {
        Answering client = client();
        client.walker().open("/answers/reactions");
        client.page();
        List<String> topics =
            knowledge.questionnaire().topics().stream().map(Topic::id).filter(id -> !id.equals("reactions")).toList();
        try (BrowserContext context = as(client.walker(), true)) {
            Page page = context.newPage();
            long mistaken = topics.stream().filter(id -> lookAtMistakes(page, "/answers/" + id) == 422).count();
            assertThat(mistaken).as("topics that ask again").isGreaterThanOrEqualTo(topics.size() - 2);
            client.walker().open("/answers");
            client.all().readBack();
            assertThat(lookAtMistakes(page, "/answers/sign")).isEqualTo(422);
            lookAtStatus(page, "/answers/no-such-topic", 404);
        }
    }

    @Test
    void aListWithSomethingOnIt() {
        Map<String, List<String>> told =
            Map.of("treatments.what", List.of("box-dye"), "treatments.when.precision", List.of("dont-know"),
                "treatments.zone", List.of("whole"), "medicines.name", List.of("prednisolone 20 mg"));
        Answering client = knocking.come(visit, told).agree();
        try (BrowserContext context = as(client.walker(), true)) {
            for (String topic : List.of("treatments", "health", "treatments?opened=yes&entry=0", "health?opened=yes")) {
                client.walker().open("/answers/" + topic);
                client.page();
                look(context.newPage(), "/answers/" + topic);
            }
        }
    }

    @Test
    void thePagesThatAreOpenToAnybody() {
        String token = knocking.link(visit).substring("/i/".length());
        String aftercare = told();
        try (BrowserContext context = browser.phone(base.toString(), true)) {
            Page page = context.newPage();
            for (String route : pages(Right.Kind.ANYBODY)) {
                String code = route.contains("{code}") ? code() : "";
                look(page,
                    route.replace("{token}", route.startsWith("/a/") ? aftercare : token).replace("{code}", code));
            }
            lookAtMistakes(page, "/i/" + token + "/birth-date");
            lookAtMistakes(page, "/sign-in");
            lookAtMistakes(page, "/set-up/" + code());
            assertThat(lookAtMistakes(page, "/a/" + aftercare + "/look")).isEqualTo(422);
            lookAtStatus(page, "/a/" + "A".repeat(43) + "/look", 404);
            lookAtStatus(page, "/i/" + "A".repeat(43), 404);
            lookAtStatus(page, "/answers/reactions", 403);
            lookAtStatus(page, "/no-such-page", 404);
        }
    }

    /** An aftercare link on which something was told. */
    private String told() {
        UUID tested = chair.planned(Map.of());
        String link = chair.link(tested, chair.applied(tested));
        Walker client = new Walker().open(link + "/look");
        client.send(Map.of("sign", "redness", "began", "unknown")).expect(200);
        return link.substring("/a/".length());
    }

    private String code() {
        return QuarkusTransaction.requiringNew()
            .call(() -> SetUpCode.forStaff(Staff.byLogin("sanna").orElseThrow(), clock.instant()));
    }

    @Test
    void aLockedLink() {
        String path = knocking.link(visit) + "/birth-date";
        try (BrowserContext context = browser.phone(base.toString(), true)) {
            Page page = context.newPage();
            page.navigate(path);
            for (int tries = 0; tries < 5 && page.locator("#day").count() > 0; tries++) {
                page.locator("#day").fill("5");
                page.locator("#month").selectOption("3");
                page.locator("#year").fill("1965");
                page.waitForNavigation(() -> page.locator(".button.main").click());
                examine(page);
            }
            assertThat(page.locator("#day").count()).as("the door after five wrong dates").isZero();
        }
    }

    @Test
    void theFirstPageOfAll() {
        String path = "/set-up/" + withoutASalon();
        try (BrowserContext context = browser.tablet(base.toString())) {
            Page page = context.newPage();
            look(page, path);
            assertThat(lookAtMistakes(page, path)).isEqualTo(422);
        } finally {
            QuarkusTransaction.requiringNew().run(() -> Staff.update("role = ?1 where login = ?2", Role.OWNER, "edda"));
            salon.open();
        }
    }

    private String withoutASalon() {
        return QuarkusTransaction.requiringNew().call(() -> {
            Salon.deleteAll();
            Staff.update("role = ?1 where role = ?2", Role.STYLIST, Role.OWNER);
            return SetUpCode.forOwner(clock.instant());
        });
    }

    @Test
    void theStaffsPages() {
        client().all().readBack().sign("Ottilie Brandt").walker().open("/answers/rights")
            .send(Map.of("kind", "access", "words", "All of it, please.")).expect(200);
        UUID ahead = make.visit(LocalDate.of(1965, 3, 4));
        Walker edda = salon.as("edda").open("/requests").expect(200);
        String request = edda.page().selectFirst("a[href^=/requests/]").attr("href").replaceAll(".*/", "");
        edda.open("/owner/proof").send("form[action=/owner/proof]", Map.of()).expect(200);
        String slip = edda.at().replaceAll(".*/", "");
        edda.open("/desk/visits/" + ahead).send("form[action$=/link]", Map.of());
        String key = edda.at().replaceAll(".*/", "");
        UUID tested = chair.planned(Map.of());
        String test = chair.applied(tested).toString();
        chair.agreed(tested);
        try (BrowserContext context = as(edda, false)) {
            Page page = context.newPage();
            for (String route : pages(Right.Kind.STAFF)) {
                look(page,
                    route.replace("{id}", route.contains("/skin-test") ? tested.toString() : id(route, ahead))
                        .replace("{key}", key).replace("{test}", test).replace("{tag}", "es")
                        .replace("{request}", request).replace("{last}", slip)
                        .replace("{kind}", route.contains("/noted/") ? "letter" : "test-cutting"));
            }
        }
    }

    private String id(String route, UUID ahead) {
        if (route.startsWith("/products/")) {
            return line();
        }
        if (route.startsWith("/desk/clients/") || route.startsWith("/clients/")) {
            return QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).client.id.toString());
        }
        return (route.contains("{key}") ? ahead : visit).toString();
    }

    private String line() {
        return QuarkusTransaction.requiringNew().call(() -> lines.all().stream().findFirst()
            .orElseGet(() -> lines.add(salon.stylist().id, ExampleLine.leaflet())).lineId.toString());
    }

    @Test
    void theSkinTestsPagesWithMistakes() {
        UUID tested = chair.planned(Map.of());
        try (BrowserContext context = as(salon.as("petra"), false)) {
            Page page = context.newPage();
            String at = "/visits/" + tested + "/skin-test";
            String test = chair.applied(tested).toString();
            chair.agreed(tested);
            assertThat(lookAtMistakes(page, at + "/record")).isEqualTo(422);
            assertThat(lookAtMistakes(page, at + "/tests/" + test + "/read")).isEqualTo(422);
            look(page, at);
        }
    }

    @Test
    void theSalonsTabletInTheClientsHands() {
        UUID tested = chair.planned(Map.of());
        Walker tablet =
            salon.as("petra").open("/visits/" + tested + "/skin-test").send("form[action$=hand-over]", Map.of());
        try (BrowserContext context = as(tablet, false)) {
            Page page = context.newPage();
            assertThat(lookAtMistakes(page, "/answers/skin-test")).isEqualTo(422);
        }
    }

    @Test
    void theStaffsPagesWithMistakes() {
        try (BrowserContext context = as(salon.as("edda"), false)) {
            Page page = context.newPage();
            UUID blank = make.visit(LocalDate.of(1965, 3, 4));
            for (String path : List.of("/visits/" + blank + "/paper", "/desk/new-visit", "/password", "/staff",
                "/programs", "/products", "/services", "/desk/visits/" + visit + "/product")) {
                assertThat(lookAtMistakes(page, path)).as(path).isEqualTo(422);
            }
            look(page, "/visits/" + visit);
            lookAtStatus(page, "/visits/" + UUID.randomUUID(), 404);
        }
        try (BrowserContext context = as(salon.as("sanna"), false)) {
            lookAtStatus(context.newPage(), "/day", 403);
        }
    }

    @Test
    @DisplayName("A1: what is left out is no page")
    void whatIsLeftOutIsNoPage() {
        assertThat(Rights.table()).extracting(Right::route).containsAll(NO_PAGE.keySet());
    }
}
