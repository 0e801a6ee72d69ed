package foretress;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Holds the direction of the imports: an arrow may skip rooms but never turn. Each complaint names file and line. */
class RoomsTest {
    private static final Path MAIN = Path.of("src/main/java/foretress");

    /** From the top down: a room may import what stands below it. */
    private static final List<String> ROOMS =
        List.of("start", "demo", "api", "retention", "rights", "owner", "day", "consultation", "card", "closing",
            "decision",
            "note", "bench", "alternative", "told", "skintest", "intake", "consent", "invitation", "visit", "backup",
            "seal",
            "post", "ledger", "vault", "salon",
            "web", "running", "knowledge", "plan", "assessment", "hair", "lexicon", "questionnaire", "picture");
    /** The ground floor: none of them knows another. */
    private static final Set<String> GROUND = Set.of("hair", "lexicon", "questionnaire", "picture");
    private static final Set<String> QUIET =
        Set.of("plan", "assessment", "hair", "lexicon", "questionnaire", "picture");
    /** The engines of a room that also has pages: as quiet as a quiet room, and knowing none of the pages beside them. */
    private static final Map<String, Set<String>> ENGINES =
        Map.of("retention", Set.of("ErasingOrder", "PromisedYears"), "bench",
            Set.of("Bath", "Dilution", "DyeSalt", "Elasticity", "Impossible", "MetalCheck",
                "Part", "Peroxide", "Porosity", "Pull", "Run", "Seen", "TuftSign", "Strength", "Trial", "Tuft"));
    private static final Set<String> KNOWLEDGE_MAY = Set.of("java.", "org.snakeyaml.", "dev.cel.");

    private static final Pattern NAMED = Pattern.compile("\\bforetress\\.([a-z]+)\\.");
    private static final Pattern IMPORT = Pattern.compile("^import (?:static )?([\\w.]+)");
    private static final Pattern FILES_OR_CLOCK =
        Pattern.compile("java\\.nio\\.file|java\\.io\\.File|java\\.time\\.Clock|java\\.net\\.|java\\.sql\\.");
    private static final Pattern OWN_NOW =
        Pattern.compile("\\.now\\(\\s*\\)|systemDefault\\(|currentTimeMillis\\(|Locale\\.getDefault\\(|new Date\\(\\)");

    private record Line(Path file, int number, String text) {
        String room() {
            Path inside = MAIN.relativize(file);
            return inside.getNameCount() == 1 ? "" : inside.getName(0).toString();
        }

        String said(String complaint) {
            return "%s:%d %s: %s".formatted(file, number, complaint, text.strip());
        }
    }

    private final List<Line> lines = lines();

    @Test
    void everyFolderIsARoomOfTheHouse() {
        assertThat(lines.stream().map(Line::room).filter(room -> !room.isEmpty() && !ROOMS.contains(room)).distinct())
            .isEmpty();
    }

    @Test
    void noRoomImportsOneAboveIt() {
        List<String> turned = new ArrayList<>();
        for (Line line : lines) {
            Matcher named = NAMED.matcher(code(line));
            while (named.find()) {
                if (!mayKnow(line.room(), named.group(1))) {
                    turned.add(line.said(line.room() + " must not know " + named.group(1)));
                }
            }
        }
        assertThat(turned).isEmpty();
    }

    @Test
    void quietRoomsImportOnlyJavaItselfAndQuietRooms() {
        assertThat(lines.stream().filter(line -> QUIET.contains(line.room())).filter(line -> !quiet(line))
            .map(line -> line.said("not quiet"))).isEmpty();
    }

    @Test
    void enginesAreAsQuietAsAQuietRoom() {
        assertThat(lines.stream().filter(RoomsTest::engine)
            .filter(line -> !quiet(line) || imported(line).startsWith("foretress."))
            .map(line -> line.said("not quiet"))).isEmpty();
    }

    @Test
    void enginesKnowNoClassBesideThemButEngines() {
        assertThat(lines.stream().filter(RoomsTest::engine)
            .filter(line -> neighbours(line).anyMatch(name -> !ENGINES.get(line.room()).contains(name)))
            .map(line -> line.said("knows a class that is no engine"))).isEmpty();
    }

    @Test
    void knowledgeImportsAYamlParserAndConditionsAndNothingElse() {
        assertThat(
            lines.stream().filter(line -> line.room().equals("knowledge")).filter(line -> !imported(line).isEmpty())
                .filter(line -> KNOWLEDGE_MAY.stream().noneMatch(imported(line)::startsWith)
                    && !imported(line).startsWith("foretress."))
                .map(line -> line.said("not for knowledge")))
            .isEmpty();
    }

    @Test
    @DisplayName("E12 time, zone and language are handed in: nobody asks the machine for its own")
    void nobodyAsksTheMachineForTimeZoneOrLanguage() {
        assertThat(
            lines.stream().filter(line -> OWN_NOW.matcher(code(line)).find()).map(line -> line.said("hand it in")))
            .isEmpty();
    }

    @Test
    void roomsDoNotGoRoundInCircles() {
        Map<String, Set<String>> knows = new LinkedHashMap<>();
        for (Line line : lines) {
            Matcher named = NAMED.matcher(code(line));
            while (named.find()) {
                knows.computeIfAbsent(line.room(), room -> new TreeSet<>()).add(named.group(1));
            }
        }
        knows.forEach((room, others) -> others.stream().filter(other -> !other.equals(room))
            .forEach(other -> assertThat(knows.getOrDefault(other, Set.of())).as(other).doesNotContain(room)));
    }

    private static boolean mayKnow(String room, String other) {
        if (room.isEmpty() || room.equals(other)) {
            return true;
        }
        return ROOMS.indexOf(room) < ROOMS.indexOf(other) && !(GROUND.contains(room) && GROUND.contains(other));
    }

    private static boolean engine(Line line) {
        return ENGINES.getOrDefault(line.room(), Set.of()).contains(name(line.file()));
    }

    /** Classes of the same room that the line names. */
    private static Stream<String> neighbours(Line line) {
        return Pattern.compile("\\b[A-Z]\\w*").matcher(code(line)).results().map(MatchResult::group)
            .filter(word -> Files.exists(line.file().resolveSibling(word + ".java")));
    }

    private static String name(Path file) {
        return file.getFileName().toString().replace(".java", "");
    }

    private static boolean quiet(Line line) {
        String imported = imported(line);
        boolean fine = imported.isEmpty() || imported.startsWith("java.") || imported.startsWith("javax.imageio.")
            || imported.startsWith("foretress.");
        return fine && !FILES_OR_CLOCK.matcher(code(line)).find();
    }

    private static String imported(Line line) {
        Matcher matcher = IMPORT.matcher(line.text());
        return matcher.find() ? matcher.group(1) : "";
    }

    /** Comments and texts may speak of anything. */
    private static String code(Line line) {
        String text = line.text().strip();
        return text.startsWith("*") || text.startsWith("/*") || text.startsWith("//") || text.startsWith("package ")
            ? "" : text.replaceAll("\"[^\"]*\"", "");
    }

    private static List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        try (Stream<Path> files = Files.walk(MAIN)) {
            for (Path file : (Iterable<Path>) files.filter(f -> f.toString().endsWith(".java"))::iterator) {
                List<String> texts = Files.readAllLines(file);
                for (int i = 0; i < texts.size(); i++) {
                    lines.add(new Line(file, i + 1, texts.get(i)));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return lines;
    }
}
