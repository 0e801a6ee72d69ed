package foretress.consent;

import java.util.Map;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The English words of the strand map, straight from their file. */
final class StrandSentences {
    private final Map<?, ?> texts;

    StrandSentences() {
        Map<?, ?> file = (Map<?, ?>) new Load(LoadSettings.builder().build())
            .loadFromInputStream(StrandSentences.class.getResourceAsStream("/knowledge/words/en/strand.yaml"));
        texts = (Map<?, ?>) file.get("texts");
    }

    String say(String key) {
        return String.valueOf(texts.get(key));
    }
}
