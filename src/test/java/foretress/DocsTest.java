package foretress;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written leads where it says. */
class DocsTest {
    private static final Path TOP = Path.of("");
    private static final Path PICTURES = Path.of("docs/pictures");
    /** Made by a run or kept by an editor: no part of the project. */
    private static final Set<String> NOT_OURS =
        Set.of("target", "data", "demo-data", "dev-data", ".git", ".tools", ".idea", ".vscode");
    private static final Pattern LINK = Pattern.compile("!?\\[[^\\]]*]\\(([^)\\s]+)\\)");
    private static final Pattern CODE = Pattern.compile("(?ms)^```.*?^```|`[^`\n]*`");
    private static final Pattern TEST = Pattern.compile("`([A-Z][A-Za-z0-9]*(?:Test|IT))`");
    private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.+)$");
    static Stream<Path> pages() {
        return Stream.concat(Stream.of("README.md", "DEVELOPERS.md").map(Path::of).filter(Files::exists),
            files(Path.of("docs"), ".md"));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyLinkLeadsToAFileAndAHeading(Path page) {
        assertThat(dead(page)).filteredOn(link -> !isPicture(link)).as("%s leads nowhere with", page).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyPictureIsThere(Path page) {
        Assumptions.assumeTrue(Files.isDirectory(PICTURES),
            "NOT TRIED: no pictures were taken yet, there is no " + PICTURES);
        assertThat(dead(page)).filteredOn(DocsTest::isPicture).as("%s shows nothing for", page).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyTestThatIsNamedIsThere(Path page) {
        Set<String> there = files(Path.of("src/test/java"), ".java")
            .map(file -> file.getFileName().toString().replace(".java", "")).collect(Collectors.toSet());
        assertThat(
            TEST.matcher(text(page)).results().map(named -> named.group(1)).filter(name -> !there.contains(name)))
            .as("%s names no test with", page).isEmpty();
    }

    /** With {@code envVars} of its own quarkus:run starts the server with nothing else of the environment: no demo, no settings. */
    @Test
    void theServerSeesWhatItsCommandSets() {
        assertThat(text(Path.of("pom.xml"))).doesNotContain("<envVars>", "<environmentVariables>");
    }

    @ParameterizedTest
    @ValueSource(strings = { "[a](no-such.md)", "![a](no-such.png)", "[a](there.md#no-such-heading)",
        "[a](#no-such-heading)", "[a](../../etc/hosts)" })
    void aDeadLinkIsFound(String planted, @TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("there.md"), "# Some heading, here\n");
        Path page = Files.writeString(folder.resolve("page.md"), planted);
        assertThat(dead(page)).hasSize(1);
        Files.writeString(page, "[a](there.md#some-heading-here) [b](https://example.org) `[c](code.md)`");
        assertThat(dead(page)).isEmpty();
    }

    private static boolean isPicture(String link) {
        return link.endsWith(".png");
    }

    private static List<String> dead(Path page) {
        var dead = new ArrayList<String>();
        LINK.matcher(CODE.matcher(text(page)).replaceAll("")).results().map(found -> found.group(1))
            .filter(link -> !link.matches("[a-z]+:.*")).filter(link -> !leadsSomewhere(page, link)).forEach(dead::add);
        return dead;
    }

    private static boolean leadsSomewhere(Path page, String link) {
        String[] parts = link.split("#", 2);
        Path target = parts[0].isEmpty() ? page : page.toAbsolutePath().getParent().resolve(parts[0]).normalize();
        boolean inside = target.toAbsolutePath().startsWith(top(page));
        return inside && Files.exists(target) && (parts.length == 1 || anchors(target).contains(parts[1]));
    }

    /** Nothing may lead out of the project: its folder, or that of a page tried on its own. */
    private static Path top(Path page) {
        Path here = TOP.toAbsolutePath();
        return page.toAbsolutePath().startsWith(here) ? here : page.toAbsolutePath().getParent();
    }

    /** A heading's address: small letters, blanks as hyphens, nothing else but letters, digits, hyphens and underscores. */
    private static List<String> anchors(Path page) {
        return HEADING.matcher(text(page)).results()
            .map(found -> found.group(1).strip().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N} _-]", "")
                .replace(' ', '-'))
            .toList();
    }

    /** Pictures and fonts hold no sentences; what is no text reads as nothing. */
    private static String text(Path file) {
        try {
            byte[] bytes = Files.readAllBytes(file);
            return new String(bytes, StandardCharsets.ISO_8859_1).indexOf('\0') >= 0 ? ""
                : new String(bytes, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<Path> files(Path folder, String ending) {
        var found = new ArrayList<Path>();
        try (Stream<Path> inside = Files.list(folder)) {
            for (Path path : inside.sorted().toList()) {
                if (NOT_OURS.contains(path.getFileName().toString())) {
                    continue;
                }
                if (Files.isDirectory(path)) {
                    files(path, ending).forEach(found::add);
                } else if (path.getFileName().toString().endsWith(ending)) {
                    found.add(path);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return found.stream();
    }
}
