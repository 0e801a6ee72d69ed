package foretress.invitation;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.decoder.Decoder;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class QrTest {
    private static final String LINK = "https://salon.example/i/" + "Ab9_-".repeat(9).substring(0, 43);

    /** The decoder reads modules alone, so it is a check that does not share the drawing. */
    @Test
    void theDrawnModulesReadBackAsTheLink() throws Exception {
        Qr qr = Qr.of(LINK);
        assertThat(new Decoder().decode(modules(qr)).getText()).isEqualTo(LINK);
    }

    /** ISO/IEC 18004: a quiet zone of four modules on every side. */
    @Test
    void fourModulesAroundItStayWhite() {
        Qr qr = Qr.of(LINK);
        BitMatrix all = paint(qr);
        assertThat(all.getEnclosingRectangle()).containsExactly(4, 4, qr.size() - 8, qr.size() - 8);
    }

    private static BitMatrix modules(Qr qr) {
        BitMatrix all = paint(qr);
        var inner = new BitMatrix(qr.size() - 8);
        for (int y = 0; y < inner.getHeight(); y++) {
            for (int x = 0; x < inner.getWidth(); x++) {
                if (all.get(x + 4, y + 4)) {
                    inner.set(x, y);
                }
            }
        }
        return inner;
    }

    private static BitMatrix paint(Qr qr) {
        var bits = new BitMatrix(qr.size());
        Matcher run = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-\\3z").matcher(qr.path());
        while (run.find()) {
            bits.setRegion(Integer.parseInt(run.group(1)), Integer.parseInt(run.group(2)),
                Integer.parseInt(run.group(3)), 1);
        }
        return bits;
    }
}
