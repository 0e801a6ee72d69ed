package foretress.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("R64, B20: a photo is drawn anew or refused; nothing that hides in a file stays")
class RedrawingTest {
    private static final long MOST_BYTES_AT_WORK = 150_000_000;

    private static BufferedImage kept(byte[] sent) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(PhotoRedrawing.of(sent).kept().orElseThrow().jpeg()));
    }

    private static UploadRefusal refused(byte[] sent) {
        PictureResult<RedrawnPhoto> taken = PhotoRedrawing.of(sent);
        assertThat(taken.kept()).isEmpty();
        return taken.refused().orElseThrow();
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    @Test
    void whereItWasTakenDoesNotStay() {
        byte[] sent = Photos.withExif(40, 30, 1);
        assertThat(text(sent)).contains(Photos.WHERE, "Exif");
        assertThat(text(PhotoRedrawing.of(sent).kept().orElseThrow().jpeg())).doesNotContain(Photos.WHERE, "Exif");
    }

    /** Segments APP1 to APP15 and comments (ITU-T T.81, B.2.4) are where a file can say more than its picture. */
    @ParameterizedTest
    @ValueSource(ints = { 0xE1, 0xE2, 0xED, 0xEF, 0xFE })
    void noSegmentOfTheFileIsCarriedOver(int marker) {
        byte[] out = PhotoRedrawing
            .of(Photos.withSegment(Photos.of("jpeg", 40, 30), marker,
                "<script>alert(1)</script>".getBytes(StandardCharsets.US_ASCII)))
            .kept()
            .orElseThrow().jpeg();
        assertThat(text(out)).doesNotContain("script");
        assertThat(markers(out)).doesNotContain(0xE1, 0xE2, 0xED, 0xEF, 0xFE);
    }

    private static List<Integer> markers(byte[] jpeg) {
        var found = new ArrayList<Integer>();
        for (int at = 2; (jpeg[at + 1] & 0xFF) != 0xDA; at += 2 + ((jpeg[at + 2] & 0xFF) << 8 | jpeg[at + 3] & 0xFF)) {
            found.add(jpeg[at + 1] & 0xFF);
        }
        return found;
    }

    @Test
    void whatIsHungOnAtTheEndIsNotCarriedOver() {
        for (String format : new String[] { "jpeg", "png" }) {
            byte[] plain = Photos.of(format, 40, 30);
            byte[] sent = Arrays.copyOf(plain, plain.length + 30);
            byte[] script = "<script>alert(1)</script>".getBytes(StandardCharsets.US_ASCII);
            System.arraycopy(script, 0, sent, plain.length, script.length);
            assertThat(text(PhotoRedrawing.of(sent).kept().orElseThrow().jpeg())).as(format).doesNotContain("script");
        }
    }

    /** CIPA DC-008, orientation: where the corner that is stored first is seen. */
    @ParameterizedTest
    @CsvSource({ "1,40,30,left,top", "2,40,30,right,top", "3,40,30,right,bottom", "4,40,30,left,bottom",
        "5,30,40,left,top", "6,30,40,right,top", "7,30,40,right,bottom", "8,30,40,left,bottom", "9,40,30,left,top" })
    void itIsTurnedTheWayItWasTaken(int orientation, int width, int height, String across, String down)
        throws IOException {
        BufferedImage seen = kept(Photos.withExif(40, 30, orientation));
        assertThat(seen.getWidth()).isEqualTo(width);
        assertThat(seen.getHeight()).isEqualTo(height);
        int red = seen.getRGB(across.equals("left") ? 5 : width - 6, down.equals("top") ? 5 : height - 6);
        assertThat(red >> 16 & 0xFF).isGreaterThan(200);
        assertThat(red & 0xFF).isLessThan(80);
    }

    @Test
    void aLargePhotoIsMadeNoLargerThanAScreenNeeds() throws IOException {
        BufferedImage kept = kept(Photos.of("png", 5000, 2500));
        assertThat(kept.getWidth()).isBetween(1300, PhotoRedrawing.LONGEST_SIDE);
        assertThat((double) kept.getWidth() / kept.getHeight()).isCloseTo(2, within(0.01));
    }

    @Test
    void nothingElseIsTaken() {
        assertThat(refused(Photos.of("gif", 10, 10))).isEqualTo(UploadRefusal.NOT_KNOWN);
        assertThat(refused("<svg xmlns='http://www.w3.org/2000/svg'/>".getBytes(StandardCharsets.UTF_8)))
            .isEqualTo(UploadRefusal.NOT_KNOWN);
        assertThat(refused("RIFF\20\0\0\0WEBPVP8X".getBytes(StandardCharsets.ISO_8859_1))).as("cannot be drawn here")
            .isEqualTo(UploadRefusal.NOT_KNOWN);
        assertThat(refused(new byte[0])).isEqualTo(UploadRefusal.NOT_KNOWN);
        assertThat(refused(Arrays.copyOf(Photos.of("png", 40, 40), 40))).as("broken off")
            .isEqualTo(UploadRefusal.BROKEN);
        assertThat(refused(new byte[PhotoRedrawing.MOST_BYTES + 1])).isEqualTo(UploadRefusal.TOO_HEAVY);
        assertThat(refused(new byte[] { (byte) 0xFF, (byte) 0xD8, (byte) 0xFF })).isEqualTo(UploadRefusal.BROKEN);
    }

    @ParameterizedTest
    @CsvSource({ "50000,50000", "20001,10", "10,20001", "8001,5000", "8000,5001", "2147483647,2147483647" })
    void aPromiseOfTooManyPixelsIsRefusedBeforeAnythingIsDecoded(int width, int height) {
        assertThat(refused(Photos.promise(width, height))).isEqualTo(UploadRefusal.TOO_MANY_PIXELS);
    }

    @ParameterizedTest
    @CsvSource({ "8000,5000", "20000,2000", "2000,20000" })
    void fortyMillionPixelsAreStillTaken(int width, int height) {
        assertThat(refused(Photos.promise(width, height))).as("its size is fine, its pixels are missing")
            .isEqualTo(UploadRefusal.BROKEN);
    }

    @Test
    void aProgressivePhotoOfManyPixelsTakesLittleMemory() {
        byte[] sent = Photos.progressive(7000, 5700);
        ThreadMXBean memory = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = memory.getCurrentThreadAllocatedBytes();
        assertThat(PhotoRedrawing.of(sent).kept()).isPresent();
        assertThat(memory.getCurrentThreadAllocatedBytes() - before).isLessThan(MOST_BYTES_AT_WORK);
    }

    @Test
    void aJpegThatGoesOverItsAreaForEverIsRefused() {
        byte[] plain = Photos.progressive(64, 64);
        byte[] scan = { (byte) 0xFF, (byte) 0xDA, 0, 8, 1, 1, 0, 0, 63, 0 };
        byte[] sent = Arrays.copyOf(plain, plain.length - 2 + 60 * scan.length);
        for (int i = 0; i < 60; i++) {
            System.arraycopy(scan, 0, sent, plain.length - 2 + i * scan.length, scan.length);
        }
        assertThat(refused(sent)).isEqualTo(UploadRefusal.BROKEN);
    }

    @Test
    void brokenFilesOfEveryKindAreAnsweredAndNeverThrow() {
        var chance = new Random(20261129);
        byte[][] whole = { Photos.withExif(60, 40, 6), Photos.of("png", 60, 40), Photos.progressive(60, 40) };
        for (int i = 0; i < 600; i++) {
            byte[] sent = whole[i % 3].clone();
            for (int hits = chance.nextInt(6); hits >= 0; hits--) {
                sent[chance.nextInt(sent.length)] = (byte) chance.nextInt(256);
            }
            PictureResult<RedrawnPhoto> taken = PhotoRedrawing.of(Arrays.copyOf(sent, chance.nextInt(sent.length) + 1));
            assertThat(taken.kept().isPresent()).isNotEqualTo(taken.refused().isPresent());
        }
    }

    @Test
    void aLetterIsAPhotoDrawnAnewOrAPdfAsItCame() {
        byte[] pdf = "%PDF-1.7 /OpenAction << /S /JavaScript >>".getBytes(StandardCharsets.US_ASCII);
        Paper letter = Paper.of(pdf).kept().orElseThrow();
        assertThat(letter.mediaType()).isEqualTo("application/pdf");
        assertThat(letter.bytes()).isEqualTo(pdf);
        Paper photo = Paper.of(Photos.withExif(40, 30, 1)).kept().orElseThrow();
        assertThat(photo.mediaType()).isEqualTo("image/jpeg");
        assertThat(text(photo.bytes())).doesNotContain(Photos.WHERE);
        assertThat(Paper.of(" %PDF-1.7".getBytes(StandardCharsets.US_ASCII)).refused())
            .contains(UploadRefusal.NOT_KNOWN);
        assertThat(Paper.of(Arrays.copyOf(pdf, PhotoRedrawing.MOST_BYTES + 1)).refused())
            .contains(UploadRefusal.TOO_HEAVY);
    }
}
