package foretress.skintest;

import foretress.knowledge.Knowledge;
import jakarta.inject.Singleton;
import java.util.List;

/** The names of facts that may hide a reaction, for staff. */
@Singleton
class MaskingWords {
    private final Knowledge knowledge;

    MaskingWords(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    List<String> of(List<String> facts) {
        return facts.stream().map(fact -> knowledge.words("en").fact(fact)).toList();
    }
}
