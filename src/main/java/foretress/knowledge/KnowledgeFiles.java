package foretress.knowledge;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/** The knowledge files as text, by path below the knowledge folder, in the order of their paths. */
record KnowledgeFiles(SortedMap<String, String> byPath) {
    private static final String FOLDER = "knowledge/";
    /** Stands in every knowledge folder; where it is found, the others are. */
    private static final String LANDMARK = FOLDER + "facts.yaml";

    KnowledgeFiles {
        byPath = new TreeMap<>(byPath);
    }

    /** From the class path, be it a folder or a jar. */
    static KnowledgeFiles ofClassPath() {
        ClassLoader loader = Thread.currentThread().getContextClassLoader();
        URL landmark = loader == null ? null : loader.getResource(LANDMARK);
        if (landmark == null) {
            landmark = KnowledgeFiles.class.getClassLoader().getResource(LANDMARK);
        }
        if (landmark == null) {
            throw new IllegalStateException("the class path holds no " + LANDMARK);
        }
        try {
            return landmark.openConnection() instanceof JarURLConnection jar ? ofJar(jar)
                : ofFolder(Path.of(URI.create(landmark.toString())).getParent());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static KnowledgeFiles ofFolder(Path folder) {
        SortedMap<String, String> files = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : (Iterable<Path>) paths.filter(Files::isRegularFile)::iterator) {
                files.put(folder.relativize(path).toString().replace('\\', '/'), Files.readString(path));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new KnowledgeFiles(files);
    }

    private static KnowledgeFiles ofJar(JarURLConnection connection) throws IOException {
        connection.setUseCaches(false);
        SortedMap<String, String> files = new TreeMap<>();
        try (JarFile jar = connection.getJarFile()) {
            Predicate<JarEntry> wanted = e -> !e.isDirectory() && e.getName().startsWith(FOLDER);
            for (JarEntry entry : (Iterable<JarEntry>) jar.stream().filter(wanted)::iterator) {
                var text = new String(jar.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
                files.put(entry.getName().substring(FOLDER.length()), text);
            }
        }
        return new KnowledgeFiles(files);
    }

    KnowledgeFiles with(String path, String text) {
        SortedMap<String, String> more = new TreeMap<>(byPath);
        more.put(path, text);
        return new KnowledgeFiles(more);
    }

    /** The files of a folder, or the file of that very name. */
    Map<String, String> under(String path) {
        Map<String, String> found = new TreeMap<>(byPath);
        found.keySet().removeIf(name -> !name.equals(path) && !name.startsWith(path + "/"));
        return found;
    }

    /** SHA-256 over every path and its bytes, in the order of the paths: the same knowledge has the same hash everywhere. */
    String hash() {
        MessageDigest digest = Sha256.begin();
        byPath.forEach((path, text) -> {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            digest.update("%s %d\n".formatted(path, bytes.length).getBytes(StandardCharsets.UTF_8));
            digest.update(bytes);
        });
        return Sha256.end(digest);
    }
}
