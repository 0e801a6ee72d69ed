package foretress.web;

import io.quarkus.arc.profile.IfBuildProfile;
import io.quarkus.dev.console.DevConsoleManager;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.stream.Stream;

/**
 * In development mode only: templates and knowledge stand outside the folders the framework watches, so changed files are copied
 * before each of its looks for changes, and application.properties is touched, which makes it check and load everything again.
 */
@IfBuildProfile("dev")
@Singleton
class DevTemplates {
    private static final String DONE = "foretress-templates";
    private static final Path TOUCHED = Path.of("src/main/resources/application.properties");
    private static final Map<Path, Path> COPIED = Map.of(
        Path.of("templates"), Path.of("target/classes/templates"),
        Path.of("src/main/knowledge"), Path.of("target/classes/knowledge"));

    /** The step outlives reloads, so it is added once. */
    void watch(@Observes StartupEvent event) {
        if (DevConsoleManager.getGlobal(DONE) != null) {
            return;
        }
        DevConsoleManager.setGlobal(DONE, true);
        DevConsoleManager.getHotReplacementContext().addPreScanStep(DevTemplates::copyChanged);
    }

    private static void copyChanged() {
        try {
            for (Map.Entry<Path, Path> folder : COPIED.entrySet()) {
                copyChanged(folder.getKey(), folder.getValue());
                removeGone(folder.getKey(), folder.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void copyChanged(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                copyIfNewer(file, to.resolve(from.relativize(file)));
            }
        }
    }

    private static void copyIfNewer(Path file, Path copy) throws IOException {
        FileTime edited = Files.getLastModifiedTime(file);
        if (Files.exists(copy) && Files.getLastModifiedTime(copy).compareTo(edited) >= 0) {
            return;
        }
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.COPY_ATTRIBUTES);
        Files.setLastModifiedTime(TOUCHED, edited);
    }

    private static void removeGone(Path from, Path to) throws IOException {
        if (Files.notExists(to)) {
            return;
        }
        try (Stream<Path> copies = Files.walk(to)) {
            for (Path copy : copies.filter(Files::isRegularFile).toList()) {
                if (Files.notExists(from.resolve(to.relativize(copy)))) {
                    Files.delete(copy);
                }
            }
        }
    }
}
