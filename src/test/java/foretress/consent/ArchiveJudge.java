package foretress.consent;

import java.util.List;

/** The independent judge of PDF/A-2b, for papers made outside this room. */
public final class ArchiveJudge {
    private ArchiveJudge() {}

    /** Empty when the document is PDF/A-2b. */
    public static List<String> brokenRules(byte[] pdf) {
        return VeraPdf.brokenRules(pdf);
    }
}
