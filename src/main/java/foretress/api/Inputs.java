package foretress.api;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What a command was given to read: files, folders of them, or standard input where there is none or a hyphen. */
record Inputs(InputStream standard) {
    static final String STANDARD = "-";
    private static final int MOST_BYTES = 16 * 1024 * 1024;
    private static final List<String> CASES = List.of(".yaml", ".yml");
    private static final String REQUEST = ".json";

    /** The bytes of every input by its name, in the order given, those of a folder by name. */
    Map<String, byte[]> bytes(List<Path> paths) throws IOException {
        Map<String, byte[]> read = new LinkedHashMap<>();
        for (Path path : paths.isEmpty() ? List.of(Path.of(STANDARD)) : paths) {
            if (path.toString().equals(STANDARD)) {
                read.put(STANDARD, limited(standard, STANDARD));
            } else if (Files.isDirectory(path)) {
                inside(path, read);
            } else {
                read.put(path.toString(), file(path));
            }
        }
        return read;
    }

    private static void inside(Path folder, Map<String, byte[]> read) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile).filter(Inputs::isOurs)
                .sorted()::iterator) {
                read.put(file.toString(), file(file));
            }
        }
    }

    private static boolean isOurs(Path file) {
        return isCases(file.toString()) || file.toString().endsWith(REQUEST);
    }

    static boolean isCases(String name) {
        return CASES.stream().anyMatch(name::endsWith);
    }

    private static byte[] file(Path file) throws IOException {
        if (!Files.exists(file)) {
            throw new Refused(400, "There is no file %s.".formatted(file), List.of());
        }
        try (InputStream in = Files.newInputStream(file)) {
            return limited(in, file.toString());
        }
    }

    private static byte[] limited(InputStream in, String name) throws IOException {
        byte[] bytes = in.readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            throw new Refused(413, "%s is larger than %d bytes".formatted(name, MOST_BYTES), List.of());
        }
        return bytes;
    }

    /** @throws Refused when it is not UTF-8 */
    static String text(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            throw new Refused(400, "A file's bytes are not UTF-8.", List.of());
        }
    }
}
