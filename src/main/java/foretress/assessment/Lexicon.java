package foretress.assessment;

import java.util.List;
import java.util.Set;

/** What words that people type or copy mean; whoever assembles the knowledge hands it in. */
public interface Lexicon {
    /** The single names in what was typed, for several may stand on one line; each is then asked for on its own. */
    default List<String> names(String typed) {
        return List.of(typed);
    }

    /** Whether every name in it is recognised beyond doubt; a likely slip of the pen is recognised, but not beyond doubt. */
    default boolean isSure(String typed) {
        return !medicine(typed).isEmpty();
    }

    /** One line as typed, with all that is asked of it. */
    default Line line(String typed) {
        return new Line(names(typed).stream().map(name -> Named.of(name, medicine(name))).toList(), isSure(typed));
    }

    /** @param sure every name in it is recognised beyond doubt */
    record Line(List<Named> names, boolean sure) {
        public Line {
            names = List.copyOf(names);
        }
    }

    /**
     * One name of a line.
     *
     * @param classes it stands in: none when it is not recognised
     */
    record Named(ReadAs read, Set<String> classes) {
        /** Of a lexicon that tells classes and no names: what it recognises it reads as what was typed. */
        static Named of(String typed, Set<String> classes) {
            return new Named(new ReadAs(typed, classes.isEmpty() ? List.of() : List.of(typed), !classes.isEmpty()),
                classes);
        }
    }

    /** The same lexicon with names that staff have looked up; they are read where it knows nothing itself. */
    default Lexicon with(List<LookedUp> lookedUp) {
        return this;
    }

    /** Classes a typed medicine belongs to, for example {@code systemic-corticosteroid}; empty when the name is not recognised. */
    Set<String> medicine(String typed);

    Label label(String text);

    /**
     * What a list of ingredients holds.
     *
     * @param risks for example {@code metal-residue}, {@code ppd-group-allergen}
     * @param classes for example {@code oxidative-dye-primary}, {@code direct-dye}
     * @param unknownWords it holds words that are not recognised
     * @param words what was read, word by word, the unknown ones too
     */
    record Label(Set<String> risks, Set<String> classes, boolean unknownWords, List<Word> words) {
        public Label {
            words = List.copyOf(words);
        }
    }

    /** A name on a label, with what it may do and the classes it stands in. */
    record Word(ReadAs read, Set<String> risks, Set<String> classes) {}

    /** Recognises nothing, so that everything typed is put before the stylist as not recognised. */
    Lexicon KNOWS_NOTHING = new Lexicon() {
        @Override
        public Set<String> medicine(String typed) {
            return Set.of();
        }

        @Override
        public Label label(String text) {
            return new Label(Set.of(), Set.of(), true,
                List.of(new Word(new ReadAs(text, List.of(), false), Set.of(), Set.of())));
        }
    };
}
