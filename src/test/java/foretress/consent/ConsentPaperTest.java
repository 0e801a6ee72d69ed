package foretress.consent;

import static foretress.consent.Consenting.aConsent;
import static foretress.consent.Consenting.aDrawing;
import static foretress.consent.Consenting.evidenceFor;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import foretress.assessment.Weight;
import foretress.consent.ConsentInput.Answered;
import foretress.consent.ConsentInput.Found;
import foretress.consent.ConsentText.Part;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@Execution(ExecutionMode.CONCURRENT)
class ConsentPaperTest {

    /** The pages to look at after a change, in target/paper. */
    static byte[] shown(String name, byte[] pdf) {
        try {
            Files.createDirectories(Path.of("target/paper"));
            Files.write(Path.of("target/paper", name + ".pdf"), pdf);
            return pdf;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    @DisplayName("D17: same input and clock, same bytes, also when many print at once")
    void theSameConsentIsTheSameBytes() throws Exception {
        byte[] once = shown("plain", aConsent().withStrand().paper());
        ExecutorService hands = Executors.newFixedThreadPool(4);
        try {
            for (Future<byte[]> printed : hands
                .invokeAll(IntStream.range(0, 12).<java.util.concurrent.Callable<byte[]>>mapToObj(
                    i -> () -> aConsent().withStrand().paper()).toList())) {
                assertThat(printed.get()).isEqualTo(once);
            }
        } finally {
            hands.shutdown();
        }
    }

    @Test
    @DisplayName("the code on the last page is read by a camera and leads to where anybody can check the file")
    void theCodeOnTheLastPageLeadsThere() throws Exception {
        try (PDDocument document = org.apache.pdfbox.Loader.loadPDF(aConsent().paper())) {
            BufferedImage picture = new PDFRenderer(document).renderImageWithDPI(document.getNumberOfPages() - 1, 150);
            int[] pixels = picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
            var source = new RGBLuminanceSource(picture.getWidth(), picture.getHeight(), pixels);
            assertThat(new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)),
                Map.of(DecodeHintType.TRY_HARDER, true)).getText()).isEqualTo(Consenting.VERIFY);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = { "en", "es", "pl", "vi", "ar" })
    @DisplayName("D10: all that is printed between the margins is the canonical text, the mark and how it was signed")
    void thePrintedTextIsTheSignedText(String language) {
        Consenting consent = aConsent().in(language);
        ConsentText text = consent.text();
        String printed = Read.plain(Read
            .body(shown("text-" + language, consent.paper(new SignatureMark.Typed("Ottilie Brandt"), PaperSize.A4))));
        List<String> canonical = text.canonical().lines().skip(1).toList();
        int after = canonical.indexOf(heading(text, Part.TAKE_BACK));
        String before = Read.plain(String.join("", canonical.subList(0, after)));
        String check = ConsentWords.in(language).say("paper.how.check", Map.of()) + Consenting.VERIFY;
        String rest = Read.plain(String.join("", canonical.subList(after, canonical.size())) + check);
        if (language.equals("ar")) {
            // What runs from the right is read out of a PDF in another order: there its letters are counted.
            assertThat(letters(printed)).containsAll(letters(before + rest));
            assertThat(printed).contains(text.sha256(), Consenting.DOCUMENT.toString());
            return;
        }
        assertThat(printed).startsWith(before).endsWith(rest);
        assertThat(printed.substring(before.length(), printed.length() - rest.length()))
            .contains(text.sha256(), "ef".repeat(32), Consenting.DOCUMENT.toString());
    }

    /** A history may hold forty entries; the drawing shrinks to the page, and the list under it says all of them in full. */
    @ParameterizedTest
    @ValueSource(ints = { 12, 13, 30, 40 })
    void aLongHistoryStaysOnThePaper(int treatments) throws IOException {
        byte[] pdf = shown("treatments-" + treatments, aConsent().withTreatments(treatments).paper());
        var printed = new StringBuilder();
        try (PDDocument document = org.apache.pdfbox.Loader.loadPDF(pdf)) {
            new org.apache.pdfbox.text.PDFTextStripper() {
                @Override
                protected void writeString(String text, List<org.apache.pdfbox.text.TextPosition> at) {
                    at.forEach(
                        letter -> assertThat(letter.getYDirAdj()).as(text).isBetween(0f, letter.getPageHeight() - 20));
                    printed.append(text).append(' ');
                }
            }.getText(document);
        }
        String plain = Read.plain(printed.toString());
        IntStream.range(0, treatments).forEach(
            i -> assertThat(plain.split(Read.plain("Colour " + i + ", the new growth, about every 6 weeks"), -1))
                .hasSize(2));
    }

