package foretress.intake;

import foretress.intake.ReadBackPages.Chapter;
import foretress.intake.ReadBackPages.Line;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One row of what is read back. What was told stands in it alone, in full. Everything of a topic that was answered with no is
 * one row, and so is what was answered alike, such as not known: opened, each answer in it leads to its own question.
 *
 * @param answer what is said to all of it; empty where all of it says no
 */
public record ReadRow(String topic, String title, Optional<String> answer, List<Line> lines) {
    /** Whether it stands alone, and the row itself leads to its question. */
    public boolean alone() {
        return lines.size() == 1 && answer.isPresent();
    }

    public Line first() {
        return lines.get(0);
    }

    static List<ReadRow> of(Chapter chapter) {
        Map<Optional<String>, List<Line>> alike =
            chapter.lines().stream()
                .collect(Collectors.groupingBy(ReadRow::said, LinkedHashMap::new, Collectors.toList()));
        List<ReadRow> rows = new ArrayList<>();
        alike.forEach((answer, lines) -> rows.add(new ReadRow(chapter.topic(), chapter.title(), answer, lines)));
        return rows;
    }

    private static Optional<String> said(Line line) {
        return Optional.of(line.answer()).filter(answer -> !line.quiet());
    }
}
