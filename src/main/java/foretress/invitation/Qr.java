package foretress.invitation;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A QR code (ISO/IEC 18004) over a square of {@code size} units, one unit a module.
 * Error correction M (about 15 % may be lost) and the quiet zone of four modules the standard asks for.
 */
public record Qr(int size, List<Run> runs) {
    /** Dark modules beside each other: where the first one is, from the upper left corner, and how many. */
    public record Run(int x, int y, int length) {}

    public Qr {
        runs = List.copyOf(runs);
    }

    private static final int QUIET_MODULES = 4;

    public static Qr of(String text) {
        try {
            BitMatrix bits = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, Map.of(
                EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M, EncodeHintType.MARGIN, QUIET_MODULES));
            return new Qr(bits.getWidth(), runs(bits));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("Too long for a QR code: " + text.length() + " letters", tooLong);
        }
    }

    private static List<Run> runs(BitMatrix bits) {
        List<Run> runs = new ArrayList<>();
        for (int y = 0; y < bits.getHeight(); y++) {
            for (int x = 0; x < bits.getWidth(); x++) {
                if (bits.get(x, y)) {
                    int from = x;
                    while (x < bits.getWidth() && bits.get(x, y)) {
                        x++;
                    }
                    runs.add(new Run(from, y, x - from));
                }
            }
        }
        return runs;
    }

    /** As the data of one SVG path. */
    public String path() {
        return runs.stream().map(run -> "M%d %dh%dv1h-%dz".formatted(run.x(), run.y(), run.length(), run.length()))
            .collect(Collectors.joining());
    }
}
