package foretress.web;

import static io.restassured.RestAssured.get;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.salon.Salon;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@QuarkusTest
class GalleryTest {
    @BeforeEach
    void openTheSalon() {
        QuarkusTransaction.requiringNew().run(() -> {
            var salon = new Salon();
            salon.id = UUID.randomUUID();
            salon.name = "Alder & Wren";
            salon.town = "Tarnbeck";
            salon.address = "3 Millrace Lane";
            salon.phone = "01632 960 114";
            salon.email = "hello@alderandwren.example";
            salon.zone = "Europe/London";
            salon.jurisdiction = "gb";
            salon.urgentNumber = "999";
            salon.paperSize = Salon.PaperSize.A4;
            salon.languages = "en,es";
            salon.openingHours = "";
            salon.persist();
        });
    }

    @AfterEach
    void closeTheSalon() {
        QuarkusTransaction.requiringNew().run(() -> Salon.deleteAll());
    }

    @ParameterizedTest
    @MethodSource("foretress.web.GalleryPages#all")
    void everyKindOfPageCanBeMadeOfTheTags(String page) throws IOException {
        var response = get("/gallery/" + page);
        assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
        Files.createDirectories(Path.of("target/gallery"));
        Files.writeString(Path.of("target/gallery", page + ".html"), response.asString());
    }
}
