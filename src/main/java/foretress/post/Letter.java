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
 */
public record Letter(String to, String subject, List<String> paragraphs, Optional<Link> link, List<String> after,
                     List<String> from) {
    public record Link(String words, String address) {}

    public Letter {
        if (to.chars().anyMatch(Character::isISOControl) || subject.chars().anyMatch(Character::isISOControl))
            throw new IllegalArgumentException("A line break in an address or subject could add headers");
        paragraphs = List.copyOf(paragraphs);
        after = List.copyOf(after);
        from = List.copyOf(from);
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
