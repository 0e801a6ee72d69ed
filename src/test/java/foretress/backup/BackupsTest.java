package foretress.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("F9: the owner is warned when the last good backup is too old")
class BackupsTest {
    private static final Instant NOW = Instant.parse("2026-12-01T12:00:00Z");
    private static final Optional<String> KEY = Optional.of(Base64.getEncoder().encodeToString(new byte[32]));

    @TempDir Path folder;

    private BackupSettings settings(int hours) {
        return new BackupSettings(Optional.of(folder.toString()), KEY, 14, hours);
    }

    private Backups.Standing with(String... taken) throws Exception {
        for (String moment : taken) {
            Files.createFile(folder.resolve("foretress-" + moment + ".backup"));
        }
        return new Backups(null, null, Clock.fixed(NOW, ZoneOffset.UTC), null, null, settings(24)).standing();
    }

    @Test
    void withoutOneItIsLate() throws Exception {
        assertThat(with().late()).isTrue();
    }

    @Test
    void oneOfThisMorningIsGood() throws Exception {
        assertThat(with("20261201-030000-000").late()).isFalse();
    }

    @Test
    @DisplayName("a day and two hours for the writing are allowed, and not a second more")
    void theDayIsOver() throws Exception {
        assertThat(with("20261130-100000-000").late()).isFalse();
        Files.move(folder.resolve("foretress-20261130-100000-000.backup"),
            folder.resolve("foretress-20261130-095959-000.backup"));
        assertThat(with().late()).isTrue();
    }

    @Test
    @DisplayName("one that a wrong clock dated into the future is no good as a last one")
    void oneFromTheFuture() throws Exception {
        assertThat(with("20300101-000000-000").late()).isTrue();
    }

    @Test
    @DisplayName("no setting has a backup taken, and older ones pushed out, every few seconds")
    void theShortestScheduleIsAnHour() {
        assertThat(settings(0).every()).isEqualTo(settings(-5).every()).isEqualTo(Duration.ofHours(1));
        assertThat(settings(6).every()).isEqualTo(Duration.ofHours(6));
    }
}
