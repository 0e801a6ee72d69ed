package foretress.knowledge;

import foretress.assessment.Lexicon;
import foretress.assessment.LookedUp;
import foretress.assessment.ReadAs;
import foretress.lexicon.MedicineLexicon;
import foretress.lexicon.MedicineReading;
import foretress.lexicon.MedicineReading.Sureness;
import foretress.lexicon.MedicineRow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The lexicon with names that staff have looked up. What it knows itself it reads as before; only a name that it does not know is looked
 * for among theirs, in the same way: by sound, in any case, a slip of the pen forgiven but never beyond doubt.
 */
final class LookedUpWords implements Lexicon {
    private final KnownWords known;
    private final MedicineLexicon theirs;
    private final Map<String, LookedUp> byName = new LinkedHashMap<>();

    LookedUpWords(KnownWords known, List<LookedUp> lookedUp) {
        this.known = known;
        lookedUp.forEach(one -> byName.put(one.name(), one));
        this.theirs = new MedicineLexicon(byName.keySet().stream().map(LookedUpWords::row).toList(), List.of());
    }

    private static MedicineRow row(String name) {
        return new MedicineRow(name, name, "", "looked-up", "", "", List.of());
    }

    @Override
    public Line line(String typed) {
        List<Named> names = new ArrayList<>();
        boolean sure = true;
        for (MedicineReading.Name name : known.medicines().read(typed).names()) {
            List<Named> read = name.sureness() == Sureness.NOT_RECOGNISED ? theirs(name) : List.of(known.named(name));
            names.addAll(read);
            sure &= name.said() == MedicineReading.Said.TAKEN && read.stream().allMatch(one -> one.read().sure());
        }
        return new Line(names, sure);
    }

    private List<Named> theirs(MedicineReading.Name name) {
        return theirs.read(name.typed()).names().stream().map(this::named).toList();
    }

    private Named named(MedicineReading.Name name) {
        List<LookedUp> found = name.rows().stream().map(MedicineRow::name).distinct().map(byName::get).toList();
        Set<String> classes = new TreeSet<>();
        found.forEach(one -> classes.addAll(one.classes()));
        boolean sure = name.sureness() == Sureness.NAME;
        Optional<LookedUp> by = sure ? found.stream().findFirst() : Optional.empty();
        List<String> as = sure ? List.of() : found.stream().map(LookedUp::name).toList();
        return new Named(new ReadAs(name.typed(), as, sure, by), classes);
    }

    @Override
    public List<String> names(String typed) {
        return line(typed).names().stream().map(one -> one.read().typed()).toList();
    }

    @Override
    public boolean isSure(String typed) {
        return line(typed).sure();
    }

    @Override
    public Set<String> medicine(String typed) {
        Set<String> classes = new TreeSet<>();
        Stream.of(line(typed)).flatMap(line -> line.names().stream()).forEach(one -> classes.addAll(one.classes()));
        return classes;
    }

    @Override
    public Label label(String text) {
        return known.label(text);
    }
}
