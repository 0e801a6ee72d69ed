package foretress.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The folder with the backups. A file has its name only once it was read back, so what is there was good when it was laid there.
 *
 * @param kept how many stay; at least 1
 */
public record BackupShelf(Path folder, int kept) {
    private static final String BEGIN = "foretress-", END = ".backup";
    private static final DateTimeFormatter NAME =
        DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss-SSS").withZone(ZoneOffset.UTC);
    private static final String SHAPE = BEGIN + "[0-9]{8}-[0-9]{6}-[0-9]{3}\\" + END;

    public BackupShelf {
        if (kept < 1) {
            throw new IllegalArgumentException("at least one backup is kept, not " + kept);
        }
    }

    /** Where one that is taken now belongs. */
    public Path place(Instant now) {
        return folder.resolve(BEGIN + NAME.format(now) + END);
    }

    /** The newest first. */
    public List<Path> all() throws IOException {
        if (Files.notExists(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().matches(SHAPE))
                .sorted(Comparator.comparing((Path file) -> file.getFileName().toString()).reversed()).toList();
        }
    }

    public Optional<Instant> newest() throws IOException {
        return all().stream().findFirst().map(BackupShelf::takenAt);
    }

    private static Instant takenAt(Path file) {
        String name = file.getFileName().toString();
        return NAME.parse(name.substring(BEGIN.length(), name.length() - END.length()), Instant::from);
    }

    /** Takes away the oldest beyond those kept; anything else in the folder is left alone. */
    public void prune() throws IOException {
        List<Path> all = all();
        for (Path old : all.subList(Math.min(kept, all.size()), all.size())) {
            Files.delete(old);
        }
    }
}
