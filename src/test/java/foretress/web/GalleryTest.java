package foretress.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@QuarkusTest
class GalleryTest {
    @TestHTTPResource("") URI base;

    @BeforeEach
    void openTheSalon() {
        GallerySalon.open();
    }

    @AfterEach
    void closeTheSalon() {
        GallerySalon.close();
    }

    @ParameterizedTest
    @MethodSource("foretress.web.GalleryPages#all")
    void everyKindOfPageCanBeMadeOfTheTags(String name) throws IOException {
        String html = html(name);
        Files.createDirectories(Path.of("target/gallery"));
        Files.writeString(Path.of("target/gallery", name + ".html"), html);
    }

    @ParameterizedTest
    @MethodSource("foretress.web.GalleryPages#all")
    @DisplayName("A6, A18: one h1, a title, labelled inputs, ids once, whatever is pointed at is there")
    void pagesAreWellFormed(String name) throws IOException {
        Document page = Jsoup.parse(html(name));
        assertThat(page.select("h1")).hasSize(1);
        assertThat(page.title()).isNotBlank();
        assertThat(page.select("main")).hasSize(1);
        assertThat(page.selectFirst("html").attr("lang")).isEqualTo("en");
        idsAreUnique(page);
        pointersLead(page);
        for (Element input : page.select("input:not([type=hidden]), select, textarea")) {
            assertThat(input.closest("label") != null || page.selectFirst("label[for=" + input.id() + "]") != null)
                .as("label of %s", input).isTrue();
        }
        for (Element choice : page.select("input[type=radio], input[type=checkbox]")) {
            assertThat(choice.closest("fieldset").selectFirst("legend")).as("legend over %s", choice).isNotNull();
        }
        for (Element form : page.select("form")) {
            assertThat(form.select("input[name=csrf-token]")).as("token of %s", form).hasSize(1);
        }
    }

    @Test
    @DisplayName("A24: the first page a client meets fits 14 kB on the wire, style and headers included")
    void theDoorFitsTheFirstRoundTrip() throws Exception {
        assertThat(wire("door")).isLessThanOrEqualTo(14 * 1024);
    }

    @ParameterizedTest
    @MethodSource("foretress.web.GalleryPages#all")
    @DisplayName("A24: no page takes more than 50 kB with a cold cache")
    void noPageIsHeavy(String name) throws Exception {
        assertThat(wire(name)).isLessThanOrEqualTo(50 * 1024);
    }

    private static String html(String name) {
        Response response = given().get("/gallery/" + name);
        assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
        return response.asString();
    }

    private int wire(String name) throws IOException, InterruptedException {
        return Wire.bytes(base, "/gallery/" + name, html(name));
    }

    private static void idsAreUnique(Document page) {
        List<String> ids = page.select("[id]").eachAttr("id");
        assertThat(ids).doesNotHaveDuplicates();
    }

    private static void pointersLead(Document page) {
        List<String> ids = page.select("[id]").eachAttr("id");
        Stream.of("for", "aria-describedby", "aria-labelledby").forEach(attribute -> {
            for (Element element : page.select("[" + attribute + "]")) {
                assertThat(ids).as("%s", element).contains(element.attr(attribute).split(" "));
            }
        });
        for (Element link : page.select(".mistakes a")) {
            assertThat(ids).contains(link.attr("href").substring(1));
        }
    }
}
