package foretress.owner;

import foretress.web.StaffLanguage;
import foretress.web.Supported;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Collectors;

/** The acts of the audit trail in the reader's words: the chain keeps them in English for good; messages/acts_es.properties. */
@Singleton
class LedgerActs {
    private final Map<String, Properties> said = new HashMap<>();
    private final StaffLanguage language;

    LedgerActs(StaffLanguage language) {
        this.language = language;
        StaffLanguage.TAGS.stream().filter(tag -> !tag.equals(Supported.ORIGINAL))
            .forEach(tag -> said.put(tag, read(tag)));
    }

    private static Properties read(String tag) {
        var words = new Properties();
        try (var in =
            new InputStreamReader(LedgerActs.class.getResourceAsStream("/messages/acts_" + tag + ".properties"),
                StandardCharsets.UTF_8)) {
            words.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return words;
    }

    /** The act itself where the language has no words for it, as for one of an older version. */
    String said(String act) {
        return here().getProperty(key(act), act);
    }

    /** Those of the acts in which the words stand, as the reader sees them. */
    Set<String> meant(String typed, Set<String> acts) {
        String folded = typed.toLowerCase(Locale.ROOT);
        return acts.stream().filter(act -> said(act).toLowerCase(Locale.ROOT).contains(folded))
            .collect(Collectors.toSet());
    }

    private Properties here() {
        return said.getOrDefault(language.tag(), new Properties());
    }

    static String key(String act) {
        return act.replaceAll("[^a-z]+", "_");
    }
}