    /** Each letter with its number, such as "q3" for the third q. */
    private static List<String> letters(String text) {
        Map<Integer, Integer> seen = new HashMap<>();
        return text.codePoints()
            .mapToObj(letter -> Character.toString(letter) + seen.merge(letter, 1, Integer::sum)).toList();
    }

    private static String heading(ConsentText text, Part part) {
        return text.sections().stream().filter(section -> section.part() == part).findFirst().orElseThrow().heading();
    }

    @ParameterizedTest
    @ValueSource(strings = { "en", "es" })
    @DisplayName("D10: two hundred answers over many pages are still the canonical text, in order")
    void manyPagesLoseNoLine(String language) {
        Consenting consent = aConsent().in(language).answered(answers(200));
        String printed = Read.plain(Read.body(consent.paper()));
        assertThat(printed).contains(consent.input().answered().stream()
            .map(answered -> Read.plain(answered.question() + answered.answer())).toList());
        assertThat(printed)
            .contains(Read.plain(consent.text().canonical().lines().skip(1).limit(30).reduce("", String::concat)));
    }

    private static List<Answered> answers(int many) {
        return IntStream.range(0, many).mapToObj(i -> new Answered("Topic " + i / 9, "Question number " + i,
            i % 7 == 0 ? "A longer answer that runs over two lines of its column, number " + i : "Answer " + i))
            .toList();
    }

    @Test
    @DisplayName("D10: an answer of ten thousand letters runs on over the pages and none is lost")
    void anAnswerLongerThanAPageRunsOn() {
        String words = IntStream.range(0, 1500).mapToObj(i -> "word" + i).reduce("", (a, b) -> a + " " + b).strip();
        byte[] pdf =
            shown("long-answer", aConsent().answered(List.of(new Answered("Notes", "Anything else", words))).paper());
        assertThat(Read.plain(Read.body(pdf))).contains(Read.plain(words));
    }

    @Test
    @DisplayName("D1: every font is embedded, in part, with a map back to Unicode")
    void everyFontIsEmbedded() {
        List<PDFont> fonts =
            Read.fonts(aConsent().by("Żaneta Nguyễn ليلى שרה").paper(new SignatureMark.Typed("Żaneta"), PaperSize.A4));
        assertThat(fonts).isNotEmpty().allSatisfy(font -> {
            assertThat(font.isEmbedded()).as(font.getName()).isTrue();
            assertThat(font.getName()).matches("[A-Z]{6}\\+.*");
            assertThat(font.getCOSObject().containsKey(org.apache.pdfbox.cos.COSName.TO_UNICODE)).isTrue();
        });
    }

    @Test
    @DisplayName("D18: title, metadata and file name tell the visit, not a word about health")
    void theOutsideOfTheDocumentTellsNothing() {
        Consenting consent = aConsent().found(new Found(Weight.PREVENTS, "Canary-finding")).testing();
        byte[] pdf = consent.paper();
        String outside = Read.from(pdf, document -> {
            PDDocumentInformation info = document.getDocumentInformation();
            var xmp = new String(bytes(document), StandardCharsets.UTF_8);
            return String.join(" ", info.getTitle(), info.getAuthor(), info.getCreator(), info.getProducer(), xmp,
                String.valueOf(info.getSubject()), String.valueOf(info.getKeywords()));
        });
        assertThat(outside).contains("Consent, visit of 11 June 2026, version 1", "Alder &amp; Wren");
        var how = new HowSigned(Consenting.DOCUMENT, 1, Optional.empty(), evidenceFor(consent.text()));
        assertThat(ConsentPaper.fileName(consent.input(), how)).isEqualTo("consent-2026-06-11-v1.pdf");
        assertThat((outside + ConsentPaper.fileName(consent.input(), how)).toLowerCase(Locale.ROOT))
            .doesNotContain("canary", "colour", "henna", "reaction", "allerg", "brandt", "tattoo", "medicine",
                "198.51.100.7");
    }

