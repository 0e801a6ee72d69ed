package foretress.load;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The application beside the program: src/bench/bare, a build of its own of the same framework. */
final class Bare {
    private static final Path JAR = Path.of("target/bare/quarkus-app/quarkus-run.jar");

    private Bare() {}

    /** Built if it is not there yet, by the Maven that runs this. */
    static Path built() throws IOException, InterruptedException {
        if (!Files.exists(JAR)) {
            List<String> command = new ArrayList<>(List.of(System.getProperty("maven.home") + "/bin/mvn", "-B", "-ntp",
                "-q", "-f", "src/bench/bare/pom.xml", "-DskipTests", "package",
                "-Dquarkus.platform.version=" + System.getProperty("quarkus.platform.version")));
            if (Boolean.getBoolean("offline")) {
                command.add("-o");
            }
            int ended = new ProcessBuilder(command).inheritIO().start().waitFor();
            if (ended != 0) {
                throw new IllegalStateException("src/bench/bare does not build");
            }
        }
        return JAR;
    }
}
