package foretress.lexicon;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a typed line of medicines holds, name by name, in its order.
 *
 * @param beside all words that name nothing: doses, forms, small words; every word of the line stands here or in a name
 */
public record MedicineReading(List<Name> names, List<String> beside) {

    /** What the words around a name say of it. A medicine stopped or denied is kept and counts: when it was last taken is asked. */
    public enum Said {
        TAKEN, STOPPED, DENIED
    }

    /** How a name was recognised; a slip wants a second look, because another medicine may be meant. */
    public enum Sureness {
        NAME, SPELLING_SLIP, NOT_RECOGNISED
    }

    /**
     * @param typed the words as typed
     * @param rows every class the name stands in; empty when not recognised
     */
    public record Name(String typed, Sureness sureness, List<MedicineRow> rows, Said said) {
        public Name {
            rows = List.copyOf(rows);
        }

        public Set<String> kinds() {
            Set<String> kinds = new TreeSet<>();
            rows.forEach(row -> kinds.add(row.kind()));
            return kinds;
        }

        public Set<String> effects() {
            Set<String> effects = new TreeSet<>();
            rows.forEach(row -> effects.add(row.effect()));
            return effects;
        }
    }

    public MedicineReading {
        names = List.copyOf(names);
        beside = List.copyOf(beside);
    }

    /** Whether nothing is left to ask about the names: each recognised beyond doubt, and none said to be stopped or not taken. */
    public boolean allSure() {
        return names.stream().allMatch(name -> name.sureness() == Sureness.NAME && name.said() == Said.TAKEN);
    }
}
