package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** One section of docs/benchmarks.md whose figures come out the same on every machine. */
public final class Benchmarks {
    private static final Path PAGE = Path.of("docs/benchmarks.md");
    private static final String HEAD = """
        # Measured figures

        What was measured, how, and what it came to. Figures that depend on the machine say on which; the others are held by a test and
        made anew by it with `-Dreference.rewrite=true`.
        """;

    private Benchmarks() {}

    /** The page has this section; with the rewriting switch it is put there first. */
    public static void hold(String title, String section) throws IOException {
        String page = Files.exists(PAGE) ? Files.readString(PAGE) : HEAD;
        String whole = "## " + title + "\n\n" + section.strip() + "\n";
        if (Boolean.getBoolean("reference.rewrite")) {
            Files.createDirectories(PAGE.getParent());
            Files.writeString(PAGE, replaced(page, title, whole));
        }
        assertThat(PAGE).as("make it anew: -Dreference.rewrite=true").exists();
        assertThat(Files.readString(PAGE)).as("make it anew: -Dreference.rewrite=true").contains(whole);
    }

    private static String replaced(String page, String title, String whole) {
        int from = page.indexOf("## " + title + "\n");
        if (from < 0) {
            return page.stripTrailing() + "\n\n" + whole;
        }
        int to = page.indexOf("\n## ", from);
        return page.substring(0, from) + whole + (to < 0 ? "" : page.substring(to));
    }
}
