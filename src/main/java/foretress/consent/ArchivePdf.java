package foretress.consent;

import com.lowagie.text.Document;
import com.lowagie.text.DocumentException;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import foretress.knowledge.Sha256;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.GregorianCalendar;
import java.util.HashMap;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makes PDF/A-2b (ISO 19005-2, conformance level B) whose bytes depend on nothing but what it is told: no clock, no
 * random names.
 *
 * @param title what a reader's window shows; it may hold no word about health
 */
record ArchivePdf(String title, String author, String language, Instant made) {
    private static final String PRODUCER = "Foretress";
    private static final Pattern RANDOM_SUBSET_NAME = Pattern.compile("(/(?:BaseFont|FontName) ?/)([A-Z]{6})\\+");
    private static final Pattern RANDOM_ID = Pattern.compile("/ID ?\\[<([0-9a-fA-F]{32})><([0-9a-fA-F]{32})>]");

    byte[] make(PaperSize size, BiConsumer<Document, PdfWriter> content) {
        var bytes = new ByteArrayOutputStream();
        var document = new Document(new Rectangle(size.width, size.height));
        try {
            PdfWriter writer = PdfWriter.getInstance(document, bytes);
            writer.setPdfVersion(PdfWriter.VERSION_1_7);
            writer.setXmpMetadata(xmp().getBytes(StandardCharsets.UTF_8));
            document.open();
            describe(writer);
            content.accept(document, writer);
            document.close();
        } catch (DocumentException e) {
            throw new IllegalStateException("the paper cannot be made", e);
        }
        return settled(bytes.toByteArray());
    }

    /** Sets the content as {@link #make} would, for counting its pages, and makes no document of it. */
    static void rehearse(PaperSize size, BiConsumer<Document, PdfWriter> content) {
        var document = new Document(new Rectangle(size.width, size.height));
        try {
            PdfWriter writer = PdfWriter.getInstance(document, OutputStream.nullOutputStream());
            document.open();
            content.accept(document, writer);
        } catch (DocumentException e) {
            throw new IllegalStateException("the paper cannot be set", e);
        }
    }

    private void describe(PdfWriter writer) {
        PdfDictionary info = writer.getInfo();
        info.put(PdfName.TITLE, text(title));
        info.put(PdfName.AUTHOR, text(author));
        info.put(PdfName.CREATOR, text(PRODUCER));
        info.put(PdfName.PRODUCER, text(PRODUCER));
        var date = new PdfDate(GregorianCalendar.from(made.truncatedTo(ChronoUnit.SECONDS).atZone(ZoneOffset.UTC)));
        info.put(PdfName.CREATIONDATE, date);
        info.put(PdfName.MODDATE, date);
        PdfDictionary catalog = writer.getExtraCatalog();
        catalog.put(PdfName.LANG, text(language));
        var preferences = new PdfDictionary();
        preferences.put(PdfName.DISPLAYDOCTITLE, PdfBoolean.PDFTRUE);
        catalog.put(PdfName.VIEWERPREFERENCES, preferences);
        outputIntent(writer);
    }

    /** OpenPDF names the intent of another standard; PDF/A wants its own name on it. */
    private static void outputIntent(PdfWriter writer) {
        try {
            String srgb = "sRGB IEC61966-2.1";
            writer.setOutputIntents(srgb, "", "http://www.color.org", srgb,
                ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
            PdfArray intents = (PdfArray) writer.getExtraCatalog().get(PdfName.OUTPUTINTENTS);
            ((PdfDictionary) intents.getPdfObject(0)).put(PdfName.S, new PdfName("GTS_PDFA1"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String xmp() {
        String at = DateTimeFormatter.ISO_INSTANT.format(made.truncatedTo(ChronoUnit.SECONDS));
        return """
            <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
            <pdfaid:part>2</pdfaid:part><pdfaid:conformance>B</pdfaid:conformance>
            <dc:format>application/pdf</dc:format>
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
            <dc:creator><rdf:Seq><rdf:li>%s</rdf:li></rdf:Seq></dc:creator>
            <dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>
            <xmp:CreateDate>%s</xmp:CreateDate><xmp:ModifyDate>%s</xmp:ModifyDate><xmp:CreatorTool>%s</xmp:CreatorTool>
            <pdf:Producer>%s</pdf:Producer>
            </rdf:Description></rdf:RDF></x:xmpmeta>
            <?xpacket end="r"?>""".formatted(xml(title), xml(author), xml(language), at, at, PRODUCER, PRODUCER);
    }

    /** Random names of font subsets and the random file id give way to ones made from the content, of the same length. */
    private static byte[] settled(byte[] made) {
        var text = new String(made, StandardCharsets.ISO_8859_1);
        var names = new HashMap<String, String>();
        String named = RANDOM_SUBSET_NAME.matcher(text).replaceAll(
            match -> match.group(1) + names.computeIfAbsent(match.group(2), name -> subsetName(names.size())) + "+");
        String blank = RANDOM_ID.matcher(named).replaceAll("");
        String id = Sha256.of(blank.getBytes(StandardCharsets.ISO_8859_1)).substring(0, 32);
        return RANDOM_ID.matcher(named).replaceAll(
            match -> Matcher.quoteReplacement(match.group().replace(match.group(1), id).replace(match.group(2), id)))
            .getBytes(StandardCharsets.ISO_8859_1);
    }

    private static String subsetName(int number) {
        return "AAAAA" + (char) ('A' + number);
    }

    private static PdfString text(String text) {
        return new PdfString(text, PdfObject.TEXT_UNICODE);
    }

    private static String xml(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
            .replaceAll("[\\p{Cntrl}\\uFFFE\\uFFFF\\ud800-\\udfff]", "?");
    }
}
