package foretress.lexicon;

import java.util.List;

/**
 * One medicine in one class; a name in several classes has several rows.
 *
 * @param name international non-proprietary name
 * @param kind its class, for example {@code systemic-corticosteroid}
 * @param why what it means at the chair, in a sentence
 * @param effect code, for example {@code masks-skin-test}
 */
public record MedicineRow(String name, String kind, String why, String effect, String source, String confidence,
    List<String> otherNames) {
    public MedicineRow {
        otherNames = List.copyOf(otherNames);
        if (name.isBlank() || kind.isBlank() || effect.isBlank()) {
            throw new IllegalArgumentException(
                "a medicine has a name, a class and an effect: '%s', '%s', '%s'".formatted(name, kind, effect));
        }
    }
}
