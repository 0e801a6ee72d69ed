package foretress.card;

import foretress.Walker;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Follows every link from a page on and finds what is still said in English: words that no Spanish sentence has. */
final class EnglishLeft {
    private static final Pattern ENGLISH = Pattern.compile(
        "(?i)(?<![\\p{L}’'])(the|and|of|is|are|was|were|not|with|from|this|that|by|for|at|it|before|after|until|your|you|today|none"
            + "|January|February|March|April|June|July|August|September|October|November|December)(?![\\p{L}’'])");
    private static final int ALIKE = 2;
    /** Clients' own pages; titles of sources and names of time zones; languages side by side; what staff wrote of a look-up. May is Spanish too, as a short form. */
    private static final List<String> NOT_ONE_LANGUAGE =
        List.of("/i/", "/policy", "/salon", "/languages/", "/look-ups");
    /** A source is named as it was published; a rule's condition, folded behind its words, is code. */
    private static final Pattern AS_IT_IS =
        Pattern.compile("(Fuente|Lo que puede un servicio): .*|.*(==|[<>]=?|&&) .*");
    private static final List<String> SPOKEN = List.of("aria-label", "alt", "title", "placeholder");

    private final Walker walker;
    private final List<String> invented;
    private final Map<String, Integer> seen = new HashMap<>();
    private final Deque<String> ahead = new ArrayDeque<>();
    private final List<String> found = new ArrayList<>();

    /** @param invented what somebody typed, or the name of somebody or something, and stands as it is in every language */
    EnglishLeft(Walker walker, List<String> invented) {
        this.walker = walker;
        this.invented = invented;
    }

    List<String> from(String... starts) {
        ahead.addAll(List.of(starts));
        while (!ahead.isEmpty()) {
            String path = ahead.poll();
            if (seen.merge(path.replaceAll("[0-9a-f-]{36}|[0-9]+|[?#].*", "*"), 1, Integer::sum) <= ALIKE) {
                look(path);
            }
        }
        return found;
    }

    Set<String> pages() {
        return seen.keySet();
    }

    private void look(String path) {
        walker.open(path);
        if (!walker.response().contentType().contains("html")) {
            return;
        }
        Document page = walker.page().clone();
        page.select("a[href^=/]").stream().map(link -> link.attr("href"))
            .filter(href -> NOT_ONE_LANGUAGE.stream().noneMatch(href::startsWith))
            .forEach(ahead::add);
        page.select("script, style, [lang]:not(html)").remove();
        page.getAllElements().stream().flatMap(EnglishLeft::said).map(this::without)
            .filter(text -> !AS_IT_IS.matcher(text).matches()).filter(text -> ENGLISH.matcher(text).find())
            .forEach(text -> found.add(path + ": " + text));
    }

    private static Stream<String> said(Element element) {
        return Stream.concat(Stream.of(element.ownText()), SPOKEN.stream().map(element::attr));
    }

    private String without(String text) {
        return invented.stream().reduce(text, (left, typed) -> left.replace(typed, ""));
    }
}
