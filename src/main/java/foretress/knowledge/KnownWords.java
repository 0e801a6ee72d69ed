package foretress.knowledge;

import foretress.assessment.Lexicon;
import foretress.lexicon.LabelLexicon;
import foretress.lexicon.LabelReading;
import foretress.lexicon.MedicineLexicon;
import foretress.lexicon.MedicineReading;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The two lexicons behind the questions the assessment asks of them. */
final class KnownWords implements Lexicon {
    private final LabelLexicon labels;
    private final MedicineLexicon medicines;

    KnownWords(LabelLexicon labels, MedicineLexicon medicines) {
        this.labels = labels;
        this.medicines = medicines;
    }

    LabelLexicon labels() {
        return labels;
    }

    MedicineLexicon medicines() {
        return medicines;
    }

    @Override
    public List<String> names(String typed) {
        return medicines.read(typed).names().stream().map(MedicineReading.Name::typed).toList();
    }

    @Override
    public Line line(String typed) {
        MedicineReading reading = medicines.read(typed);
        return new Line(reading.names().stream().map(name -> new Named(name.typed(), kinds(name))).toList(), reading.allSure());
    }

    /** Part of a word with a hyphen may belong to the next word ("x-steroid cream"), or not: it counts as what it is alone too. */
    private Set<String> kinds(MedicineReading.Name name) {
        Set<String> kinds = new TreeSet<>(name.kinds());
        if (name.typed().indexOf('-') >= 0) {
            kinds.addAll(medicine(name.typed()));
        }
        return kinds;
    }

    @Override
    public Set<String> medicine(String typed) {
        Set<String> kinds = new TreeSet<>();
        medicines.read(typed).names().forEach(name -> kinds.addAll(name.kinds()));
        return kinds;
    }

    /** A slip of the pen keeps its reading, but another medicine may be meant: it is put before the stylist too, as is one said to be stopped. */
    @Override
    public boolean isSure(String typed) {
        return medicines.read(typed).allSure();
    }

    @Override
    public Label label(String text) {
        LabelReading reading = labels.read(text);
        Set<String> risks = new TreeSet<>();
        Set<String> classes = new TreeSet<>();
        reading.found().forEach(found -> {
            risks.add(found.substance().risk().code());
            classes.add(found.substance().kind());
        });
        // A damaged word that could be one of several counts as each of them.
        reading.unknown().forEach(unknown -> unknown.near().forEach(substance -> {
            risks.add(substance.risk().code());
            classes.add(substance.kind());
        }));
        return new Label(risks, classes, !reading.allSure());
    }
}
