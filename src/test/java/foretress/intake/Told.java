package foretress.intake;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What a test tells of earlier treatments, on the list to tick and on the page about one of them. */
final class Told {
    /** Rows with several kinds are named after one of them. */
    private static final Map<String, String> UNDER = Map.of("henna-pure", "henna-black", "henna-unknown", "henna-black",
        "indigo", "henna-black", "wash-out-colour", "semi-colour");

    private Told() {}

    /** The rows to tick; a lotion, a box or henna may also be told by the questions that asked for them once. */
    static List<String> rows(Map<String, List<String>> told, String id, List<String> offered) {
        return told.containsKey(id) ? List.of()
            : Stream.concat(told.getOrDefault(id + ".what", List.of()).stream(), once(told))
                .map(kind -> UNDER.getOrDefault(kind, kind)).distinct().filter(offered::contains).toList();
    }

    private static Stream<String> once(Map<String, List<String>> told) {
        return Stream.of(row(told, "darkening-lotion", "restorer"), row(told, "home-colour", "box-dye"),
            row(told, "henna", "henna-black"), row(told, "last-colour-by", "box-dye")).flatMap(rows -> rows);
    }

    private static Stream<String> row(Map<String, List<String>> told, String question, String row) {
        List<String> said = told.getOrDefault(question, List.of("no"));
        return said.contains("no") ? Stream.empty() : Stream.of(said.contains("dont-know") && !row.equals("henna-black")
            ? "dont-know" : row);
    }

    /** Which of the kinds of a row it was; the last of them is the one that nobody knows. */
    static String kind(Map<String, List<String>> told, String id, List<String> kinds) {
        return told.getOrDefault(id + ".what", List.of()).stream().filter(kinds::contains).findFirst()
            .orElse(kinds.get(kinds.size() - 1));
    }
}
