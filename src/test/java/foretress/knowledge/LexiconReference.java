package foretress.knowledge;

import foretress.knowledge.Csv.Field;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes docs/reference/substances.md and docs/reference/medicines.md from the lists in knowledge. */
final class LexiconReference {
    private static final Map<String, String> FILES = KnowledgeFiles.ofFolder(Path.of("src/main/knowledge")).byPath();

    private LexiconReference() {}

    private static List<List<String>> rows(String file) {
        return Csv.rows(FILES.get("lexicon/" + file)).stream().skip(1)
            .map(row -> row.fields().stream().map(Field::text).toList()).toList();
    }

    static String substances() {
        List<List<String>> rows = rows("substances.csv");
        long numbered = rows.stream().filter(r -> !r.get(1).isEmpty()).count();
        var page = new StringBuilder("""
            # The substances

            What a label is read against: %d substances and groups, %d of them with a CAS number whose check digit holds. This page is made
            from `src/main/knowledge/lexicon/substances.csv`; a test fails when it is out of date and says how to make it anew. *verified*:
            looked up where the row says; *memory*: from memory, not looked up. Names in other languages are from memory throughout. Entries
            are those of Regulation (EC) 1223/2009.
            """.formatted(rows.size(), numbered));
        byClass(rows, 3).forEach((kind, of) -> {
            page.append("\n## ").append(kind).append(
                "\n\n| name | CAS | risk | EU entry | other names | source | status |\n|---|---|---|---|---|---|---|\n");
            of.forEach(r -> page
                .append(line(r.get(0), r.get(1), r.get(4), r.get(5), r.get(2).replace(";", "; "), r.get(7), r.get(8))));
        });
        return page.toString();
    }

    static String medicines() {
        List<List<String>> rows = rows("medicines.csv");
        var page = new StringBuilder("""
            # The medicines

            What a typed medicine is read against: %d generic names in %d rows; a name in several classes has several rows. This page is made
            from `src/main/knowledge/lexicon/medicines.csv` and `look-alikes.csv`; a test fails when it is out of date. Spellings of other
            languages are found by sound and need not be listed. Nothing here is a reason to stop, delay or change a medicine: ask a doctor or
            pharmacist.
            """.formatted(rows.stream().map(r -> r.get(0)).distinct().count(), rows.size()));
        byClass(rows, 1).forEach((kind, of) -> {
            page.append("\n## ").append(kind).append("\n\n").append(of.get(0).get(2)).append(". Effect: `")
                .append(of.get(0).get(3))
                .append("`.\n\n| name | other names | source | status |\n|---|---|---|---|\n");
            of.forEach(r -> page.append(line(r.get(0), r.get(6).replace(";", "; "), r.get(4), r.get(5))));
        });
        page.append(
            "\n## Look-alikes\n\nOther medicines, never read as the one they resemble.\n\n| name | looks like | source |\n|---|---|---|\n");
        rows("look-alikes.csv").forEach(r -> page.append(line(r.get(0), r.get(1), r.get(2))));
        return page.toString();
    }

    private static Map<String, List<List<String>>> byClass(List<List<String>> rows, int column) {
        return rows.stream().collect(Collectors.groupingBy(r -> r.get(column), TreeMap::new, Collectors.toList()));
    }

    private static String line(String... cells) {
        return "| " + String.join(" | ", List.of(cells).stream().map(c -> c.replace("|", "\\|")).toList()) + " |\n";
    }
}
