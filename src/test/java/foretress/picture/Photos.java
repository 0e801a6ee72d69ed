package foretress.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Photos for tests, drawn here; the red corner is where the picture is stored to begin. */
public final class Photos {
    public static final String WHERE = "51.5074N 0.1278W";

    private Photos() {}

    public static byte[] of(String format, int width, int height) {
        return written(format, drawn(width, height, BufferedImage.TYPE_INT_RGB), false);
    }

    static byte[] progressive(int width, int height) {
        return written("jpeg", drawn(width, height, BufferedImage.TYPE_3BYTE_BGR), true);
    }

    private static BufferedImage drawn(int width, int height, int type) {
        var image = new BufferedImage(width, height, type);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.BLUE);
        pen.fillRect(0, 0, width, height);
        pen.setColor(Color.RED);
        pen.fillRect(0, 0, width / 2, height / 2);
        pen.dispose();
        return image;
    }

    private static byte[] written(String format, BufferedImage image, boolean progressive) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName(format).next();
        var out = new ByteArrayOutputStream();
        try (ImageOutputStream to = ImageIO.createImageOutputStream(out)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            if (progressive) {
                param.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
            }
            writer.setOutput(to);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** A JPEG whose Exif block turns it and says where it was taken; the block is as long as a thumbnail would make it. */
    public static byte[] withExif(int width, int height, int orientation) {
        ByteBuffer exif = ByteBuffer.allocate(300);
        exif.put("Exif\0\0MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        exif.putShort((short) 1).putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation)
            .putShort((short) 0).putInt(0);
        exif.put(WHERE.getBytes(StandardCharsets.US_ASCII));
        return withSegment(of("jpeg", width, height), 0xE1, exif.array());
    }

    /** Behind the very first marker, where cameras write too. */
    static byte[] withSegment(byte[] jpeg, int marker, byte[] said) {
        ByteBuffer all = ByteBuffer.allocate(jpeg.length + said.length + 4);
        all.put(jpeg, 0, 2).put((byte) 0xFF).put((byte) marker).putShort((short) (said.length + 2)).put(said).put(jpeg,
            2, jpeg.length - 2);
        return all.array();
    }

    /** A PNG that is nothing but the promise of a size. */
    static byte[] promise(int width, int height) {
        byte[] head =
            ByteBuffer.allocate(17).put("IHDR".getBytes(StandardCharsets.US_ASCII)).putInt(width).putInt(height)
                .put(new byte[] { 8, 2, 0, 0, 0 }).array();
        var sum = new CRC32();
        sum.update(head);
        return ByteBuffer.allocate(33).put(new byte[] { (byte) 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A }).putInt(13)
            .put(head).putInt((int) sum.getValue()).array();
    }
}
