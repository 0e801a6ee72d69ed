package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The palette holds its contrast, light and dark. The formula: WCAG 2.2, definition of relative luminance and contrast ratio. */
class CssTokensTest {
    private static final Path CSS = Path.of("src/main/resources/META-INF/resources/css");
    private static final Pattern TOKEN = Pattern.compile("--([a-z-]+): (#[0-9a-f]{6})");

    private static final List<String> GROUNDS = List.of("paper", "slip", "tint", "desk");
    private static final List<String> TEXTS = List.of("ink", "madder", "weld", "woad", "walnut", "sage");
    /** Borders, shapes and bands: what must be seen to understand the page. */
    private static final List<String> SHAPES =
        List.of("frame", "metal", "henna", "oxidative", "lightened", "washes-out", "perm", "unknown");

    static Stream<Arguments> themes() throws IOException {
        String css = Files.readString(CSS.resolve("base.css"));
        int dark = css.indexOf("@media (prefers-color-scheme: dark)");
        Map<String, String> light = tokens(css.substring(0, dark));
        LinkedHashMap<String, String> night = new LinkedHashMap<>(light);
        night.putAll(tokens(css.substring(dark, css.indexOf("box-sizing"))));
        return Stream.of(Arguments.of("light", light), Arguments.of("dark", night));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("themes")
    @DisplayName("A5: text stands out 4.5 : 1 on every ground (WCAG 2.2, 1.4.3)")
    void textStandsOut(String theme, Map<String, String> tokens) {
        for (String ground : GROUNDS) {
            for (String text : TEXTS) {
                assertThat(contrast(tokens.get(text), tokens.get(ground))).as("%s: %s on %s", theme, text, ground)
                    .isGreaterThanOrEqualTo(4.5);
            }
        }
        assertThat(contrast(tokens.get("on-button"), tokens.get("button"))).as("%s: main button", theme)
            .isGreaterThanOrEqualTo(4.5);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("themes")
    @DisplayName("A5: frames, bands, focus and the button stand out 3 : 1 (WCAG 2.2, 1.4.11)")
    void shapesStandOut(String theme, Map<String, String> tokens) {
        for (String ground : List.of("paper", "slip")) {
            for (String shape : SHAPES) {
                assertThat(contrast(tokens.get(shape), tokens.get(ground))).as("%s: %s on %s", theme, shape, ground)
                    .isGreaterThanOrEqualTo(3);
            }
        }
        assertThat(contrast(tokens.get("button-edge"), tokens.get("paper"))).as("%s: button's edge", theme)
            .isGreaterThanOrEqualTo(3);
    }

    @Test
    void everyLightTokenHasItsNight() throws IOException {
        List<? extends Map<?, ?>> both = themes().map(a -> (Map<?, ?>) a.get()[1]).toList();
        String css = Files.readString(CSS.resolve("base.css"));
        int dark = css.indexOf("@media (prefers-color-scheme: dark)");
        assertThat(tokens(css.substring(dark, css.indexOf("box-sizing"))).keySet()).containsExactlyInAnyOrderElementsOf(
            both.get(0).keySet().stream().map(Object::toString).toList());
    }

    @ParameterizedTest(name = "{0} on {1}")
    @CsvSource({ "#000000, #ffffff, 21.0", "#777777, #ffffff, 4.48", "#211c26, #fbf7f0, 15.6",
        "#f08fa6, #1b1820, 7.7" })
    @DisplayName("the formula gives black on white 21, #777 on white 4.48 (W3C, understanding 1.4.3, from memory) and the palette's own figures")
    void theFormulaIsRight(String text, String ground, double ratio) {
        assertThat(contrast(text, ground)).isCloseTo(ratio, org.assertj.core.data.Offset.offset(0.05));
    }

    private static Map<String, String> tokens(String css) {
        var found = new LinkedHashMap<String, String>();
        TOKEN.matcher(css).results().forEach(m -> found.put(m.group(1), m.group(2)));
        return found;
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        return 0.2126 * part(colour, 1) + 0.7152 * part(colour, 3) + 0.0722 * part(colour, 5);
    }

    private static double part(String colour, int at) {
        double value = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
