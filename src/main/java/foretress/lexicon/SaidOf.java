package foretress.lexicon;

import foretress.lexicon.MedicineReading.Said;
import java.util.List;

/** What is said of each word of a phrase: over, not taken, or taken; "but", "except" and their like turn it. */
final class SaidOf {
    private final List<TypedWord> words;

    private SaidOf(List<TypedWord> words) {
        this.words = words;
    }

    static SaidOf words(List<TypedWord> words) {
        return new SaidOf(words);
    }

    Said of(int at) {
        int from = at;
        while (from > 0 && !turns(from)) {
            from--;
        }
        int to = at + 1;
        while (to < words.size() && !turns(to)) {
            to++;
        }
        List<TypedWord> clause = words.subList(Math.min(from, words.size()), Math.min(to, words.size()));
        if (clause.stream().anyMatch(word -> MedicineWords.stopped(word.folded()))) {
            return Said.STOPPED;
        }
        return clause.stream().anyMatch(word -> MedicineWords.denied(word.folded())) ? Said.DENIED : Said.TAKEN;
    }

    private boolean turns(int at) {
        return MedicineWords.turns(words.get(at).folded());
    }
}
