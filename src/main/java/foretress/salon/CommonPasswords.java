package foretress.salon;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The words and keyboard walks people reach for first; a list of our own, kept beside this class. */
final class CommonPasswords {
    private static final List<String> ALL = read();

    private CommonPasswords() {}

    static List<String> all() {
        return ALL;
    }

    private static List<String> read() {
        try (InputStream in = CommonPasswords.class.getResourceAsStream("common-passwords.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#")).map(String::strip).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
