package foretress;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Whoever reads a record or a class must be able to keep in mind what it is made of; a longer list holds several ideas, and each has a name. */
class RecordsTest {
    private static final Path CLASSES = Path.of("target/classes");
    private static final int MOST = 14;

    private static List<Class<?>> classes() throws IOException {
        try (Stream<Path> files = Files.walk(CLASSES.resolve("foretress"))) {
            return files.map(CLASSES::relativize).map(Path::toString).filter(file -> file.endsWith(".class"))
                .<Class<?>>map(RecordsTest::load).toList();
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
    @DisplayName("No record has more than fourteen components")
    void noRecordIsLongerThanOneCanKeepInMind() throws IOException {
        List<Class<?>> records = classes().stream().filter(Class::isRecord).toList();
        assertThat(records).hasSizeGreaterThan(400).allSatisfy(type -> assertThat(type.getRecordComponents().length)
            .as(type.getName()).isLessThanOrEqualTo(MOST));
    }

    @Test
    @DisplayName("No class is made of more than fourteen things")
    void noClassNeedsMoreThanOneCanKeepInMind() throws IOException {
        List<Constructor<?>> constructors = classes().stream().filter(type -> !type.isEnum())
            .<Constructor<?>>flatMap(type -> Stream.of(type.getDeclaredConstructors()))
            .filter(made -> !made.isSynthetic()).toList();
        assertThat(constructors).hasSizeGreaterThan(800).allSatisfy(
            made -> assertThat(made.getParameterCount()).as(made.toString()).isLessThanOrEqualTo(MOST));
    }
}
