package foretress.seal;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import com.lowagie.text.Document;
import com.lowagie.text.Paragraph;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.PdfStamper;
import com.lowagie.text.pdf.PdfWriter;
import foretress.seal.SealCheck.Verdict;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("D3, D8: the salon's seal on a paper, and what is told of a file that somebody changed")
class PaperSealTest {
    private static final Instant NOW = Instant.parse("2026-12-01T09:00:00Z");
    private static final SealingKey SALON = SealingKey.make("Alder & Wren", NOW);
    private static final SealingKey OTHER = SealingKey.make("Alder & Wren", NOW);
    private static final byte[] PAPER = paper("I agree to the service.");
    private static final byte[] SEALED = PaperSeal.put(PAPER, SALON, NOW);

    private static byte[] paper(String text) {
        var bytes = new ByteArrayOutputStream();
        var document = new Document();
        PdfWriter.getInstance(document, bytes);
        document.open();
        document.add(new Paragraph(text));
        document.close();
        return bytes.toByteArray();
    }

    private static Verdict verdict(byte[] file) {
        return SealCheck.of(file, List.of(SALON.certificate()));
    }

    private static byte[] with(byte[] file, String old, String fresh) {
        String text = new String(file, ISO_8859_1);
        assertThat(text).contains(old);
        return text.replace(old, fresh).getBytes(ISO_8859_1);
    }

    private static byte[] plus(byte[] file, String tail) {
        return (new String(file, ISO_8859_1) + tail).getBytes(ISO_8859_1);
    }

    private static int contents() {
        return new String(SEALED, ISO_8859_1).indexOf("/Contents <") + "/Contents <".length();
    }

    @Test
    void aSealedPaperBeginsWithItsOwnBytesAndIsUnchanged() {
        assertThat(Arrays.copyOf(SEALED, PAPER.length)).isEqualTo(PAPER);
        assertThat(verdict(SEALED)).isEqualTo(Verdict.UNCHANGED);
    }

    @Test
    void whatIsNotSealedAndWhatIsNoPaperAreToldApart() {
        assertThat(verdict(PAPER)).isEqualTo(Verdict.NOT_SEALED);
        assertThat(verdict("hello".getBytes(ISO_8859_1))).isEqualTo(Verdict.UNREADABLE);
        assertThat(verdict(new byte[0])).isEqualTo(Verdict.UNREADABLE);
    }

    @Test
    @DisplayName("another salon of the same name is another salon")
    void anotherSalonsSeal() {
        assertThat(verdict(PaperSeal.put(PAPER, OTHER, NOW))).isEqualTo(Verdict.OTHER_SEAL);
        assertThat(SealCheck.of(SEALED, List.of())).isEqualTo(Verdict.OTHER_SEAL);
    }

    @Test
    @DisplayName("an older key of the salon still counts")
    void afterARotation() {
        assertThat(SealCheck.of(SEALED, List.of(OTHER.certificate(), SALON.certificate())))
            .isEqualTo(Verdict.UNCHANGED);
    }

    @Test
    @DisplayName("ten thousand single bits turned over, by lot: none passes")
    void everyTurnedBitIsFound() {
        var random = new Random(20261201);
        for (int i = 0; i < 10_000; i++) {
            byte[] file = SEALED.clone();
            int at = random.nextInt(file.length);
            file[at] ^= (byte) (1 << random.nextInt(8));
            assertThat(verdict(file)).as("byte %d of %d", at, file.length).isNotEqualTo(Verdict.UNCHANGED);
        }
    }

    @Test
    @DisplayName("every bit of the signature's own place turned over: none passes, padding and letters' case included")
    void everyBitOfTheSignature() {
        int from = contents() - 1, to = from + PaperSeal.ROOM * 2 + 2;
        for (int at = from; at < to; at += at < from + 2600 ? 1 : 61) {
            for (int bit = 0; bit < 8; bit++) {
                byte[] file = SEALED.clone();
                file[at] ^= (byte) (1 << bit);
                assertThat(verdict(file)).as("bit %d of byte %d", bit, at - from).isEqualTo(Verdict.CHANGED);
            }
        }
    }

