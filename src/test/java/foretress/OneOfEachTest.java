package foretress;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Where the same thing stood in several places, one of them was weaker each time. Each complaint names file and line. */
class OneOfEachTest {
    private static final Path MAIN = Path.of("src/main/java/foretress");

    /** Lines with this outside these files. */
    private static List<String> elsewhere(String regex, Set<String> home) throws IOException {
        Pattern pattern = Pattern.compile(regex);
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(MAIN)) {
            for (Path file : files
                .filter(f -> f.toString().endsWith(".java") && !home.contains(MAIN.relativize(f).toString()))
                .toList()) {
                List<String> lines = Files.readAllLines(file);
                for (int i = 0; i < lines.size(); i++) {
                    if (pattern.matcher(lines.get(i)).find()) {
                        found.add(file + ":" + (i + 1) + " " + lines.get(i).strip());
                    }
                }
            }
        }
        return found;
    }

    @Test
    void textsAndPapersAreDigestedInOnePlace() throws IOException {
        assertThat(elsewhere("MessageDigest\\.getInstance", Set.of("knowledge/Sha256.java"))).isEmpty();
    }

    @Test
    void whatNobodyMayGuessIsMadeInOnePlace() throws IOException {
        assertThat(elsewhere("\\.nextBytes\\(",
            Set.of("web/RandomText.java", "salon/PasswordHash.java", "start/KeyFolder.java", "backup/Restore.java")))
            .as("salts and keys are no tokens").isEmpty();
    }

    @Test
    void aFormIsShownAgainInOneWay() throws IOException {
        assertThat(elsewhere("status\\(422\\)", Set.of("web/FormAgain.java"))).isEmpty();
    }

    @Test
    void noPageHasToRememberTheDevice() throws IOException {
        assertThat(elsewhere("\\.force\\(\\)", Set.of("vault/DurableActs.java"))).isEmpty();
    }

    @Test
    void recordsAreSealedAsJsonInOnePlace() throws IOException {
        assertThat(elsewhere("(eal|open)\\w*\\(.*(writeValue|readValue)|(writeValue|readValue)\\w*\\(.*\\.open\\(",
            Set.of("vault/SealedJson.java"))).isEmpty();
    }

    @Test
    void datesAreSaidInOnePlace() throws IOException {
        assertThat(elsewhere("DateTimeFormatter\\.of",
            Set.of("web/DateWords.java", "hair/StrandWords.java", "knowledge/AnswerWords.java",
                "owner/OwnerTrail.java", "demo/DemoPages.java", "backup/BackupShelf.java")))
            .as("quiet rooms and knowledge have theirs in knowledge's words; time stamps are figures").isEmpty();
    }

    @Test
    void triesAreCountedByOneBrake() throws IOException {
        assertThat(elsewhere("class \\w*Brake\\b", Set.of("web/Brake.java"))).isEmpty();
    }
}
