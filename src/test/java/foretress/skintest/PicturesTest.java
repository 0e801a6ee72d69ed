package foretress.skintest;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A photo is drawn anew or refused")
class PicturesTest {
    private final Pictures pictures = new Pictures();

    private static byte[] image(String format, int width, int height) throws IOException {
        var out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), format, out);
        return out.toByteArray();
    }

    /** A JPEG comment segment (ITU-T T.81, marker FFFE) stands for where and with what it was taken. */
    @Test
    void whatIsHiddenInTheFileDoesNotStay() throws IOException {
        byte[] plain = image("jpeg", 40, 30);
        byte[] secret = "51.5074N 0.1278W".getBytes(StandardCharsets.US_ASCII);
        var marked = new ByteArrayOutputStream();
        marked.write(plain, 0, 2);
        marked.write(new byte[] {(byte) 0xFF, (byte) 0xFE, 0, (byte) (secret.length + 2)});
        marked.write(secret);
        marked.write(plain, 2, plain.length - 2);
        byte[] kept = pictures.redrawn(marked.toByteArray()).orElseThrow();
        assertThat(new String(marked.toByteArray(), StandardCharsets.ISO_8859_1)).contains("51.5074N");
        assertThat(new String(kept, StandardCharsets.ISO_8859_1)).doesNotContain("51.5074N");
    }

    @Test
    void aLargePhotoIsMadeNoLargerThanAScreenNeeds() throws IOException {
        BufferedImage kept = ImageIO.read(new ByteArrayInputStream(pictures.redrawn(image("png", 5000, 2500)).orElseThrow()));
        assertThat(kept.getWidth()).isLessThanOrEqualTo(1600);
        assertThat((double) kept.getWidth() / kept.getHeight()).isEqualTo(2);
    }

    @Test
    void nothingElseIsTaken() throws IOException {
        assertThat(pictures.redrawn(image("gif", 10, 10))).isEmpty();
        assertThat(pictures.redrawn("<svg xmlns='http://www.w3.org/2000/svg'/>".getBytes(StandardCharsets.UTF_8))).isEmpty();
        assertThat(pictures.redrawn(new byte[0])).isEmpty();
        assertThat(pictures.redrawn(Arrays.copyOf(image("png", 40, 40), 40))).as("broken off").isEmpty();
        assertThat(pictures.redrawn(new byte[Pictures.LARGEST + 1])).isEqualTo(Optional.empty());
    }
}
