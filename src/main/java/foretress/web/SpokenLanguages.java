package foretress.web;

import jakarta.inject.Singleton;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The languages a client is spoken to in: English, in which the words were written, and each other whose words a named person has
 * read. The salon's room says which; a client who was spoken to in one before goes on in it.
 */
@Singleton
public class SpokenLanguages {
    private volatile List<String> tags = List.of(Supported.ORIGINAL);

    public void are(Predicate<String> read) {
        tags = Supported.TAGS.stream().filter(tag -> tag.equals(Supported.ORIGINAL) || read.test(tag)).toList();
    }

    public List<String> tags() {
        return tags;
    }

    /** As {@link Supported#match}, and spoken. */
    public Optional<String> match(String tag) {
        return Supported.match(tag).filter(tags::contains);
    }

    /** All of them under their own names, one of them the current one. */
    public List<Offered> offered(String current) {
        return Offered.of(tags, current);
    }
}
