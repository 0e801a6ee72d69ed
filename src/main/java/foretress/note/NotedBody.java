package foretress.note;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/** What is sealed of a note, by its kind. */
public final class NotedBody {
    private NotedBody() {}

    /**
     * @param outcome of {@code dermatologist-letter}
     * @param lineVersion the product line as its leaflet had it when the letter was written down; empty where the letter speaks
     *     against any such product
     * @param product as it was called then
     * @param shade the only shade the letter names; blank for the whole line
     * @param by who wrote it, in staff's words
     */
    public record Letter(String outcome, Optional<UUID> lineVersion, String product, String shade, LocalDate written,
        String by) {}

    /**
     * @param about the fact the word is about
     * @param outcome of {@code medical-advice}
     * @param doctor a doctor or clinic said it, no pharmacist
     * @param by who said it, in staff's words
     */
    public record Word(String about, String outcome, boolean doctor, String by, LocalDate said) {}

    /** @param leftCm what was left, the longest hair drawn straight, in cm */
    public record Cut(LocalDate day, double leftCm) {}

    /** @param cm the band between scalp and colour, in cm */
    public record Growth(LocalDate coloured, LocalDate measured, double cm) {}
}
