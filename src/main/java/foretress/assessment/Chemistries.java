package foretress.assessment;

import foretress.assessment.Chemistry.SkinTest;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The chemistries there are, in the order of screens, and what is asked of several at once. One nobody knows is never dry. */
public record Chemistries(List<Chemistry> all) {
    public Chemistries {
        all = List.copyOf(all);
    }

    /** Nothing is put on the hair by any of these. */
    public boolean dry(Collection<String> used) {
        return ids(Chemistry::dry).containsAll(used);
    }

    /** One of these wants a skin test first, or a letter in its place. */
    public boolean needSkinTest(Collection<String> used) {
        return ids(chemistry -> chemistry.skinTest() != SkinTest.NO).stream().anyMatch(used::contains);
    }

    /** Those that nothing opens but the test itself. */
    public List<String> needingSkinTest() {
        return ids(chemistry -> chemistry.skinTest() == SkinTest.YES);
    }

    /** What a skin test is made for where these are used: those with a test of their own when nothing else here needs one. */
    public List<String> testedAmong(Collection<String> used) {
        List<String> own = ids(chemistry -> chemistry.skinTest() == SkinTest.OF_ITS_OWN);
        List<String> needing =
            ids(chemistry -> chemistry.skinTest() != SkinTest.NO).stream().filter(used::contains).toList();
        return !needing.isEmpty() && own.containsAll(needing) ? needing : needingSkinTest();
    }

    /** A dermatologist's letter that names the product can stand for the test. */
    public boolean openedByLetter(String id) {
        return ids(chemistry -> chemistry.skinTest() == SkinTest.OR_LETTER).contains(id);
    }

    /** Those a salon may have product lines of. */
    public List<String> ofProductLines() {
        return ids(Chemistry::productLine);
    }

    /** Some step of it uses a chemistry whose kind a product tells. */
    public boolean leavesAKindOpen(Service service) {
        return all.stream().flatMap(chemistry -> chemistry.kindOf().stream()).anyMatch(service.chemistries()::contains);
    }

    /** The service made with a product of this chemistry: in every step it takes the place of what it is a kind of. */
    public Service madeWith(Service service, String product) {
        Optional<String> open =
            all.stream().filter(chemistry -> chemistry.id().equals(product)).findFirst().flatMap(Chemistry::kindOf);
        return open.map(general -> service.using(general, product)).orElse(service);
    }

    private List<String> ids(Predicate<Chemistry> which) {
        return all.stream().filter(which).map(Chemistry::id).toList();
    }
}
