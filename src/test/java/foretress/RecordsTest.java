package foretress;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Whoever reads a record must be able to keep it in mind; a longer one holds several ideas, and each has a name. */
class RecordsTest {
    private static final Path CLASSES = Path.of("target/classes");
    private static final int MOST_COMPONENTS = 12;

    private static List<Class<?>> records() throws IOException {
        try (Stream<Path> files = Files.walk(CLASSES.resolve("foretress"))) {
            return files.map(CLASSES::relativize).map(Path::toString).filter(file -> file.endsWith(".class"))
                .<Class<?>>map(RecordsTest::load).filter(Class::isRecord).toList();
        }
    }

    private static Class<?> load(String file) {
        try {
            String name = file.substring(0, file.length() - ".class".length()).replace('/', '.');
            return Class.forName(name, false, RecordsTest.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    @DisplayName("No record has more than twelve components")
    void noRecordIsLongerThanOneCanKeepInMind() throws IOException {
        assertThat(records()).hasSizeGreaterThan(400).allSatisfy(type -> assertThat(type.getRecordComponents().length)
            .as(type.getName()).isLessThanOrEqualTo(MOST_COMPONENTS));
    }
}
