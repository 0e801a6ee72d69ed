package foretress.knowledge;

import foretress.lexicon.LabelLexicon;
import foretress.lexicon.MedicineLexicon;
import foretress.lexicon.Substance;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The lexicons as they are shipped, read without the rest of the knowledge. */
public final class ShippedLexicon {
    private static final LexiconReader READER =
        new LexiconReader(KnowledgeFiles.ofFolder(Path.of("src/main/knowledge")), new Complaints());
    public static final LabelLexicon LABELS = READER.labels();
    public static final MedicineLexicon MEDICINES = READER.medicines();
    public static final List<Substance> SUBSTANCES = READER.substances();

    private ShippedLexicon() {}

    /** All that the medicines of a typed line are, in the order of the alphabet. */
    public static Set<String> kinds(String typed) {
        return MEDICINES.read(typed).names().stream().flatMap(name -> name.kinds().stream())
            .collect(Collectors.toCollection(TreeSet::new));
    }
}
