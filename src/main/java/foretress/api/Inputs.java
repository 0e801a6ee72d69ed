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

    /** What one input holds, read when it is asked for: a bad one keeps no other from being read. */
    interface Input {
        /** @throws Refused when it cannot be read, with a sentence that says why */
        byte[] bytes();
    }

    /**
     * Every input by its name, in the order given, those of a folder by name.
     *
     * @param folders a folder stands for the files in it; else it cannot be read
     */
    Map<String, Input> named(List<Path> paths, boolean folders) throws IOException {
        Map<String, Input> named = new LinkedHashMap<>();
        for (Path path : paths.isEmpty() ? List.of(Path.of(STANDARD)) : paths) {
            if (path.toString().equals(STANDARD)) {
                named.put(STANDARD, () -> read(standard, STANDARD));
            } else if (folders && Files.isDirectory(path)) {
                inside(path, named);
            } else {
                named.put(path.toString(), () -> file(path));
            }
        }
        return named;
    }

    private static void inside(Path folder, Map<String, Input> named) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile).filter(Inputs::isOurs)
                .sorted()::iterator) {
                named.put(file.toString(), () -> file(file));
            }
        }
    }

    private static boolean isOurs(Path file) {
        return isCases(file.toString()) || file.toString().endsWith(REQUEST);
    }

    static boolean isCases(String name) {
        return CASES.stream().anyMatch(name::endsWith);
    }

    private static byte[] file(Path file) {
        if (!Files.exists(file)) {
            throw new Refused(400, "There is no file %s.".formatted(file), List.of());
        }
        if (Files.isDirectory(file)) {
            throw new Refused(400, "It is a folder; this command reads files.", List.of());
        }
        try (InputStream in = Files.newInputStream(file)) {
            return read(in, file.toString());
        } catch (IOException e) {
            throw new Refused(400, "It cannot be read: %s".formatted(e.getMessage()), List.of());
        }
    }

    private static byte[] read(InputStream in, String name) {
        try {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new Refused(413, "It is larger than %d bytes, the most that is read.".formatted(MOST_BYTES),
                    List.of());
            }
            return bytes;
        } catch (IOException e) {
            throw new Refused(400, "%s cannot be read: %s".formatted(name, e.getMessage()), List.of());
        }
    }

    /** @throws Refused when nothing is in it, or more letters than are read at once */
    static String text(byte[] bytes, int most) {
        String text = text(bytes).strip();
        if (text.isEmpty()) {
            throw new Refused(400, "There is nothing in it to read.", List.of());
        }
        if (text.length() > most) {
            throw new Refused(413, "It holds %d letters, and at most %d are read at once; part it in two."
                .formatted(text.length(), most), List.of());
        }
        return text;
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
