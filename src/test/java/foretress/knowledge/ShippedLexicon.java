package foretress.knowledge;

import foretress.lexicon.LabelLexicon;
import foretress.lexicon.MedicineLexicon;
import foretress.lexicon.Substance;
import java.nio.file.Path;
import java.util.List;

/** The lexicons as they are shipped, read without the rest of the knowledge. */
public final class ShippedLexicon {
    private static final LexiconReader READER =
        new LexiconReader(KnowledgeFiles.ofFolder(Path.of("src/main/knowledge")), new Complaints());
    public static final LabelLexicon LABELS = READER.labels();
    public static final MedicineLexicon MEDICINES = READER.medicines();
    public static final List<Substance> SUBSTANCES = READER.substances();

    private ShippedLexicon() {}
}
