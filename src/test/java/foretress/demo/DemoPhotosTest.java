package foretress.demo;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.picture.PhotoRedrawing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class DemoPhotosTest {
    @Test
    @DisplayName("what the demo shows as photos is drawn by it, small, and comes in by the one way for photos; target/demo-photos")
    void theyAreSmallDrawings() throws IOException {
        for (Map.Entry<String, byte[]> one : Map.of("hair", DemoPhotos.hair(), "box", DemoPhotos.box()).entrySet()) {
            byte[] jpeg = PhotoRedrawing.of(one.getValue()).kept().orElseThrow().jpeg();
            assertThat(jpeg).as(one.getKey()).hasSizeLessThan(40_000);
            Files.createDirectories(Path.of("target/demo-photos"));
            Files.write(Path.of("target/demo-photos", one.getKey() + ".jpg"), jpeg);
        }
    }
}
