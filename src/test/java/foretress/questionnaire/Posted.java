package foretress.questionnaire;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Question.Keeps;
import foretress.questionnaire.Question.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Pages posted to the reader, and what is expected of it. */
final class Posted {
    static final LocalDate TODAY = LocalDate.of(2026, 3, 15);

    private Posted() {}

    static Question question(String id, Kind kind, String... options) {
        return new Question(id, kind, List.of(options), true, true, Set.of(), Map.of(), true, Keeps.THE_DAY, false);
    }

    static Question optional(String id, Kind kind, String... options) {
        return new Question(id, kind, List.of(options), false, false, Set.of(), Map.of(), false, Keeps.THE_DAY, false);
    }

    /** Field, value, field, value; a field named again holds several values. */
    static Map<String, List<String>> form(String... fieldsAndValues) {
        Map<String, List<String>> form = new LinkedHashMap<>();
        for (int i = 0; i < fieldsAndValues.length; i += 2) {
            form.computeIfAbsent(fieldsAndValues[i], f -> new ArrayList<>()).add(fieldsAndValues[i + 1]);
        }
        return form;
    }

    static FormReading read(Question question, String... fieldsAndValues) {
        return read(question, Answers.NONE, fieldsAndValues);
    }

    static FormReading read(Question question, Answers earlier, String... fieldsAndValues) {
        return new FormReader(TODAY).read(List.of(question), form(fieldsAndValues), earlier);
    }

    static void assertSays(FormReading reading, Answer answer) {
        assertThat(reading.mistakes()).isEmpty();
        assertThat(reading.answers().byQuestion().values()).containsExactly(answer);
    }

    static void assertRefuses(FormReading reading, String field, String code, String... args) {
        assertThat(reading.mistakes()).containsExactly(new AnswerMistake(field, code, List.of(args)));
        assertThat(reading.answers().byQuestion()).isEmpty();
    }
}
