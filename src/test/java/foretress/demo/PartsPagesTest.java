package foretress.demo;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import foretress.Axe;
import foretress.Browser;
import foretress.Pictures;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
@DisplayName("the living page of parts")
class PartsPagesTest {
    private static final Path TAGS = Path.of("templates/tags");
    private static final Pattern USED = Pattern.compile("\\{#([a-z]+)");
    /** Needs a form that is sent, which no part is. */
    private static final Set<String> SENT_ONLY = Set.of("csrf");

    @TestHTTPResource("/") URL base;

    @Test
    void everyTagStandsOnOneOfThePages() throws IOException {
        Set<String> shown = new HashSet<>();
        for (String page : List.of("page", "staff", "demo/parts-client", "demo/parts-staff")) {
            usedIn(Path.of("templates/" + page + ".html")).forEach(shown::add);
        }
        try (Stream<Path> files = Files.list(TAGS)) {
            assertThat(files.map(file -> file.getFileName().toString().replace(".html", "")))
                .allSatisfy(tag -> assertThat(shown.contains(tag) || SENT_ONLY.contains(tag)).as(tag).isTrue());
        }
    }

    @ParameterizedTest
    @CsvSource({ "/parts", "/parts/chair" })
    void everyIdIsThereOnce(String path) {
        assertThat(
            Jsoup.parse(given().get(path).then().statusCode(200).extract().asString()).select("[id]").eachAttr("id"))
            .isNotEmpty().doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @CsvSource({ "/parts, 390", "/parts, 320", "/parts/chair, 1024" })
    @DisplayName("A1, A3: no part is refused by axe or wider than its screen")
    void partsCanBeReadByAnybody(String path, int width) {
        try (Browser browser = Browser.open(); BrowserContext context = browser.sized(base.toString(), width, 844)) {
            Page page = context.newPage();
            assertThat(page.navigate(path).status()).isEqualTo(200);
            assertThat(Axe.findings(page)).isEmpty();
            assertThat((Integer) page.evaluate(
                "() => document.documentElement.scrollWidth - document.documentElement.clientWidth")).isNotPositive();
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
            Pictures.take(page, "parts" + path.replace('/', '-') + "-" + width);
        }
    }

    /** Tags a file calls, and those that they call. */
    private static Stream<String> usedIn(Path template) throws IOException {
        Set<String> direct = USED.matcher(Files.readString(template)).results().map(m -> m.group(1))
            .filter(tag -> Files.exists(file(tag))).collect(Collectors.toSet());
        Stream.Builder<String> all = Stream.builder();
        for (String tag : direct) {
            all.add(tag);
            USED.matcher(Files.readString(file(tag))).results().map(m -> m.group(1)).forEach(all);
        }
        return all.build();
    }

    private static Path file(String tag) {
        return TAGS.resolve(tag + ".html");
    }
}
