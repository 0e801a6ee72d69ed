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
     * @param way {@code letter}, {@code phone} or {@code client}; blank in a word kept before it was asked
     * @param says what may or may not be done, in staff's words; blank likewise
     * @param until the last day of service for which a yes was given; empty where none was named
     */
    public record Word(String about, String outcome, boolean doctor, String by, LocalDate said, String way,
        String says, Optional<LocalDate> until) {
        public Word {
            way = way == null ? "" : way;
            says = says == null ? "" : says;
            until = until == null ? Optional.empty() : until;
        }

        boolean over(LocalDate serviceDay) {
            return until.filter(serviceDay::isAfter).isPresent();
        }
    }

    /** @param leftCm what was left, the longest hair drawn straight, in cm */
    public record Cut(LocalDate day, double leftCm) {}

    /** @param cm the band between scalp and colour, in cm */
    public record Growth(LocalDate coloured, LocalDate measured, double cm) {}
}
