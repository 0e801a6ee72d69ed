package foretress.demo;

import foretress.picture.PhotoRedrawing;
import foretress.told.PhotoOf;
import foretress.told.SentPhotos;
import jakarta.inject.Singleton;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.UUID;
import java.util.function.IntBinaryOperator;
import javax.imageio.ImageIO;

/** Two drawings in place of photos, made here point by point: no head of hair and no box in them exists. */
@Singleton
class DemoPhotos {
    private static final int WIDTH = 240, HEIGHT = 320;
    private static final int ROOTS = 0x4a3527, LENGTHS = 0x9a5a2c, WALL = 0xe9e4da, BOX = 0x6f4a5e, LABEL = 0xf3ede2;

    private final SentPhotos photos;

    DemoPhotos(SentPhotos photos) {
        this.photos = photos;
    }

    void send(UUID visit) {
        send(visit, PhotoOf.BACK, hair());
        send(visit, PhotoOf.BOX, box());
    }

    private void send(UUID visit, PhotoOf shows, byte[] png) {
        photos.send(UUID.randomUUID(), visit, shows, PhotoRedrawing.of(png).kept().orElseThrow());
    }

    /** Long hair from behind: dark regrowth above, brighter lengths below. */
    static byte[] hair() {
        return drawn((x, y) -> {
            double edge = 60 + 14 * Math.sin(y / 45.0);
            double top = Math.max(0, (84 - y) / 60.0);
            if (Math.abs(x - WIDTH / 2.0) >= (edge + y / 8.0) * Math.sqrt(Math.max(0, 1 - top * top))) {
                return WALL;
            }
            double strand = 0.82 + 0.18 * Math.sin(x * 0.9 + 3 * Math.sin(y / 60.0));
            return dimmed(y < 110 + 6 * Math.sin(x / 5.0) ? ROOTS : LENGTHS, strand);
        });
    }

    /** A box with a label that says nothing. */
    static byte[] box() {
        return drawn((x, y) -> {
            if (x < 50 || x > 190 || y < 40 || y > 290) {
                return WALL;
            }
            boolean label = x > 70 && x < 170 && y > 90 && y < 230;
            boolean line = label && y % 20 < 5 && x > 82 && x < 158;
            return line || !label ? BOX : LABEL;
        });
    }

    private static int dimmed(int colour, double by) {
        int red = (int) ((colour >> 16 & 0xff) * by), green = (int) ((colour >> 8 & 0xff) * by);
        return red << 16 | green << 8 | (int) ((colour & 0xff) * by);
    }

    private static byte[] drawn(IntBinaryOperator colour) {
        var image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                image.setRGB(x, y, colour.applyAsInt(x, y));
            }
        }
        var out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
