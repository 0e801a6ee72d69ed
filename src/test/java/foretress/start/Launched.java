package foretress.start;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The packaged program as a process of its own, as an operator starts it; with the quick compiler alone, since it never runs for long. */
public class Launched implements AutoCloseable {
    public static final Path JAR = Path.of("target/quarkus-app/quarkus-run.jar").toAbsolutePath();
    /** Built for PostgreSQL, in the phase before the tests that start it. */
    public static final Path POSTGRES_JAR = Path.of("target/quarkus-app-postgres/quarkus-run.jar").toAbsolutePath();
    private static final long PATIENCE_SECONDS = 180;
    private static final Pattern INVITED =
        Pattern.compile(".*born (\\d+)-(\\d+)-(\\d+).*https?://[^/]+(/i/\\S+).*");

    private final Process process;
    private final List<String> out = Collections.synchronizedList(new ArrayList<>());
    private final List<String> err = Collections.synchronizedList(new ArrayList<>());
    public final int port;

    private Launched(Process process, int port) {
        this.process = process;
        this.port = port;
        follow(new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8)), out);
        follow(new BufferedReader(new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8)), err);
    }

    private static void follow(BufferedReader reader, List<String> lines) {
        var thread = new Thread(() -> {
            try {
                reader.lines().forEach(lines::add);
            } catch (UncheckedIOException closed) {
                // the process is gone, and with it the rest of what it said
            }
        });
        thread.setDaemon(true);
        thread.start();
    }

    public static boolean isPackaged() {
        return Files.exists(JAR);
    }

    /** @param environment added to a bare one, in which QUARKUS_HTTP_PORT is a free port */
    public static Launched in(Path folder, Map<String, String> environment) throws IOException {
        return in(JAR, folder, environment);
    }

    /** @param words a command and what belongs to it */
    public static Launched command(Path folder, Map<String, String> environment, String... words) throws IOException {
        return in(JAR, folder, environment, words);
    }

    public static Launched in(Path jar, Path folder, Map<String, String> environment, String... words)
        throws IOException {
        ProcessBuilder builder = new ProcessBuilder(ProcessHandle.current().info().command().orElse("java"), "-Xmx300m",
            "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-jar", jar.toString())
            .directory(folder.toFile());
        builder.command().addAll(List.of(words));
        builder.environment().keySet().removeIf(name -> name.startsWith("QUARKUS_") || name.startsWith("FORETRESS_"));
        builder.environment().remove("JAVA_TOOL_OPTIONS"); // the machine says on standard error that it picked them up
        int port = freePort();
        builder.environment().put("QUARKUS_HTTP_PORT", Integer.toString(port));
        builder.environment().putAll(environment);
        return new Launched(builder.start(), port);
    }

    public static int freePort() throws IOException {
        try (var socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    public Launched untilReady() throws InterruptedException {
        untilSaid("ready at ");
        return this;
    }

    /** The first line on standard output that holds this, once it is there. */
    public String untilSaid(String part) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (System.nanoTime() < end) {
            Optional<String> line = said(part);
            if (line.isPresent()) {
                return line.get();
            }
            if (!process.isAlive()) {
                throw new IllegalStateException("ended with " + process.exitValue() + ": " + out + err);
            }
            Thread.sleep(50);
        }
        throw new IllegalStateException("did not say \"" + part + "\" in time: " + out + err);
    }

    public int exitCode() throws InterruptedException {
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            throw new IllegalStateException("still running: " + out + err);
        }
        Thread.sleep(100); // what it said last is still on its way
        return process.exitValue();
    }

    /** The first line on standard output that holds this. */
    public Optional<String> said(String part) {
        synchronized (out) {
            return out.stream().filter(line -> line.contains(part)).findFirst();
        }
    }

    /** A client of the demo, as the start says how to come in. @param born day, month, year as fields of the door */
    public record Invited(String link, Map<String, String> born) {}

    public Invited invited(String name) {
        Matcher said = INVITED.matcher(said(name).orElseThrow());
        if (!said.matches()) {
            throw new IllegalStateException("no link for " + name);
        }
        return new Invited(said.group(4), Map.of("day", said.group(3), "month", said.group(2), "year", said.group(1)));
    }

    public List<String> out() {
        return List.copyOf(out);
    }

    public List<String> err() {
        return List.copyOf(err);
    }

    public HttpResponse<String> get(String path) {
        try {
            return HttpClient.newHttpClient().send(
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path)).build(),
                HttpResponse.BodyHandlers.ofString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** As a power button does: no farewell. */
    public void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(30, TimeUnit.SECONDS)) {
                process.destroyForcibly().waitFor();
            }
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
