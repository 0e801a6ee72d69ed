package foretress.owner;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.bench.BenchKind;
import foretress.note.NotedKind;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Whatever the program writes into the audit trail, the owner who reads Spanish reads in Spanish. */
class LedgerActsTest {
    private static final Pattern WRITES =
        Pattern.compile(
            "(?:ledger\\.(?:note|read)|byStaff\\.(?:looked|did)|AuditEvent|\\bnote|settle|become|return keep)\\([^;]*;"
                + "|\\b(?:SENT|REPLACED|TAKEN_BACK|DELETED|SEEN) = \"[a-z ']+\"");
    private static final Pattern QUOTED = Pattern.compile("\"([a-z][^\"\\\\]*)\"");
    private static final Set<String> ACTORS = Set.of("client", "server", "nobody");

    @Test
    @DisplayName("every act that any source file writes has its Spanish, and there is none for an act nobody writes")
    void everyActIsSaid() throws IOException {
        var spanish = new Properties();
        try (Reader in = Files.newBufferedReader(Path.of("src/main/resources/messages/acts_es.properties"))) {
            spanish.load(in);
        }
        Set<String> keys = written().map(LedgerActs::key).collect(Collectors.toCollection(TreeSet::new));
        assertThat(keys).hasSizeGreaterThan(100).contains("visit_booked", "noted_cut", "product_line_added",
            "photo_sent_by_the_client");
        assertThat(new TreeSet<>(spanish.stringPropertyNames())).isEqualTo(keys);
    }

    private static Stream<String> written() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/foretress"))) {
            return files.filter(file -> file.toString().endsWith(".java")).map(LedgerActsTest::read)
                .filter(
                    text -> text.contains("ledger.note(") || text.contains("byStaff.") || text.contains("ledger.read(")
                        || text.contains("new AuditEvent("))
                .flatMap(text -> WRITES.matcher(text).results().map(found -> found.group()))
                .flatMap(call -> QUOTED.matcher(call).results().map(found -> found.group(1)))
                .filter(act -> !ACTORS.contains(act)).flatMap(LedgerActsTest::kinds).toList().stream();
        }
    }

    /** What is noted and what is tested stands behind the colon as its own code. */
    private static Stream<String> kinds(String act) {
        return act.equals("noted: ") ? Arrays.stream(NotedKind.values()).map(kind -> act + kind.code())
            : act.endsWith(": ") ? Arrays.stream(BenchKind.values()).map(kind -> act + kind.code()) : Stream.of(act);
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
