package foretress.knowledge;

import foretress.knowledge.Csv.Field;
import foretress.knowledge.Csv.Row;
import foretress.lexicon.Cas;
import foretress.lexicon.LabelLexicon;
import foretress.lexicon.MedicineLexicon;
import foretress.lexicon.MedicineRow;
import foretress.lexicon.Substance;
import foretress.lexicon.Substance.Risk;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the lists of substances and medicines, and points at what is wrong in them. */
final class LexiconReader {
    private static final String SUBSTANCES = "lexicon/substances.csv";
    private static final String MEDICINES = "lexicon/medicines.csv";
    private static final String LOOK_ALIKES = "lexicon/look-alikes.csv";
    private static final List<String> SUBSTANCE_COLUMNS =
        List.of("name", "cas", "other_names", "class", "risk", "entry", "limit", "source", "confidence");
    private static final List<String> MEDICINE_COLUMNS =
        List.of("name", "class", "why", "effect", "source", "confidence", "other_names");
    private static final List<String> LOOK_ALIKE_COLUMNS = List.of("name", "looks_like", "source");
    private static final Set<String> CONFIDENCES = Set.of("verified", "memory");

    private final KnowledgeFiles files;
    private final Complaints complaints;

    LexiconReader(KnowledgeFiles files, Complaints complaints) {
        this.files = files;
        this.complaints = complaints;
    }

    /** What the lists know; a file that is missing knows nothing. */
    KnownWords read() {
        return new KnownWords(labels(), medicines());
    }

    LabelLexicon labels() {
        return new LabelLexicon(substances());
    }

    MedicineLexicon medicines() {
        List<MedicineRow> rows = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Row row : rows(MEDICINES, MEDICINE_COLUMNS)) {
            if (filled(MEDICINES, row, 0, 1, 2, 3, 4) && isConfidence(MEDICINES, row, 5)
                && isNew(MEDICINES, row, seen, text(row, 0) + " in " + text(row, 1))) {
                rows.add(new MedicineRow(text(row, 0), text(row, 1), text(row, 2), text(row, 3), text(row, 4),
                    text(row, 5), list(row, 6)));
            }
        }
        return new MedicineLexicon(rows,
            rows(LOOK_ALIKES, LOOK_ALIKE_COLUMNS).stream().map(row -> text(row, 0)).toList());
    }

    List<Substance> substances() {
        List<Substance> substances = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Row row : rows(SUBSTANCES, SUBSTANCE_COLUMNS)) {
            Optional<Risk> risk = risk(row);
            if (filled(SUBSTANCES, row, 0, 3, 7) && isConfidence(SUBSTANCES, row, 8) && risk.isPresent() && isCas(row)
                && isNew(SUBSTANCES, row, seen, text(row, 0))) {
                Optional<Cas> cas = text(row, 1).isEmpty() ? Optional.empty() : Optional.of(new Cas(text(row, 1)));
                substances.add(
                    new Substance(text(row, 0), cas, list(row, 2), text(row, 3), risk.get(), text(row, 5), text(row, 6),
                        text(row, 7), text(row, 8)));
            }
        }
        return substances;
    }

    private List<Row> rows(String file, List<String> columns) {
        String text = files.byPath().get(file);
        if (text == null) {
            return List.of();
        }
        List<Row> rows = Csv.rows(text);
        List<String> head = rows.isEmpty() ? List.of() : rows.get(0).fields().stream().map(Field::text).toList();
        if (!head.equals(columns)) {
            complaints.add(new Complaint(file, 1, 1, 1, "the columns are to be %s".formatted(String.join(",", columns)),
                String.join(",", head)));
            return List.of();
        }
        return rows.stream().skip(1).filter(row -> isComplete(file, row, columns.size())).toList();
    }

    private boolean isComplete(String file, Row row, int columns) {
        if (row.fields().size() != columns) {
            complaints.add(new Complaint(file, row.line(), 1, row.lineText().length(),
                "%d fields, but there are %d columns; a comma within a field needs quotes around it"
                    .formatted(row.fields().size(), columns),
                row.lineText()));
        }
        return row.fields().size() == columns;
    }

    private boolean filled(String file, Row row, int... columns) {
        int[] empty = Arrays.stream(columns).filter(c -> text(row, c).isEmpty()).toArray();
        for (int c : empty) {
            complain(file, row, c, "this field is empty");
        }
        return empty.length == 0;
    }

    private boolean isConfidence(String file, Row row, int column) {
        boolean known = CONFIDENCES.contains(text(row, column));
        if (!known) {
            complain(file, row, column,
                "not a confidence: '%s'; it is verified or memory".formatted(text(row, column)));
        }
        return known;
    }

    private boolean isNew(String file, Row row, Set<String> seen, String what) {
        boolean isNew = seen.add(what);
        if (!isNew) {
            complain(file, row, 0, "'%s' stands here twice".formatted(what));
        }
        return isNew;
    }

    private Optional<Risk> risk(Row row) {
        Optional<Risk> risk = Risk.of(text(row, 4));
        if (risk.isEmpty()) {
            List<String> codes = Arrays.stream(Risk.values()).map(Risk::code).toList();
            complain(SUBSTANCES, row, 4,
                "no such risk as '%s'%s".formatted(text(row, 4), Nearest.hint(text(row, 4), codes)));
        }
        return risk;
    }

    private boolean isCas(Row row) {
        boolean right = text(row, 1).isEmpty() || Cas.valid(text(row, 1));
        if (!right) {
            complain(SUBSTANCES, row, 1, "'%s' is no CAS number: its check digit is wrong".formatted(text(row, 1)));
        }
        return right;
    }

    private void complain(String file, Row row, int column, String message) {
        Field field = row.fields().get(column);
        complaints.add(new Complaint(file, row.line(), field.column(), Math.max(1, field.text().length()), message,
            row.lineText()));
    }

    private static String text(Row row, int column) {
        return row.fields().get(column).text();
    }

    private static List<String> list(Row row, int column) {
        return Arrays.stream(text(row, column).split(";")).map(String::strip).filter(s -> !s.isEmpty()).toList();
    }
}
