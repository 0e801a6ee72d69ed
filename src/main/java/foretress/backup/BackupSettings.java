package foretress.backup;

import jakarta.inject.Singleton;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Where backups go, with which key, how often, and how many stay. */
@Singleton
class BackupSettings {
    private final Optional<Path> folder;
    private final Optional<String> key;
    private final int kept;
    private final int hours;

    BackupSettings(@ConfigProperty(name = "foretress.backups") Optional<String> folder,
        @ConfigProperty(name = "foretress.backup-key") Optional<String> key,
        @ConfigProperty(name = "foretress.backups-kept", defaultValue = "14") int kept,
        @ConfigProperty(name = "foretress.backup-hours", defaultValue = "24") int hours) {
        this.folder = folder.map(Path::of);
        this.key = key;
        this.kept = kept;
        this.hours = hours;
    }

    Optional<BackupShelf> shelf() {
        return folder.map(where -> new BackupShelf(where, kept));
    }

    Optional<BackupKey> key() {
        return key.map(BackupKey::new);
    }

    Duration every() {
        return Duration.ofHours(Math.max(1, hours));
    }
}
