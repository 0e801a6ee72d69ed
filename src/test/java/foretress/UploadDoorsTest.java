package foretress;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.picture.Paper;
import foretress.picture.RedrawnPhoto;
import jakarta.ws.rs.Path;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("R64: there is one way in for every file")
class UploadDoorsTest {
    private static final java.nio.file.Path MAIN = java.nio.file.Path.of("src/main/java");

    private static final String UNREAD = "Upload.unread(";

    private static List<java.nio.file.Path> sources() throws IOException {
        try (Stream<java.nio.file.Path> files = Files.walk(MAIN)) {
            return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
        }
    }

    private static Stream<Method> methods(java.nio.file.Path source) {
        try {
            String name = MAIN.relativize(source).toString().replace('/', '.').replaceAll("\\.java$", "");
            return Arrays
                .stream(Class.forName(name, false, UploadDoorsTest.class.getClassLoader()).getDeclaredMethods());
        } catch (ClassNotFoundException e) {
            return Stream.empty();
        }
    }

    private static String address(Method method) {
        Path whole = method.getDeclaringClass().getAnnotation(Path.class);
        return whole.value() + method.getAnnotation(Path.class).value();
    }

    @Test
    void theseAreAllTheDoors() throws IOException {
        assertThat(sources().stream().flatMap(UploadDoorsTest::methods)
            .filter(method -> method.isAnnotationPresent(Path.class))
            .filter(method -> Arrays.asList(method.getParameterTypes()).contains(FileUpload.class))
            .map(UploadDoorsTest::address))
            .containsExactlyInAnyOrderElementsOf(UploadDoors.ALL.keySet());
    }

    @Test
    void onlyOneClassReadsAFileAndEveryOtherHandsItOn() throws IOException {
        for (java.nio.file.Path source : sources()) {
            String text = Files.readString(source);
            if (!source.endsWith("web/Upload.java")) {
                assertThat(text).as(source.toString()).doesNotContain("uploadedFile()", "filePath()",
                    "MultipartFormDataInput", "java.io.File;");
            }
            if (text.contains("FileUpload ") && !source.endsWith("web/Upload.java")) {
                assertThat(text).as(source.toString()).containsAnyOf("Upload.photo(", "Upload.paper(", UNREAD);
            }
            if (text.contains(UNREAD)) {
                assertThat(source.toString()).as("the seal is checked over the very bytes, and nothing of them is kept")
                    .endsWith("consent/VerifyPages.java");
            }
        }
    }

    /** Stores take these two only, and nobody but the room that looks into files can make one. */
    @Test
    void whatIsKeptWasMadeByThePipeline() {
        for (Class<?> kept : List.of(RedrawnPhoto.class, Paper.class)) {
            for (Constructor<?> made : kept.getDeclaredConstructors()) {
                assertThat(Modifier.isPublic(made.getModifiers())).as(kept.getName()).isFalse();
            }
        }
    }
}
