package foretress.web;

import foretress.knowledge.PluralForm;
import io.quarkus.qute.TemplateExtension;

/** In a bundle of a language: {@code {#when days.plural('pl')}{#is ONE}…{#is FEW}…{#else}…{/when}}. */
@TemplateExtension
final class CountWords {
    private CountWords() {}

    static PluralForm plural(int count, String language) {
        return PluralForm.of(language, count);
    }

    /** A number as languages with a decimal comma write it: {@code {cm.comma}}. */
    static String comma(String number) {
        return number.replace('.', ',');
    }
}
