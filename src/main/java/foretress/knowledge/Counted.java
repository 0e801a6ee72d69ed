package foretress.knowledge;

import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sentences with a number and words that go by it, as ICU writes them: {@code {years, plural, one {# rok} few {# lata} other {# lat}}}.
 * The number stands for #.
 */
public final class Counted {
    private static final Pattern PLURAL = Pattern.compile("\\{(\\w+), plural,((?: \\w+ \\{[^{}]*})+)}");

    private Counted() {}

    /** The sentence with these numbers in it; other places stay open. */
    public static String say(String sentence, String language, Map<String, Integer> counts) {
        String said = forms(sentence, language, name -> counts.get(name) + "");
        for (Map.Entry<String, Integer> count : counts.entrySet()) {
            said = said.replace("{" + count.getKey() + "}", count.getValue() + "");
        }
        return said;
    }

    /** The sentence with each plural settled; a place without one stays open. */
    public static String forms(String sentence, String language, UnaryOperator<String> count) {
        return PLURAL.matcher(sentence).replaceAll(plural -> {
            String number = count.apply(plural.group(1));
            String form = PluralForm.of(language, Integer.parseInt(number)).word();
            return Matcher.quoteReplacement(of(plural.group(2), form).replace("#", number));
        });
    }

    private static String of(String forms, String form) {
        Matcher said = Pattern.compile(" " + form + " \\{([^{}]*)}").matcher(forms);
        return said.find() ? said.group(1) : of(forms, PluralForm.OTHER.word());
    }
}
