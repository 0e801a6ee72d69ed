package foretress.questionnaire;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The fields of a posted page and the mistakes found in them so far. */
final class AnswerForm {
    /** A mistake repeats what was said; nobody needs to see more of it than this. */
    private static final int REPEATED_LETTERS = 40;

    private final Map<String, List<String>> fields;
    private final List<AnswerMistake> mistakes = new ArrayList<>();

    AnswerForm(Map<String, List<String>> fields) {
        this.fields = fields;
    }

    List<String> all(String field) {
        return fields.getOrDefault(field, List.of()).stream().filter(v -> v != null && !v.isBlank()).toList();
    }

    /** The one value of a field; none when it is blank, and none with a mistake when it came several times. */
    Optional<String> one(String field) {
        if (fields.getOrDefault(field, List.of()).size() > 1) {
            return wrong(field, "doubled");
        }
        return all(field).stream().findFirst();
    }

    /** The one value of a field, which must be one of these codes. */
    Optional<String> code(String field, Collection<String> offered) {
        Optional<String> said = one(field);
        if (said.isPresent() && !offered.contains(said.get())) {
            return wrong(field, "not-offered", said.get());
        }
        return said;
    }

    /** Free words without what no hand types: control characters other than a new line or a tab, and halves of letters. */
    Optional<String> words(String field, int mostLetters) {
        Optional<String> said = one(field).map(AnswerForm::typed).filter(words -> !words.isEmpty());
        int letters = said.map(words -> words.codePointCount(0, words.length())).orElse(0);
        return letters > mostLetters ? wrong(field, "too-long", mostLetters + "", letters + "") : said;
    }

    private static String typed(String raw) {
        var kept = new StringBuilder(raw.length());
        raw.replace("\r\n", "\n").replace('\r', '\n').codePoints()
            .filter(letter -> letter == '\n' || letter == '\t' || !Character.isISOControl(letter))
            .map(letter -> Character.getType(letter) == Character.SURROGATE ? '\uFFFD' : letter)
            .forEach(kept::appendCodePoint);
        return kept.toString().strip();
    }

    /** Notes a mistake and gives none, so that a reader can return it. */
    <T> Optional<T> wrong(String field, String code, String... args) {
        mistakes.add(new AnswerMistake(field, code, List.of(args).stream().map(AnswerForm::shortened).toList()));
        return Optional.empty();
    }

    private static String shortened(String arg) {
        String plain = typed(arg);
        return plain.codePointCount(0, plain.length()) <= REPEATED_LETTERS ? plain
            : plain.substring(0, plain.offsetByCodePoints(0, REPEATED_LETTERS)) + "…";
    }

    int mistakesSoFar() {
        return mistakes.size();
    }

    List<AnswerMistake> mistakes() {
        return mistakes;
    }

    boolean blank(String... names) {
        return List.of(names).stream().allMatch(name -> all(name).isEmpty());
    }
}
