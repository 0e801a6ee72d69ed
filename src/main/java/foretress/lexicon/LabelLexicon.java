package foretress.lexicon;

import java.util.List;

/**
 * Reads pasted ingredient lists: INCI names and synonyms in whatever spelling, CAS and CI numbers, spelling slips. The longest
 * names that fit win; what is left is looked at for slips and else kept as unknown. Time grows with the length of the text.
 */
public final class LabelLexicon {
    private final LabelIndex index;

    public LabelLexicon(List<Substance> substances) {
        this(substances, () -> {});
    }

    /** @param compared run at each comparison of two spellings, for counting the work */
    LabelLexicon(List<Substance> substances, Runnable compared) {
        this.index = new LabelIndex(substances, compared);
    }

    public LabelReading read(String pasted) {
        return new LabelReader(pasted, index).read();
    }
}
