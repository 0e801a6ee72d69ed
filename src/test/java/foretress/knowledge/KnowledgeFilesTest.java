package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KnowledgeFilesTest {
    private final ClassLoader before = Thread.currentThread().getContextClassLoader();

    @AfterEach
    void putBack() {
        Thread.currentThread().setContextClassLoader(before);
    }

    @Test
    void theSameFilesAreFoundInAJarAsInAFolder(@TempDir Path folder) throws IOException {
        KnowledgeFiles files = KnowledgeFiles.ofFolder(Path.of("src/main/knowledge"));
        try (var jar = new URLClassLoader(new URL[] { jar(folder, files).toUri().toURL() }, null)) {
            Thread.currentThread().setContextClassLoader(jar);
            assertThat(KnowledgeFiles.ofClassPath().byPath()).isEqualTo(files.byPath()).hasSizeGreaterThan(20);
        }
    }

    @Test
    void theClassPathHoldsWhatTheFolderHolds() {
        assertThat(KnowledgeFiles.ofClassPath().hash())
            .isEqualTo(KnowledgeFiles.ofFolder(Path.of("src/main/knowledge")).hash());
    }

    private static Path jar(Path folder, KnowledgeFiles files) throws IOException {
        Path jar = folder.resolve("knowledge.jar");
        try (var out = new JarOutputStream(Files.newOutputStream(jar))) {
            for (Map.Entry<String, String> file : files.byPath().entrySet()) {
                out.putNextEntry(new JarEntry("knowledge/" + file.getKey()));
                out.write(file.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
        return jar;
    }
}
