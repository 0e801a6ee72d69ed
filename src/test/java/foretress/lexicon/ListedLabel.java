package foretress.lexicon;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** One list of the corpus, and what is in it. */
record ListedLabel(String family, String language, String text, Set<String> substances) {
    private static final Path FOLDER = Path.of("src/test/resources/labels/corpus");

    static List<ListedLabel> all() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.sorted().flatMap(file -> of(file).stream()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<ListedLabel> of(Path file) {
        String family = file.getFileName().toString().replace(".txt", "");
        List<ListedLabel> labels = new ArrayList<>();
        for (String part : read(file).split("(?m)^== ")) {
            if (!part.startsWith("#")) {
                int head = part.indexOf('\n');
                int dashes = part.lastIndexOf("\n--\n");
                Set<String> substances = new TreeSet<>(Arrays.asList(part.substring(dashes + 4).strip().split("; ")));
                labels.add(
                    new ListedLabel(family, part.substring(0, head), part.substring(head + 1, dashes), substances));
            }
        }
        return labels;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
