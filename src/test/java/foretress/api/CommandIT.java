package foretress.api;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.start.Launched;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The packaged program runs a command without a server, a database or keys")
class CommandIT {
    @TempDir Path folder;

    private record Ended(int status, String out, String err) {}

    @BeforeEach
    void packaged() {
        Assumptions.assumeTrue(Launched.isPackaged(),
            "NOT RUN: there is no " + Launched.JAR + "; run mvn package first");
    }

    private Ended run(String typed, String... arguments) throws Exception {
        List<String> line = new ArrayList<>(List.of(ProcessHandle.current().info().command().orElse("java"),
            "-XX:TieredStopAtLevel=1", "-jar", Launched.JAR.toString()));
        line.addAll(List.of(arguments));
        Path in = Files.writeString(folder.resolve("in.txt"), typed);
        File out = folder.resolve("out.txt").toFile();
        File err = folder.resolve("err.txt").toFile();
        Process process = new ProcessBuilder(line).directory(folder.toFile()).redirectInput(in.toFile())
            .redirectOutput(out).redirectError(err).start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        return new Ended(process.exitValue(), Files.readString(out.toPath()),
            withoutTheJvm(Files.readString(err.toPath())));
    }

    private static String withoutTheJvm(String said) {
        return String.join("\n", said.lines().filter(line -> !line.startsWith("Picked up")).toList());
    }

    @Test
    void everyCaseHolds() throws Exception {
        Ended ended = run("", "assess", Path.of("src/test/cases").toAbsolutePath().toString());
        assertThat(ended.status()).as(ended.err()).isZero();
        assertThat(ended.out()).contains(" cases, 0 failed");
        nothingWasMade();
    }

    @Test
    void aLabelComesFromStandardInputInAnyAlphabet() throws Exception {
        Ended ended = run("Aqua, Lead Acetate, Ørsterol Żółć", "read-label");
        assertThat(ended.status()).isZero();
        assertThat(ended.out().lines()).singleElement().asString().contains("301-04-2", "Żółć");
        assertThat(ended.err()).isEmpty();
    }

    @Test
    void whatIsNoCommandDoesNotStartTheServer() throws Exception {
        Ended ended = run("", "serve");
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.err()).contains("There is no command 'serve'");
        nothingWasMade();
    }

    private void nothingWasMade() throws IOException {
        try (Stream<Path> made = Files.list(folder)) {
            assertThat(made.map(p -> p.getFileName().toString())).containsExactlyInAnyOrder("in.txt", "out.txt",
                "err.txt");
        }
    }
}
