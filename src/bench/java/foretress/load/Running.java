package foretress.load;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A packaged program running as a process of its own, with the settings for Java that the guide gives, and what the system says of it. */
final class Running implements AutoCloseable {
    private static final long PATIENCE_SECONDS = 120;
    private static final double TICKS_A_SECOND = 100;
    /** In the process's line, after its name: processor time of its own and of the system for it. */
    private static final int OWN = 11;
    private static final int SYSTEM = 12;

    final int port;
    final double startSeconds;
    private final Process process;

    private Running(Process process, int port, double startSeconds) {
        this.process = process;
        this.port = port;
        this.startSeconds = startSeconds;
    }

    static Running start(Path jar, Path folder, int port, Map<String, String> environment)
        throws IOException, InterruptedException {
        Files.createDirectories(folder);
        ProcessBuilder builder =
            new ProcessBuilder("java", "-jar", jar.toAbsolutePath().toString()).directory(folder.toFile());
        builder.environment().keySet().removeIf(name -> name.startsWith("QUARKUS_") || name.startsWith("FORETRESS_"));
        builder.environment().putAll(environment);
        builder.environment().put("JDK_JAVA_OPTIONS", settings() + " " + System.getProperty("load.java", ""));
        builder.environment().put("QUARKUS_HTTP_PORT", "" + port);
        builder.redirectErrorStream(true).redirectOutput(folder.resolve("log").toFile());
        long from = System.nanoTime();
        Process process = builder.start();
        Runtime.getRuntime().addShutdownHook(new Thread(process::destroyForcibly));
        awaitReady(process, port, folder);
        return new Running(process, port, Duration.ofNanos(System.nanoTime() - from).toMillis() / 1000.0);
    }

    /** As the guide has them, so that what is measured is what is advised. */
    static String settings() throws IOException {
        Matcher said =
            Pattern.compile("JDK_JAVA_OPTIONS='([^']+)'").matcher(Files.readString(Path.of("docs/guide/run-it.md")));
        if (!said.find()) {
            throw new IllegalStateException("docs/guide/run-it.md names no JDK_JAVA_OPTIONS");
        }
        return said.group(1);
    }

    private static void awaitReady(Process process, int port, Path folder) throws IOException, InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!answers(port)) {
            if (!process.isAlive() || System.nanoTime() > end) {
                throw new IllegalStateException("it did not start: " + Files.readString(folder.resolve("log")));
            }
            Thread.sleep(50);
        }
    }

    private static boolean answers(int port) {
        try (Wire wire = new Wire(port)) {
            return wire.get("/", "").status() < 500;
        } catch (IOException notYet) {
            return false;
        }
    }

    /** Processor seconds until now, of the process with all its threads, a hundredth at a time. */
    double cpuSeconds() throws IOException {
        String stat = Files.readString(proc("stat"));
        String[] after = stat.substring(stat.lastIndexOf(')') + 2).split(" ");
        return (Long.parseLong(after[OWN]) + Long.parseLong(after[SYSTEM])) / TICKS_A_SECOND;
    }

    /** What of it is in memory now, in MB of a million bytes. */
    long residentMb() throws IOException {
        String line = Files.readAllLines(proc("status")).stream().filter(l -> l.startsWith("VmRSS:")).findFirst()
            .orElseThrow();
        return Long.parseLong(line.replaceAll("\\D", "")) * 1024 / 1_000_000;
    }

    private Path proc(String file) {
        return Path.of("/proc", "" + process.pid(), file);
    }

    @Override
    public void close() {
        process.destroy();
        process.onExit().completeOnTimeout(process, PATIENCE_SECONDS, TimeUnit.SECONDS).join().destroyForcibly();
    }
}
