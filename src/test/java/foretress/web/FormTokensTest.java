package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("R1: a form's token proves its session, and nothing else")
class FormTokensTest {
    private static final Pattern PASSWORD = Pattern.compile("\\{#field[^{}]*type=\"password\"");
    private final FormTokens tokens = new FormTokens(Base64.getEncoder().encodeToString(new byte[32]));

    @Test
    void afterARestartWithTheSameKeyItIsStillGood() {
        assertThat(new FormTokens(Base64.getEncoder().encodeToString(new byte[32])).prove(tokens.of("staff 1"),
            List.of("staff 1"))).isTrue();
    }

    @Test
    void underAnotherKeyOrForAnotherSessionItIsNot() {
        byte[] other = new byte[32];
        other[31] = 1;
        assertThat(
            new FormTokens(Base64.getEncoder().encodeToString(other)).prove(tokens.of("staff 1"), List.of("staff 1")))
            .isFalse();
        assertThat(tokens.prove(tokens.of("staff 1"), List.of("staff 2", "door 1"))).isFalse();
    }

    @Test
    void noSessionIsProvedByNothing() {
        assertThat(tokens.prove("", List.of())).isFalse();
        assertThat(tokens.prove("", List.of("staff 1"))).isFalse();
        assertThat(tokens.prove("Ä not base64", List.of("staff 1"))).isFalse();
    }

    @Test
    void everyPasswordFieldOfTheTemplatesIsKnownSoThatNoneIsCarriedAlong() throws IOException {
        Pattern name = Pattern.compile("name=\"([^\"]+)\"");
        try (Stream<Path> files = Files.walk(Path.of("templates"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".html")).toList()) {
                PASSWORD.matcher(Files.readString(file)).results().map(m -> name.matcher(m.group()))
                    .filter(m -> m.find())
                    .forEach(m -> assertThat(UnsentForm.SECRETS).as(file.toString()).contains(m.group(1)));
            }
        }
    }

    @Test
    void noTemplateHasAPasswordFieldOfItsOwnMaking() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("templates"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".html")).toList()) {
                assertThat(Files.readString(file)).as(file.toString()).doesNotContain("<input type=\"password\"");
            }
        }
    }
}