    private static byte[] bytes(org.apache.pdfbox.pdmodel.PDDocument document) {
        try {
            return document.getDocumentCatalog().getMetadata().toByteArray();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    @DisplayName("D12: address and device stay in the record and are never printed")
    void theDeviceIsNotPrinted() {
        assertThat(Read.all(aConsent().paper())).doesNotContain("198.51.100.7", "a phone");
    }

    @Test
    @DisplayName("D6: called a simple electronic signature, never more than that")
    void nothingClaimsMoreThanASimpleSignature() {
        assertThat(Read.plain(Read.body(aConsent().paper()))).contains("simpleelectronicsignature");
        for (String language : List.of("en", "es")) {
            assertThat(ConsentWords.in(language).sentences().values())
                .allSatisfy(sentence -> assertThat(sentence.toLowerCase(Locale.ROOT)).doesNotContainPattern(
                    "(advanced|qualified|certified|digital)[\\w\\s]* signature|firma[\\w\\s]* (avanzada|cualificada|certificada|digital)"));
        }
    }

    @Test
    @DisplayName("product: the usual cautions are in every consent and no service is called safe")
    void noServiceIsCalledSafe() {
        assertThat(ConsentWords.in("en").sentences().values())
            .noneMatch(sentence -> sentence.toLowerCase(Locale.ROOT).matches(".*\\bsafe(ly)?\\b.*"));
        assertThat(ConsentWords.in("es").sentences().values()).noneMatch(
            sentence -> sentence.toLowerCase(Locale.ROOT).matches(".*\\b(es|son|totalmente) segur[oa]s?\\b.*"));
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    @DisplayName("A31: the paper has the size the salon prints on, and nothing stands outside its margins")
    void thePaperHasTheSalonsSize(PaperSize size) {
        byte[] pdf = shown("size-" + size, aConsent().paper(aDrawing(), size));
        Read.from(pdf, document -> {
            document.getPages().forEach(page -> {
                assertThat(page.getMediaBox().getWidth()).isCloseTo(size == PaperSize.A4 ? 595.28f : 612, within(0.1f));
                assertThat(page.getMediaBox().getHeight()).isCloseTo(size == PaperSize.A4 ? 841.89f : 792,
                    within(0.1f));
            });
            return null;
        });
        assertThat(Read.outside(pdf, PaperFlow.START_MARGIN - 1, PaperFlow.END_MARGIN - 1)).isEmpty();
    }

    @Test
    @DisplayName("A31: black on white: no colour but grey anywhere")
    void nothingIsColoured() {
        for (int page = 0; page < 2; page++) {
            assertThat(Read.colours(shown("weights", allWeights().paper()), page)).isEmpty();
        }
    }

    private static Consenting allWeights() {
        return aConsent().found(Stream.of(Weight.values()).sorted((a, b) -> b.compareTo(a))
            .map(weight -> new Found(weight, "What " + weight.code() + " looks like on paper.")).toArray(Found[]::new));
    }

    @Test
    @DisplayName("PDF text: a letter no font has is spelled out, never dropped")
    void aLetterWithoutAFontIsSpelledOut() {
        String printed = Read.plain(Read.body(
            shown("no-font", aConsent().by("Ottilie 😀 王").paper(new SignatureMark.Typed("王 😀"), PaperSize.A4))));
        assertThat(printed).contains("Ottilie[U+1F600][U+738B]", "[U+738B][U+1F600]");
    }

    @Test
    @DisplayName("D10: right-to-left names keep their letters and their neighbours' order")
    void rightToLeftNamesStandInLeftToRightLines() {
        byte[] pdf = shown("rtl-names", aConsent().by("ليلى حداد").answered(List.of(
            new Answered("Notes", "Anything else", "شعري مصبوغ منذ عام 2024 (مرتين)"),
            new Answered("Notes", "Anything more", "שיער צבוע")))
            .paper(new SignatureMark.Typed("ليلى حداد"), PaperSize.A4));
        String printed = Read.plain(Read.body(pdf));
        assertThat(printed).contains("ليلى", "حداد", "مصبوغ", "مرتين", "שיער", "צבוע");
    }

    @Test
    @DisplayName("D18: a consent of sixty answers stays under 300 kB")
    void theDocumentIsLight() {
        assertThat(aConsent().answered(answers(60)).paper().length).isLessThan(300_000);
    }

    @Test
    @DisplayName("C7: a later version says what it supersedes")
    void aLaterVersionNamesTheEarlier() {
        Consenting consent = aConsent();
        var how = new HowSigned(Consenting.DOCUMENT, 2, Optional.of(new HowSigned.Superseded(UUID.randomUUID(), 1,
            Consenting.SIGNED.minusSeconds(5 * 86_400))), evidenceFor(consent.text()));
        byte[] pdf =
            shown("version-2",
                ConsentPaper.print(consent.input(), consent.text(), aDrawing(), how, PaperSize.A4, Consenting.VERIFY));
        assertThat(Read.all(pdf)).contains("supersedes version 1 of 2 June 2026", "version 2", "page 1 of");
    }
}
