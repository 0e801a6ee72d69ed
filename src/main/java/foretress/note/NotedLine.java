package foretress.note;

import foretress.bench.BenchChange;
import java.util.List;

/**
 * One note as the page shows it.
 *
 * @param href where it is struck out and where its letter is added
 * @param hint what it still needs before it counts; empty when nothing
 * @param struck why, by whom and when it was struck out; empty when it stands
 * @param newest the last one that was written down
 */
public record NotedLine(String href, String title, List<String> says, String made, String hint, String struck,
    boolean mayStrike, boolean mayAdd,
    List<Paper> papers, List<BenchChange> changes, boolean newest) {
    public record Paper(String href, String words) {}

    /** The field of the reason; a page can hold several notes. */
    public String whyField() {
        return "why-" + id();
    }

    public String paperField() {
        return "paper-" + id();
    }

    private String id() {
        return href.substring(href.lastIndexOf('/') + 1);
    }
}
