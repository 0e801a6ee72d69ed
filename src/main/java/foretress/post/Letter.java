package foretress.post;

import java.util.List;
import java.util.Optional;

/**
 * What a mail says. Nothing in it may tell of health, a product or a test: mail is read by others.
 *
 * @param to one address
 * @param paragraphs before the link, or all of them when there is none
 * @param link what to open, if anything
 * @param after what stands below the link
 * @param from the lines at the foot: who writes, and where they are
 * @param file to go with it, if any
 */
public record Letter(String to, String subject, List<String> paragraphs, Optional<Link> link, List<String> after,
    List<String> from, Optional<Attached> file) {
    public record Link(String words, String address) {}

    /** @param type its media type with parameters */
    public record Attached(String name, String type, String text) {}

    /** A letter without a file. */
    public Letter(String to, String subject, List<String> paragraphs, Optional<Link> link, List<String> after,
        List<String> from) {
        this(to, subject, paragraphs, link, after, from, Optional.empty());
    }

    public Letter {
        if (to.chars().anyMatch(Character::isISOControl) || subject.chars().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException("A line break in an address or subject could add headers");
        }
        paragraphs = List.copyOf(paragraphs);
        after = List.copyOf(after);
        from = List.copyOf(from);
        file = file == null ? Optional.empty() : file; // letters kept before there were files
    }

    /** The whole letter in plain text; a reader who sees nothing else misses nothing. */
    public String plain() {
        var text = new StringBuilder();
        paragraphs.forEach(p -> text.append(p).append("\n\n"));
        link.ifPresent(l -> text.append(l.words()).append(":\n").append(l.address()).append("\n\n"));
        after.forEach(p -> text.append(p).append("\n\n"));
        return text.append(String.join("\n", from)).append('\n').toString();
    }
}
