package foretress.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;

/**
 * The one way in for every photo: told by its bytes, measured by its header before anything is decoded, drawn anew from its pixels
 * the right way up, no larger than a screen needs. Where it was taken, with what, and whatever else hides in a file does not come along.
 */
public final class PhotoRedrawing {
    /** As sent. */
    public static final int MOST_BYTES = 10_000_000;
    /** In millions of pixels, as sent. */
    public static final int MOST_MEGAPIXELS = 40;
    /** In pixels, as kept. */
    public static final int LONGEST_SIDE = 2000;
    /** In pixels, where only a glance is wanted. */
    public static final int SMALL_SIDE = 240;
    private static final float QUALITY = 0.88f;
    private static final float SMALL_QUALITY = 0.75f;
    private static final int PATIENCE_SECONDS = 15;
    /** One at a time: what a photo takes in memory while it is drawn, it takes once. */
    private static final Semaphore TURN = new Semaphore(1, true);

    static {
        ImageIO.setUseCache(false); // nothing of a photo goes to a temporary file
    }

    private PhotoRedrawing() {}

    /** @param sent any bytes; JPEG and PNG are drawn, and of several pictures in one file the first */
    public static PictureResult<RedrawnPhoto> of(byte[] sent) {
        if (sent.length > MOST_BYTES) {
            return PictureResult.refused(UploadRefusal.TOO_HEAVY);
        }
        Kind kind = Kind.of(sent);
        if (kind != Kind.JPEG && kind != Kind.PNG) {
            return PictureResult.refused(UploadRefusal.NOT_KNOWN);
        }
        Optional<Head> head = Head.of(sent).filter(Head::sound);
        if (head.isEmpty()) {
            return PictureResult.refused(UploadRefusal.BROKEN);
        }
        return head.get().drawable() ? inTurn(kind, sent, head.get())
            : PictureResult.refused(UploadRefusal.TOO_MANY_PIXELS);
    }

    private static PictureResult<RedrawnPhoto> inTurn(Kind kind, byte[] sent, Head head) {
        try {
            if (!TURN.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                return PictureResult.refused(UploadRefusal.BUSY);
            }
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
            return PictureResult.refused(UploadRefusal.BUSY);
        }
        try {
            BufferedImage read = thinned(kind, sent, head, LONGEST_SIDE);
            return PictureResult.kept(new RedrawnPhoto(jpeg(upright(read, head.orientation(), LONGEST_SIDE), QUALITY)));
        } catch (IOException | RuntimeException broken) {
            return PictureResult.refused(UploadRefusal.BROKEN); // readers answer broken files with exceptions of every kind
        } finally {
            TURN.release();
        }
    }

    /** @param drawn a JPEG that was drawn here: it is sound and no larger than {@link #LONGEST_SIDE} */
    static byte[] small(byte[] drawn) {
        try {
            BufferedImage read = thinned(Kind.JPEG, drawn, Head.of(drawn).orElseThrow(), 2 * SMALL_SIDE);
            return jpeg(upright(read, 1, SMALL_SIDE), SMALL_QUALITY);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** Decoded with rows and columns left out, so that what is in memory stays under one and a half times this many pixels a side. */
    private static BufferedImage thinned(Kind kind, byte[] sent, Head head, int side) throws IOException {
        ImageReader reader = ImageIO.getImageReadersByFormatName(kind.name()).next();
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(sent))) {
            reader.setInput(in, true, true);
            if (reader.getWidth(0) != head.width() || reader.getHeight(0) != head.height()) {
                throw new IOException("it says two sizes");
            }
            int step = Math.max(1, Math.round((float) Math.max(head.width(), head.height()) / side));
            ImageReadParam param = reader.getDefaultReadParam();
            param.setSourceSubsampling(step, step, 0, 0);
            return reader.read(0, param);
        } finally {
            reader.dispose();
        }
    }

    private static BufferedImage upright(BufferedImage read, int orientation, int side) {
        double scale = Math.min(1, (double) side / Math.max(read.getWidth(), read.getHeight()));
        int width = Math.max(1, (int) Math.round(read.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(read.getHeight() * scale));
        boolean lies = orientation >= 5;
        var plain =
            new BufferedImage(lies ? height : width, lies ? width : height, BufferedImage.TYPE_INT_RGB);
        Graphics2D drawing = plain.createGraphics();
        drawing.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        drawing.setColor(Color.WHITE);
        drawing.fillRect(0, 0, plain.getWidth(), plain.getHeight());
        drawing.transform(turn(orientation, width, height));
        drawing.drawImage(read, 0, 0, width, height, null);
        drawing.dispose();
        return plain;
    }

    /** Exif's eight positions: what is stored, to how it is seen. */
    private static AffineTransform turn(int orientation, int width, int height) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }

    private static byte[] jpeg(BufferedImage plain, float quality) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        var out = new ByteArrayOutputStream();
        try (ImageOutputStream to = ImageIO.createImageOutputStream(out)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(quality);
            writer.setOutput(to);
            writer.write(null, new IIOImage(plain, null, null), param);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
