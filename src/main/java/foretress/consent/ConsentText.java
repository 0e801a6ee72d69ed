package foretress.consent;

import foretress.assessment.Weight;
import foretress.knowledge.Sha256;
import foretress.questionnaire.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The text the client reads and signs. Made once: the page shows it, the document prints it, the hash is taken of it.
 *
 * @param language BCP 47 tag of the words
 * @param version the version of the wording, the date it was last changed
 * @param salt stands in the first line, so that the hash can be tried out by nobody but who holds the text; may be empty
 */
public record ConsentText(String language, String version, String salt, String title, List<Section> sections) {

    public ConsentText {
        title = Canonical.line(title);
        sections = List.copyOf(sections);
    }

    /** A part of the text under its own heading; the id is the same in every language. */
    public record Section(Part part, String heading, List<Line> lines) {
        public Section {
            heading = Canonical.line(heading);
            lines = List.copyOf(lines);
        }
    }

    /** The parts in the order they are read; particulars stand under the title and have no heading of their own. */
    public enum Part {
        PARTICULARS, STATEMENTS, FOUND, TESTS, CAUTIONS, STRAND, ANSWERED, TAKE_BACK, URGENT;

        /** The part's name in addresses, attributes and style sheets. */
        public String id() {
            return Code.of(this);
        }
    }

    /** One line of a part. Its kind says how it is set, {@link #plain()} how it is hashed. */
    public sealed interface Line {
        String plain();

        record Paragraph(String text) implements Line {
            public Paragraph {
                text = Canonical.line(text);
            }

            @Override
            public String plain() {
                return text;
            }
        }

        /** A heading inside a part: the topic of the answers that follow. */
        record Topic(String text) implements Line {
            public Topic {
                text = Canonical.line(text);
            }

            @Override
            public String plain() {
                return text;
            }
        }

        /** A label and what belongs to it: particulars, answers, a test and its limits. */
        record Pair(String label, String value) implements Line {
            public Pair {
                label = Canonical.line(label);
                value = Canonical.line(value);
            }

            @Override
            public String plain() {
                return label + '\t' + value;
            }
        }

        /** Agreed to by an act of its own; the id names that act in forms and in the evidence. */
        record Statement(int number, String id, String text) implements Line {
            public Statement {
                text = Canonical.line(text);
            }

            @Override
            public String plain() {
                return number + "\t" + text;
            }
        }

        /** A finding: the shape of its weight, the word for it, what was found. */
        record Finding(Weight weight, String word, String text) implements Line {
            public Finding {
                word = Canonical.line(word);
                text = Canonical.line(text);
            }

            @Override
            public String plain() {
                return word + '\t' + text;
            }
        }
    }

    public static ConsentText of(ConsentInput input, ConsentSentences words) {
        var writer = new ConsentWriter(input, words);
        return input.purpose() == ConsentInput.Purpose.SKIN_TEST ? writer.writeSkinTest() : writer.write();
    }

    /** What the client agrees to one by one. */
    public List<Line.Statement> statements() {
        return sections.stream().flatMap(section -> section.lines().stream())
            .flatMap(line -> line instanceof Line.Statement statement ? Stream.of(statement) : Stream.empty())
            .toList();
    }

    /** The whole text, plain: language, version and salt, title, then every heading and line, parts parted by an empty line. */
    public String canonical() {
        ArrayList<String> lines =
            new ArrayList<>(List.of(language + '\t' + version + (salt.isEmpty() ? "" : "\t" + salt), title));
        for (Section section : sections) {
            lines.add("");
            if (!section.heading().isEmpty()) {
                lines.add(section.heading());
            }
            section.lines().forEach(line -> lines.add(line.plain()));
        }
        return Canonical.text(String.join("\n", lines) + "\n");
    }

    /** SHA-256 of {@link #canonical()} in UTF-8, as 64 hexadecimal digits. */
    public String sha256() {
        return Sha256.of(canonical());
    }
}
