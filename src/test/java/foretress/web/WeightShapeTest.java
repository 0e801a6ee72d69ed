package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Weight;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A weight without its shape or its colour would be told by its word alone. */
class WeightShapeTest {
    private static final Path RESOURCES = Path.of("src/main/resources/META-INF/resources");

    @ParameterizedTest
    @EnumSource(Weight.class)
    void everyWeightHasItsShapeAndItsColour(Weight weight) throws IOException {
        String shape = WeightShape.shape(weight);
        assertThat(WeightShape.shape(weight.code())).isEqualTo(shape);
        Document sprite = Jsoup.parse(Files.readString(RESOURCES.resolve("img/weights.svg")), "", Parser.xmlParser());
        assertThat(sprite.select("symbol#" + shape + " path")).as("shape of %s", weight).isNotEmpty();
        assertThat(Files.readString(RESOURCES.resolve("css/base.css")))
            .contains("[data-weight=\"" + shape + "\"] { color: var(--");
    }
}
