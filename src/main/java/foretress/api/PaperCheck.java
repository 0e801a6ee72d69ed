package foretress.api;

import foretress.seal.SealCheck;
import foretress.seal.SealCheck.Verdict;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.cert.CertificateException;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.util.List;

/** Says of papers, from the files and the salon's certificates alone, what became of them. */
final class PaperCheck {
    private final List<X509Certificate> salon;
    private final PrintStream out;
    private final PrintStream err;

    /** @throws CertificateException when there is none in it */
    PaperCheck(InputStream certificates, PrintStream out, PrintStream err) throws CertificateException {
        this.salon = CertificateFactory.getInstance("X.509").generateCertificates(certificates).stream()
            .map(X509Certificate.class::cast).toList();
        if (salon.isEmpty()) {
            throw new CertificateException("it is empty");
        }
        this.out = out;
        this.err = err;
    }

    int of(List<Path> papers) {
        return papers.stream().mapToInt(this::of).max().orElse(Command.BAD_INPUT);
    }

    private int of(Path paper) {
        try {
            Verdict verdict = SealCheck.of(Files.readAllBytes(paper), salon);
            out.println("%s: %s".formatted(paper, said(verdict)));
            return verdict == Verdict.UNCHANGED ? Command.FINE : Command.FAILED;
        } catch (IOException e) {
            err.println("%s cannot be read: %s".formatted(paper, e.getMessage()));
            return Command.BAD_INPUT;
        }
    }

    private static String said(Verdict verdict) {
        return switch (verdict) {
            case UNCHANGED ->
                "sealed by this salon, and not a byte changed since. The seal says nothing of whether a newer "
                    + "paper took its place or the consent was taken back.";
            case ADDED_TO ->
                "ADDED TO: sealed by this salon, but something was written behind the seal, and may show first.";
            case CHANGED -> "CHANGED: it carries a seal, and is not as it was sealed.";
            case OTHER_SEAL -> "NOT THIS SALON'S: the seal is whole, and by a key that is not in the certificates.";
            case NOT_SEALED -> "NOT SEALED: nothing shows where it comes from.";
            case UNREADABLE -> "NOT A PAPER: no PDF file that can be read.";
        };
    }
}
