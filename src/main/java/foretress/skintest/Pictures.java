package foretress.skintest;

import jakarta.inject.Singleton;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * Photos as they are kept: drawn anew from the pixels, so that neither where it was taken nor anything hidden in the file stays,
 * and no larger than a screen needs.
 */
@Singleton
class Pictures {
    /** In bytes, as sent. */
    static final int LARGEST = 8 * 1024 * 1024;
    private static final Set<String> KNOWN = Set.of("jpeg", "png");
    private static final int LONGEST_SIDE = 1600;
    private static final int MOST_PIXELS_A_SIDE = 20_000;

    static {
        ImageIO.setUseCache(false);     // nothing of a photo goes to a temporary file
    }

    /** The photo as JPEG; empty when it is not a JPEG or PNG, too large, or broken. */
    Optional<byte[]> redrawn(byte[] sent) {
        if (sent.length == 0 || sent.length > LARGEST) return Optional.empty();
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(sent))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            return readers.hasNext() ? read(readers.next(), in) : Optional.empty();
        } catch (IOException | RuntimeException broken) {
            return Optional.empty();
        }
    }

    private static Optional<byte[]> read(ImageReader reader, ImageInputStream in) throws IOException {
        try {
            if (!KNOWN.contains(reader.getFormatName().toLowerCase(Locale.ROOT))) return Optional.empty();
            reader.setInput(in, true, true);
            int longest = Math.max(reader.getWidth(0), reader.getHeight(0));
            if (longest > MOST_PIXELS_A_SIDE) return Optional.empty();
            ImageReadParam thinned = reader.getDefaultReadParam();
            int step = Math.max(1, longest / LONGEST_SIDE);
            thinned.setSourceSubsampling(step, step, 0, 0);
            return Optional.of(jpeg(reader.read(0, thinned)));
        } finally {
            reader.dispose();
        }
    }

    private static byte[] jpeg(BufferedImage read) throws IOException {
        double scale = Math.min(1, (double) LONGEST_SIDE / Math.max(read.getWidth(), read.getHeight()));
        int width = Math.max(1, (int) (read.getWidth() * scale));
        int height = Math.max(1, (int) (read.getHeight() * scale));
        BufferedImage plain = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D drawing = plain.createGraphics();
        drawing.drawImage(read, 0, 0, width, height, Color.WHITE, null);
        drawing.dispose();
        var out = new ByteArrayOutputStream();
        ImageIO.write(plain, "jpeg", out);
        return out.toByteArray();
    }
}
