package foretress.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;

/** Counts taps, and the words a client sees on each page without opening anything: closed folds, lists of a select what only
 * a screen reader says, the fields that a browser
 * shows only after a choice and what only a wide screen shows are not seen. */
final class WalkLength {
    private static final String UNSEEN = "script, style, template, svg, .skip, .unseen, [hidden], head,"
        + " .wide, .again, .extent, .when > .parts, details:not([open]) > :not(summary), option:not([selected]):not(:first-child)";
    private static final Pattern WORD = Pattern.compile("\\s+");
    private static final Pattern LETTER = Pattern.compile("[\\p{L}\\p{N}]");
    private final List<String> lines = new ArrayList<>();
    private final List<String> said = new ArrayList<>();
    private int words;

    private int before;
    private int taps;

    void read(TappingWalker walker) {
        Document page = walker.page().clone();
        page.select(UNSEEN).remove();
        page.body().select("*").forEach(part -> part.appendText(" ")); // two links beside each other are two words
        int seen = (int) WORD.splitAsStream(page.body().text()).filter(word -> LETTER.matcher(word).find()).count();
        before = lines.isEmpty() ? walker.taps() : before;
        lines.add("%4d words, %2d taps to get here: %s".formatted(seen, walker.taps() - before - taps, walker.at()));
        taps = walker.taps() - before;
        words += seen;
        said.add(page.body().text());
    }

    int taps() {
        return taps;
    }

    int pages() {
        return lines.size();
    }

    int words() {
        return words;
    }

    int letters() {
        return said.stream().mapToInt(page -> (int) LETTER.matcher(page).results().count()).sum();
    }

    /** The words themselves, a line a page. */
    String said() {
        return String.join("\n", said);
    }

    @Override
    public String toString() {
        return String.join("\n", lines) + "\n%4d words, %d taps, %d pages".formatted(words, taps, pages());
    }
}
