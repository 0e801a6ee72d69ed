package foretress.salon;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** Which act each route leaves in the trail: all of them, found in the program itself; those that leave none say why not. */
@Execution(ExecutionMode.CONCURRENT)
@DisplayName("B30: every route that reads or changes what is kept of a person leaves an act in the trail, or a person has said why not")
class ActsOfRoutesReferenceTest {
    private static final Path PAGE = Path.of("docs/reference/acts-of-routes.md");
    private static final Path SILENT = Path.of("src/test/reviewed/routes-without-an-act.txt");

    private static Map<String, String> silent() throws IOException {
        return Files.readAllLines(SILENT).stream().filter(line -> !line.isBlank() && !line.startsWith("#"))
            .map(line -> line.split(" \\| ", 2))
            .collect(Collectors.toMap(parts -> parts[0].strip(), parts -> parts[1].strip(), (a, b) -> a, TreeMap::new));
    }

    @Test
    @DisplayName("a route that can leave no act stands in the reviewed list with its reason, and none stands there that can")
    void whoeverLeavesNoneSaysWhy() throws IOException {
        Map<String, Set<String>> all = new ActsOfRoutes().all();
        assertThat(all.keySet()).isEqualTo(
            Rights.table().stream().map(Right::route).collect(Collectors.toCollection(java.util.TreeSet::new)));
        assertThat(silent().keySet()).containsExactlyElementsOf(
            all.entrySet().stream().filter(e -> e.getValue().isEmpty()).map(Map.Entry::getKey).sorted().toList());
        assertThat(silent().values()).allSatisfy(why -> assertThat(why).hasSizeGreaterThan(10));
    }

    @Test
    void theReferenceSaysWhatEachCanLeave() throws IOException {
        String made = page(new ActsOfRoutes().all());
        if (Boolean.getBoolean("reference.rewrite")) {
            Files.writeString(PAGE, made);
        }
        assertThat(PAGE).as("make it anew: mvn test -Dtest=ActsOfRoutesReferenceTest -Dreference.rewrite=true")
            .hasContent(made);
    }

    private static String page(Map<String, Set<String>> all) throws IOException {
        Map<String, String> silent = silent();
        var page = new StringBuilder("""
            # Which act each route leaves in the audit trail

            Made from the program itself by `ActsOfRoutesReferenceTest`: every route, and every act its code can come to. One request leaves those
            that apply; looking at a page again within a quarter of an hour leaves none of its own. What the program does by its clock stands
            under no route.

            | route | acts |
            |---|---|
            """);
        all.forEach((route, acts) -> page.append("| `").append(route).append("` | ")
            .append(acts.isEmpty() ? "*none:* " + silent.getOrDefault(route, "") : String.join(" · ", acts))
            .append(" |\n"));
        return page.toString();
    }
}
