package foretress.knowledge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A value in a YAML 1.2 file that knows where it stands. Every scalar is text: {@code no} stays a word and a date stays as written.
 *
 * <p>Two ways to object: {@link #complain} notes the fault and goes on; {@link #refuse} gives the exception that leaves
 * the entry being read. {@link #each} catches it, so that one bad entry does not hide the faults of the next.
 */
final class Yaml {
    private final Node node;
    private final Source source;

    private record Source(String file, List<String> lines, Complaints complaints) {
        String line(int number) {
            return number < lines.size() ? lines.get(number) : "";
        }
    }

    /** Leaves the entry being read; the complaint is noted already. */
    static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Refused(String message) {
            super(message, null, false, false);
        }
    }

    private Yaml(Node node, Source source) {
        this.node = node;
        this.source = source;
    }

    /** The one document of a file; empty when the file is blank or is no YAML, which is complained about. */
    static Optional<Yaml> read(String file, String text, Complaints complaints) {
        var source = new Source(file, text.lines().toList(), complaints);
        try {
            LoadSettings settings = LoadSettings.builder().setLabel(file).setUseMarks(true).build();
            Optional<Node> root = new Compose(settings).composeString(text);
            if (root.isEmpty()) {
                complaints.add(new Complaint(file, 1, 1, 1, "this file is empty", ""));
            }
            return root.map(n -> new Yaml(n, source));
        } catch (MarkedYamlEngineException e) {
            complaints.add(syntax(e, source));
        } catch (YamlEngineException e) {
            complaints.add(new Complaint(file, 1, 1, 1, "this is not YAML: " + e.getMessage(), source.line(0)));
        }
        return Optional.empty();
    }

    private static Complaint syntax(MarkedYamlEngineException e, Source source) {
        int line = e.getProblemMark().map(Mark::getLine).orElse(0);
        int column = e.getProblemMark().map(Mark::getColumn).orElse(0);
        return new Complaint(source.file, line + 1, column + 1, 1, "this is not YAML: " + e.getProblem(),
            source.line(line));
    }

    // -- reading

    String text() {
        if (!(node instanceof ScalarNode scalar)) {
            throw refuse("one word or sentence belongs here");
        }
        if (scalar.getValue().isBlank()) {
            throw refuse("something is missing here");
        }
        return scalar.getValue();
    }

    boolean isText() {
        return node instanceof ScalarNode;
    }

    boolean isList() {
        return node instanceof SequenceNode;
    }

    List<Yaml> list() {
        if (!(node instanceof SequenceNode sequence)) {
            throw refuse("a list belongs here");
        }
        return sequence.getValue().stream().map(this::child).toList();
    }

    List<String> texts() {
        return list().stream().map(Yaml::text).toList();
    }

    /** A list, or a single value meant as a list of one. */
    List<Yaml> listOrOne() {
        return isList() ? list() : List.of(this);
    }

    /** Fields in the order written, by name. */
    Map<String, Yaml> fields() {
        Map<String, Yaml> fields = new LinkedHashMap<>();
        for (Map.Entry<Yaml, Yaml> field : pairs()) {
            String name = field.getKey().text();
            if (fields.putIfAbsent(name, field.getValue()) != null) {
                field.getKey().complain("'%s' stands here twice".formatted(name));
            }
        }
        return fields;
    }

    /** Fields with their names as values that know where they stand. */
    List<Map.Entry<Yaml, Yaml>> pairs() {
        if (!(node instanceof MappingNode mapping)) {
            throw refuse("names with values belong here");
        }
        List<Map.Entry<Yaml, Yaml>> pairs = new ArrayList<>();
        for (NodeTuple tuple : mapping.getValue()) {
            pairs.add(Map.entry(child(tuple.getKeyNode()), child(tuple.getValueNode())));
        }
        return pairs;
    }

    /** Complains about every field that is none of these, and hands itself back. */
    Yaml only(String... known) {
        List<String> names = Arrays.asList(known);
        for (Map.Entry<Yaml, Yaml> field : pairs()) {
            field.getKey().oneOfNames(names, "field");
        }
        return this;
    }

    Yaml at(String name) {
        return maybe(name).orElseThrow(() -> refuse("'%s' is missing".formatted(name)));
    }

    Optional<Yaml> maybe(String name) {
        return Optional.ofNullable(fields().get(name));
    }

    boolean yes(String name) {
        return maybe(name).map(Yaml::yes).orElse(false);
    }

    boolean yes() {
        String said = text();
        if (!said.equals("yes") && !said.equals("no")) {
            throw refuse("yes or no belongs here, not '%s'".formatted(said));
        }
        return said.equals("yes");
    }

    int number(int least, int most) {
        String said = text();
        try {
            int number = Integer.parseInt(said);
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException e) {
            // falls through to the same complaint: it says what belongs here
        }
        throw refuse("a whole number from %d to %d belongs here, not '%s'".formatted(least, most, said));
    }

    /** The meaning of a word out of a known set. */
    <T> T oneOf(Map<String, T> meanings, String kind) {
        oneOf(meanings.keySet(), kind);
        return meanings.get(text());
    }

    /** The text, which must be one of the known ones. */
    String oneOf(Collection<String> known, String kind) {
        if (!oneOfNames(known, kind)) {
            throw new Refused(unknown(text(), known, kind));
        }
        return text();
    }

    private boolean oneOfNames(Collection<String> known, String kind) {
        boolean fine = known.contains(text());
        if (!fine) {
            complain(unknown(text(), known, kind));
        }
        return fine;
    }

    private static String unknown(String word, Collection<String> known, String kind) {
        String hint = Nearest.hint(word, known);
        String choice = hint.isEmpty() && known.size() <= 12
            ? "; known: " + known.stream().sorted().collect(Collectors.joining(", ")) : hint;
        return "there is no %s '%s'%s".formatted(kind, word, choice);
    }

    /** Reads every entry of a list; an entry that is refused is left out, its complaint kept. */
    <T> List<T> each(Function<Yaml, T> reader) {
        List<T> read = new ArrayList<>();
        trying(whole -> whole.list().forEach(entry -> entry.trying(e -> read.add(reader.apply(e)))));
        return read;
    }

    /** Does something with this value; a refusal ends it, the complaint is kept. */
    void trying(Consumer<Yaml> reader) {
        try {
            reader.accept(this);
        } catch (Refused e) {
            // noted where it was refused
        }
    }

    // -- objecting

    void complain(String message) {
        source.complaints.add(complaint(message));
    }

    Refused refuse(String message) {
        Complaint complaint = complaint(message);
        source.complaints.add(complaint);
        return new Refused(message);
    }

    /** A complaint about some letters inside this one-line text, counted from 0; about its beginning when it spans lines. */
    void complainInside(int offset, int width, String message) {
        boolean oneLine = end().getLine() == start().getLine();
        boolean quoted = node instanceof ScalarNode s && !s.isPlain();
        int column = start().getColumn() + (oneLine ? offset + (quoted ? 1 : 0) : 0);
        source.complaints
            .add(new Complaint(source.file, start().getLine() + 1, column + 1, oneLine ? width : 1, message,
                source.line(start().getLine())));
    }

    private Complaint complaint(String message) {
        int line = start().getLine();
        boolean oneLine = end().getLine() == line && node instanceof ScalarNode;
        int width = oneLine ? end().getColumn() - start().getColumn() : 1;
        return new Complaint(source.file, line + 1, start().getColumn() + 1, Math.max(1, width), message,
            source.line(line));
    }

    private Mark start() {
        return node.getStartMark().orElseThrow();
    }

    private Mark end() {
        return node.getEndMark().orElseThrow();
    }

    private Yaml child(Node child) {
        return new Yaml(child, source);
    }
}
