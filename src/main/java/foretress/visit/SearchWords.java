package foretress.visit;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The words by which a client is found, and the words of a query made alike: names and e-mail by their beginnings, a
 * telephone number by any part of it, however it is spaced and whether or not a country's number stands before it.
 */
final class SearchWords {
    /** Letters kept of a word; a longer one is as good as its beginning. */
    private static final int LONGEST = 32;
    /** The shortest tail of a number that is kept. */
    private static final int SHORTEST_TAIL = 3;
    /** Digits of a number that stay the same whether it is dialled from here or from abroad (ITU-T E.164: 15 in all). */
    private static final int NATIONAL = 9;
    private static final Pattern PHONE = Pattern.compile("[+(]?[\\p{Nd}(][\\p{Nd} ()/.\\-]{2,}");

    private SearchWords() {}

    static Set<String> of(Client client) {
        Set<String> words = new LinkedHashSet<>();
        Arrays.stream(Folded.of(client.fullName()).split(" ")).flatMap(SearchWords::parts).forEach(words::add);
        client.email().map(Folded::of).ifPresent(mail -> {
            words.add(mail);
            parts(mail).forEach(words::add);
        });
        client.phone().map(SearchWords::digits).ifPresent(number -> tails(number).forEach(words::add));
        return words.stream().map(SearchWords::cut).filter(word -> !word.isEmpty())
            .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** What every client found must have a word beginning with; empty when nothing was asked. */
    static List<String> asked(String query) {
        String folded = Folded.of(query);
        Optional<String> number = number(folded);
        return number.map(List::of)
            .orElseGet(() -> Arrays.stream(folded.split(" ")).map(SearchWords::bare).map(SearchWords::cut)
                .filter(word -> !word.isEmpty()).distinct().toList());
    }

    /** Of "O’Neil-Smith": the whole without its marks, and each part. */
    private static Stream<String> parts(String word) {
        return Stream.concat(Stream.of(bare(word)), Arrays.stream(word.split("[^\\p{L}\\p{N}]+")))
            .filter(part -> !part.isEmpty());
    }

    /** An address keeps its marks; a name does without. */
    private static String bare(String word) {
        return word.contains("@") ? word : word.replaceAll("[^\\p{L}\\p{N}]+", "");
    }

    private static Optional<String> number(String folded) {
        if (!PHONE.matcher(folded).matches()) {
            return Optional.empty();
        }
        String digits = digits(folded);
        boolean abroad = folded.startsWith("+") || digits.startsWith("00");
        String rest = digits.replaceFirst("^0+(?=.)", "");
        return Optional.of(abroad && rest.length() > NATIONAL ? rest.substring(rest.length() - NATIONAL) : rest);
    }

    private static Stream<String> tails(String number) {
        return Stream.iterate(number, tail -> tail.length() >= SHORTEST_TAIL, tail -> tail.substring(1));
    }

    private static String digits(String text) {
        var digits = new StringBuilder();
        text.codePoints().filter(Character::isDigit).forEach(c -> digits.append(Character.digit(c, 10)));
        return digits.toString();
    }

    private static String cut(String word) {
        return ClientWord.first(LONGEST, word);
    }
}
