package foretress.consent;

import java.util.List;
import java.util.Optional;

/**
 * What a record card says, already in words; {@link RecordPaper} prints it.
 *
 * @param corner the two lines at the reading end of the first masthead
 * @param foot at the foot of every page
 * @param particulars who it is about, in two columns under the title
 * @param pages how page x of y is said, with {@code {page}} and {@code {pages}} in it
 */
public record RecordText(String language, String title, String salon, String address, List<String> corner,
    String client, String foot,
    String pages, List<ConsentText.Line.Pair> particulars, List<Section> sections) {
    public RecordText {
        corner = List.copyOf(corner);
        particulars = List.copyOf(particulars);
        sections = List.copyOf(sections);
    }

    /** A part under its own heading, with a strand map above its lines where there is one. */
    public record Section(String heading, List<ConsentText.Line> lines, Optional<ConsentInput.Strand> strand) {
        public Section {
            lines = List.copyOf(lines);
        }
    }
}
