package foretress;

import com.microsoft.playwright.Page;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Pictures of whole pages: into {@code target/pictures}, or with {@code -Dpictures=true} into {@code docs/pictures}. */
public final class Pictures {
    private static final Path FOLDER = Path.of(Boolean.getBoolean("pictures") ? "docs/pictures" : "target/pictures");

    private Pictures() {}

    public static void take(Page page, String name) {
        page.waitForFunction("() => document.fonts.status === 'loaded'");
        page.screenshot(new Page.ScreenshotOptions().setFullPage(true).setPath(FOLDER.resolve(name + ".png")));
    }

    public static void keep(BufferedImage image, String name) {
        try {
            Files.createDirectories(FOLDER);
            ImageIO.write(image, "png", FOLDER.resolve(name + ".png").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
