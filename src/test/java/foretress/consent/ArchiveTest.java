package foretress.consent;

import static foretress.consent.Consenting.aConsent;
import static foretress.consent.Consenting.aDrawing;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Weight;
import foretress.consent.ConsentInput.Answered;
import foretress.consent.ConsentInput.Found;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** PDF/A-2b as veraPDF reads ISO 19005-2; the documents differ in all that a client or salon can put into them. */
@Execution(ExecutionMode.CONCURRENT)
class ArchiveTest {
    /** As many documents as standards for the signed page ask for; fewer with -Dpapers=50 while working on it. */
    private static final int PAPERS = Integer.getInteger("papers", 500);
    private static final List<String> LANGUAGES = List.of("en", "es", "pl", "vi", "ar", "he", "en-US");
    private static final List<String> WORDS =
        List.of("henna", "Żółć", "Łódź", "Nguyễn Thị Hạnh", "ñandú", "¿cuándo?", "ليلى حداد",
            "(مرتين) 2024", "שרה כהן", "Ελένη", "Ольга", "Հայկ", "ნინო", "😀", "👩🏽‍🦰", "王小明", "ก้อง", "½ €₺ №",
            "a\tb", "line\nbreak",
            "zero\u200Bwidth", "e\u0301a\u0308", "\u202Eturned\u202C", "\u0000nul", "<b>&amp;", "“quoted”",
            "W".repeat(70), "\uD800");
    private static final Random RANDOM = new Random(20261124);

    private static String phrase(int words) {
        return IntStream.range(0, words).mapToObj(i -> WORDS.get(RANDOM.nextInt(WORDS.size())))
            .reduce((a, b) -> a + " " + b).orElse("x");
    }

    private static String name() {
        String name = RANDOM.nextInt(10) == 0 ? phrase(60) : "Żaneta " + phrase(2);
        return name.substring(0, Math.min(300, name.length()));
    }

    private static Consenting anyConsent(int number) {
        Weight[] weights = Weight.values();
        return aConsent().in(LANGUAGES.get(number % LANGUAGES.size())).by(name())
            .found(IntStream.range(0, RANDOM.nextInt(9))
                .mapToObj(i -> new Found(weights[RANDOM.nextInt(weights.length)], phrase(6))).toArray(Found[]::new))
            .answered(IntStream.range(0, number % 25 == 0 ? RANDOM.nextInt(201) : RANDOM.nextInt(12))
                .mapToObj(i -> new Answered(phrase(2), phrase(4), phrase(3))).toList());
    }

    private static SignatureMark anyMark(int number) {
        return number % 2 == 0 ? aDrawing() : new SignatureMark.Typed(name());
    }

    @Test
    @DisplayName("D1: documents of every language, script, length and mark are PDF/A-2b, as veraPDF judges")
    void everyConsentIsArchivable() {
        for (int number = 0; number < PAPERS; number++) {
            Consenting consent = anyConsent(number);
            if (number % 3 == 0) {
                consent.withStrand();
            }
            byte[] pdf = consent.paper(anyMark(number), PaperSize.values()[number % 2]);
            if (number < 14) {
                ConsentPaperTest.shown("any-" + number, pdf);
            }
            assertThat(VeraPdf.brokenRules(pdf)).as("document %d", number).isEmpty();
        }
    }

    @Test
    @DisplayName("D1: the judge is awake: a document with its output intent broken fails")
    void aBrokenDocumentFails() {
        var pdf = new String(aConsent().paper(), StandardCharsets.ISO_8859_1);
        assertThat(pdf).contains("GTS_PDFA1");
        assertThat(broken(pdf.replace("GTS_PDFA1", "GTS_PDFX1"))).isNotEmpty();
        assertThat(broken(pdf.replace("<pdfaid:part>2", "<pdfaid:part>3"))).isNotEmpty();
    }

    private static List<String> broken(String pdf) {
        return VeraPdf.brokenRules(pdf.getBytes(StandardCharsets.ISO_8859_1));
    }
}
