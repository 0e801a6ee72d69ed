package foretress.invitation;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/**
 * A QR code (ISO/IEC 18004) as one SVG path over a square of {@code size} units, one unit a module.
 * Error correction M (about 15 % may be lost) and the quiet zone of four modules the standard asks for.
 */
public record Qr(int size, String path) {
    private static final int QUIET_MODULES = 4;

    public static Qr of(String text) {
        try {
            BitMatrix bits = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, Map.of(
                EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M, EncodeHintType.MARGIN, QUIET_MODULES));
            return new Qr(bits.getWidth(), draw(bits));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("Too long for a QR code: " + text.length() + " letters", tooLong);
        }
    }

    private static String draw(BitMatrix bits) {
        var path = new StringBuilder();
        for (int y = 0; y < bits.getHeight(); y++) {
            for (int x = 0; x < bits.getWidth(); x++) {
                if (bits.get(x, y)) {
                    int from = x;
                    while (x < bits.getWidth() && bits.get(x, y)) {
                        x++;
                    }
                    path.append("M%d %dh%dv1h-%dz".formatted(from, y, x - from, x - from));
                }
            }
        }
        return path.toString();
    }
}