    @Test
    @DisplayName("bytes after the end, an appended revision, an annotation on top")
    void appended() throws Exception {
        assertThat(verdict(plus(SEALED, "\n"))).isEqualTo(Verdict.ADDED_TO);
        assertThat(verdict(plus(SEALED, "\n1 0 obj\n<<>>\nendobj\ntrailer\n<<>>\n%%EOF\n")))
            .isEqualTo(Verdict.ADDED_TO);
        var changed = new ByteArrayOutputStream();
        var stamper = new PdfStamper(new PdfReader(SEALED), changed, '\0', true);
        stamper.getOverContent(1).rectangle(0, 0, 600, 800);
        stamper.getOverContent(1).fill();
        stamper.close();
        assertThat(Arrays.copyOf(changed.toByteArray(), SEALED.length)).isEqualTo(SEALED);
        assertThat(verdict(changed.toByteArray())).isEqualTo(Verdict.ADDED_TO);
    }

    @Test
    @DisplayName("a second seal on top, the salon's own or another's")
    void twice() {
        assertThat(verdict(PaperSeal.put(SEALED, OTHER, NOW))).isEqualTo(Verdict.ADDED_TO);
        assertThat(verdict(PaperSeal.put(SEALED, SALON, NOW))).isEqualTo(Verdict.ADDED_TO);
    }

    @Test
    @DisplayName("a range that is missing, shorter, shifted, wrapped or of other numbers")
    void oddRanges() {
        String range = new String(SEALED, ISO_8859_1).replaceAll("(?s).*(/ByteRange ?\\[[^]]*]).*", "$1");
        assertThat(range).startsWith("/ByteRange");
        for (String odd : List.of("/ByteRange[]", "/ByteRange[0 10 20 30]", "/ByteRange[-1 10 20 30]",
            "/ByteRange[0 0 0 0]",
            range.replace("[0", "[1"), "/ByteRxnge" + range.substring(10), range.replace("]", " 5 5]"))) {
            assertThat(verdict(with(SEALED, range, odd))).as(odd).isNotEqualTo(Verdict.UNCHANGED);
        }
    }

    @Test
    @DisplayName("a signature emptied, stripped, or taken from another paper")
    void borrowedSignatures() {
        int from = contents();
        byte[] zeroed = SEALED.clone();
        Arrays.fill(zeroed, from, from + PaperSeal.ROOM * 2, (byte) '0');
        assertThat(verdict(zeroed)).isEqualTo(Verdict.CHANGED);
        byte[] other = PaperSeal.put(paper("I agree to the service!"), SALON, NOW);
        byte[] borrowed = SEALED.clone();
        int there = new String(other, ISO_8859_1).indexOf("/Contents <") + "/Contents <".length();
        System.arraycopy(other, there, borrowed, from, PaperSeal.ROOM * 2);
        assertThat(verdict(borrowed)).isEqualTo(Verdict.CHANGED);
        assertThat(verdict(Arrays.copyOf(SEALED, PAPER.length))).as("the paper alone").isEqualTo(Verdict.NOT_SEALED);
        assertThat(verdict(Arrays.copyOf(SEALED, SEALED.length - 20))).isEqualTo(Verdict.CHANGED);
    }

    @Test
    @DisplayName("another kind of signature than a seal is")
    void otherKinds() {
        assertThat(verdict(with(SEALED, "ETSI.CAdES.detached", "adbe.pkcs7.detached"))).isEqualTo(Verdict.CHANGED);
    }

    @Test
    void theKeyOpensWithItsPassphraseAndNoOther() throws Exception {
        byte[] stored = SALON.stored("right".toCharArray());
        assertThat(SealingKey.opened(stored, "right".toCharArray()).certificate()).isEqualTo(SALON.certificate());
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> SealingKey.opened(stored, "wrong".toCharArray()))
            .isInstanceOf(java.security.GeneralSecurityException.class);
    }

    @Test
    @DisplayName("pdfsig, a program that is not ours, calls the seal valid over the whole document, and a changed one not")
    void anotherProgramSaysSo(@TempDir Path folder) throws Exception {
        Assumptions.assumeTrue(Files.isExecutable(Path.of("/usr/bin/pdfsig")), "NOT RUN: there is no pdfsig");
        assertThat(pdfsig(folder, SEALED)).contains("Signature is Valid", "Total document signed",
            "ETSI.CAdES.detached");
        byte[] changed = SEALED.clone();
        changed[PAPER.length / 2] ^= 1;
        assertThat(pdfsig(folder, changed)).doesNotContain("Signature is Valid");
    }

    private static String pdfsig(Path folder, byte[] file) throws Exception {
        Path path = Files.write(folder.resolve("paper.pdf"), file);
        Process process =
            new ProcessBuilder("/usr/bin/pdfsig", "-nocert", path.toString()).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), ISO_8859_1);
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        return said;
    }
}
