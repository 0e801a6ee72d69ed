package foretress.consultation;

import java.util.Optional;

/** A letter as a photo or as a PDF, told by its first bytes and not by what it is called. */
final class NotedLetterFile {
    private NotedLetterFile() {}

    /** A photo as the bench takes it, or PDF (ISO 32000-1, 7.5.2: the header {@code %PDF-}). */
    static Optional<String> type(byte[] bytes) {
        boolean pdf = bytes.length > 5 && bytes[0] == '%' && bytes[1] == 'P' && bytes[2] == 'D' && bytes[3] == 'F' && bytes[4] == '-';
        return pdf ? Optional.of("application/pdf") : BenchPicture.type(bytes);
    }
}
