package foretress.consent;

import foretress.knowledge.Counted;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * The wording of notice and consent, read from {@code knowledge/words/<language>/consent.yaml}; English where a language
 * has none.
 */
public final class ConsentWords implements ConsentSentences {
    private static final String FALLBACK = "en";
    private static final Pattern PLACE = Pattern.compile("\\{([A-Za-z]+)}");
    private static final Map<String, ConsentWords> READ = new ConcurrentHashMap<>();

    private final String language;
    private final Map<String, String> sentences;

    private ConsentWords(String language, Map<String, String> sentences) {
        this.language = language;
        this.sentences = sentences;
    }

    /** The wording for a BCP 47 tag; its region does not matter. */
    public static ConsentWords in(String tag) {
        String language = Locale.forLanguageTag(tag).getLanguage();
        ConsentWords known = READ.get(language);
        if (known == null) {
            known = read(language);
            READ.put(language, known);
        }
        return known;
    }

    @Override
    public String language() {
        return language;
    }

    @Override
    public boolean has(String key) {
        return sentences.containsKey(key);
    }

    @Override
    public String say(String key, Map<String, String> places) {
        String sentence = sentences.get(key);
        if (sentence == null) {
            throw new IllegalArgumentException(
                "no sentence '%s' in the %s words of the consent".formatted(key, language));
        }
        return PLACE.matcher(Counted.forms(sentence, language, places::get)).replaceAll(match -> {
            String value = places.get(match.group(1));
            if (value == null) {
                throw new IllegalArgumentException(
                    "the sentence '%s' has nothing for {%s}".formatted(key, match.group(1)));
            }
            return Matcher.quoteReplacement(value);
        });
    }

    Map<String, String> sentences() {
        return sentences;
    }

    private static ConsentWords read(String language) {
        try (InputStream in = open(language)) {
            if (in == null) {
                return in(FALLBACK);
            }
            var flat = new TreeMap<String, String>();
            flatten("", (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromInputStream(in), flat);
            return new ConsentWords(language, flat);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream open(String language) {
        return ConsentWords.class.getResourceAsStream("/knowledge/words/" + language + "/consent.yaml");
    }

    private static void flatten(String before, Map<?, ?> node, Map<String, String> flat) {
        node.forEach((key, value) -> {
            if (value instanceof Map<?, ?> inner) {
                flatten(before + key + '.', inner, flat);
            } else {
                flat.put(before + key, String.valueOf(value));
            }
        });
    }
}
