package foretress.consent;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The independent judge of PDF/A: which of its rules a document breaks. */
final class VeraPdf {
    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private VeraPdf() {}

    /** Empty when the document is PDF/A-2b. */
    static List<String> brokenRules(byte[] pdf) {
        try (
            PDFAParser parser =
                Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFA_2_B);
            PDFAValidator validator =
                Foundries.defaultInstance().createValidator(PDFAFlavour.PDFA_2_B, 50, false, false, false)) {
            return validator.validate(parser).getTestAssertions().stream()
                .map(assertion -> assertion.getRuleId().getClause() + ": " + assertion.getMessage()).distinct()
                .toList();
        } catch (Exception e) {
            throw new IllegalStateException("the judge could not read the document", e);
        }
    }
}
