package foretress.knowledge;

import foretress.assessment.Lexicon;
import foretress.assessment.LookedUp;
import foretress.assessment.ReadAs;
import foretress.lexicon.LabelLexicon;
import foretress.lexicon.LabelReading;
import foretress.lexicon.MedicineLexicon;
import foretress.lexicon.MedicineReading;
import foretress.lexicon.MedicineRow;
import foretress.lexicon.Substance;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
        return new Line(reading.names().stream().map(this::named).toList(), reading.allSure());
    }

    @Override
    public Lexicon with(List<LookedUp> lookedUp) {
        return lookedUp.isEmpty() ? this : new LookedUpWords(this, lookedUp);
    }

    Named named(MedicineReading.Name name) {
        List<MedicineRow> rows = rows(name);
        return new Named(
            new ReadAs(name.typed(), rows.stream().map(MedicineRow::name).distinct().toList(),
                name.sureness() == MedicineReading.Sureness.NAME),
            rows.stream().map(MedicineRow::kind).collect(Collectors.toCollection(TreeSet::new)));
    }

    /** Part of a word with a hyphen may belong to the next word ("x-steroid cream"), or not: it counts as what it is alone too. */
    private List<MedicineRow> rows(MedicineReading.Name name) {
        Stream<MedicineReading.Name> alone =
            name.typed().indexOf('-') >= 0 ? medicines.read(name.typed()).names().stream() : Stream.empty();
        return Stream.concat(Stream.of(name), alone).flatMap(one -> one.rows().stream()).toList();
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
        return new Label(risks, classes, !reading.allSure(),
            Stream.concat(reading.found().stream().map(KnownWords::word),
                reading.unknown().stream().map(KnownWords::word)).toList());
    }

    private static Word word(LabelReading.Found found) {
        return word(found.written(), List.of(found.substance()),
            found.sureness() != LabelReading.Sureness.SPELLING_SLIP);
    }

    private static Word word(LabelReading.Unknown unknown) {
        return word(unknown.written(), unknown.near(), false);
    }

    private static Word word(String written, List<Substance> as, boolean sure) {
        return new Word(new ReadAs(written, as.stream().map(Substance::name).distinct().toList(), sure),
            as.stream().map(substance -> substance.risk().code()).collect(Collectors.toSet()),
            as.stream().map(Substance::kind).collect(Collectors.toSet()));
    }
}
