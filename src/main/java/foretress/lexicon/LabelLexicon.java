package foretress.lexicon;

import java.util.List;
import java.util.function.Supplier;

/**
 * Reads pasted ingredient lists: INCI names and synonyms in whatever spelling, CAS and CI numbers, spelling slips. The longest
 * names that fit win; what is left is looked at for slips and else kept as unknown. Time grows with the length of the text.
 * The first reading builds the index, which takes longer than all else that a start does with the lists.
 */
public final class LabelLexicon {
    private final Supplier<LabelIndex> index;

    public LabelLexicon(List<Substance> substances) {
        this(substances, () -> {});
    }

    /** @param compared run at each comparison of two spellings, for counting the work */
    LabelLexicon(List<Substance> substances, Runnable compared) {
        List<Substance> known = List.copyOf(substances);
        this.index = new Lazily<>(() -> new LabelIndex(known, compared));
    }

    public LabelReading read(String pasted) {
        return new LabelReader(pasted, index.get()).read();
    }
}
