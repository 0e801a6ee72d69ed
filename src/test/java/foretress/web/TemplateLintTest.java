package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What no template and no style sheet may hold. Every file is looked at; none is listed by hand. */
class TemplateLintTest {
    private static final Path ASSETS = Path.of("src/main/resources/META-INF/resources");
    /** Comments, and the block that names a layout class. */
    private static final Pattern COMMENT = Pattern.compile("(?s)\\{!.*?!}|<!--.*?-->|\\{#kind}[a-z ]*\\{/kind}");
    /** An expression or section, with one level of braces inside it. */
    private static final Pattern QUTE = Pattern.compile("(?s)\\{[#/a-zA-Z@][^{}]*}");
    private static final Pattern TAG = Pattern.compile("(?s)<[^<>]*>");
    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");
    private static final Pattern INLINE = Pattern.compile(
        "(?i)[\\s\"']style\\s*=|[\\s\"']on[a-z]+\\s*=|javascript:|<style\\b|<script\\b(?![^>]*\\bsrc=)|[\"'(]data:");
    private static final Pattern ELSEWHERE = Pattern.compile("(?i)(?:src|href|action)\\s*=\\s*[\"']?(?:https?:)?//");
    private static final Pattern SPOKEN =
        Pattern.compile("(?<=[\\s\"])(?:aria-label|alt|title|placeholder|summary)=\"([^\"]*)\"");
    /** A "no" after which another choice of the same group follows, apart from "don't know" and "rather not say". */
    private static final Pattern NO_BEFORE_YES =
        Pattern.compile("(?s)\\{#choice [^{}]*value=\"(?:no|none)\"(?:(?!\\{/choices}).)*?"
            + "\\{#choice [^{}]*value=(?!\"(?:unknown|dont-know|none)\"|slip\\.code)");
    private static final Pattern PHYSICAL = Pattern.compile(
        "(?m)(?:^|[;{\\s])(?:(?:margin|padding|border|scroll-margin|scroll-padding)-(?:left|right)|left|right|(?:text-align|clear|float)\\s*:\\s*(?:left|right))\\b\\s*[:;}]?");

    static Stream<Path> templates() {
        return files(Path.of("templates"), ".html");
    }

    static Stream<Path> sheets() {
        return files(ASSETS.resolve("css"), ".css");
    }

    @ParameterizedTest
    @MethodSource("templates")
    @DisplayName("B17: nothing inline, nothing from elsewhere")
    void nothingRunsOrStylesInline(Path template) throws IOException {
        String text = stripped(template);
        assertThat(INLINE.matcher(text).results().map(m -> m.group()).toList()).as("%s", template).isEmpty();
        assertThat(ELSEWHERE.matcher(text).results().map(m -> m.group()).toList()).as("%s", template).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("templates")
    @DisplayName("A29: words stand in the bundles, in every language, never in a template")
    void noWordStandsInATemplate(Path template) throws IOException {
        assertThat(hardCoded(stripped(template))).as("%s", template).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("templates")
    @DisplayName("yes stands before no on every page: after \"no\" and \"none\" come only those who cannot or will not say")
    void yesStandsBeforeNo(Path template) throws IOException {
        assertThat(NO_BEFORE_YES.matcher(stripped(template)).results().map(m -> m.group()).toList())
            .as("%s", template).isEmpty();
    }

    @Test
    void aPlantedNoBeforeYesIsFound() {
        String no = "{#choices}{#choice name=a value=\"none\" label=say:list_no /}\n",
            unsaid = "{#for slip in q.unsaid}{#choice name=a value=slip.code label=slip.label /}{/for}",
            end = "{/choices}";
        assertThat(NO_BEFORE_YES.matcher(no + "{#choice name=a value=\"some\" label=say:list_yes /}" + end).find())
            .isTrue();
        assertThat(NO_BEFORE_YES.matcher(no + unsaid + end).find()).isFalse();
    }

    @ParameterizedTest
    @MethodSource("sheets")
    @DisplayName("A28: style sheets know start and end, never left and right")
    void sheetsAreLogical(Path sheet) throws IOException {
        String css = Files.readString(sheet).replaceAll("(?s)/\\*.*?\\*/", "");
        assertThat(PHYSICAL.matcher(css).results().map(m -> m.group().strip()).toList()).as("%s", sheet).isEmpty();
        assertThat(css).doesNotContain("data:").doesNotContain("//").doesNotContain("@import");
    }

    @ParameterizedTest
    @ValueSource(strings = { "<p>Hello there</p>", "<p>{say:x} or</p>", "<img alt=\"A cat\">",
        "<a aria-label=\"Close\">{say:x}</a>" })
    void aPlantedWordIsFound(String planted) {
        assertThat(hardCoded(planted)).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = { "<p style=\"x\">", "<a onclick='x'>", "<script>x</script>", "<style>x</style>",
        "<img src=\"data:x\">" })
    void aPlantedInlineIsFound(String planted) {
        assertThat(INLINE.matcher(planted).find()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = { "a { margin-left: 1px }", "a { left: 0 }", "a { text-align: right; }", "a{float:left}" })
    void aPlantedLeftIsFound(String planted) {
        assertThat(PHYSICAL.matcher(planted).find()).isTrue();
    }

    @Test
    void scriptsAreSmallAndKeepNothing() {
        files(ASSETS.resolve("js"), ".js").forEach(script -> {
            String text = read(script);
            assertThat(text.lines().count()).as("%s", script).isLessThan(170);
            assertThat(text).as("%s", script).doesNotContain("localStorage").doesNotContain("sessionStorage")
                .doesNotContain("indexedDB")
                .doesNotContain("document.cookie").doesNotContain("eval(").doesNotContain("innerHTML")
                .doesNotContain(".style.");
        });
    }

    private static List<String> hardCoded(String template) {
        Stream<String> attributes =
            SPOKEN.matcher(template).results().map(m -> QUTE.matcher(m.group(1)).replaceAll(" "));
        String text = TAG.matcher(QUTE.matcher(template).replaceAll(" ")).replaceAll(" ").replaceAll("&[a-z]+;", " ");
        return Stream.concat(attributes, Stream.of(text)).flatMap(t -> WORD.matcher(t).results().map(m -> m.group()))
            .toList();
    }

    private static String stripped(Path template) throws IOException {
        return COMMENT.matcher(Files.readString(template)).replaceAll("");
    }

    private static Stream<Path> files(Path root, String ending) {
        try (Stream<Path> found = Files.walk(root)) {
            return found.filter(p -> p.toString().endsWith(ending)).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
