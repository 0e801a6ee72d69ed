package foretress.questionnaire;

import static foretress.questionnaire.Posted.assertRefuses;
import static foretress.questionnaire.Posted.assertSays;
import static foretress.questionnaire.Posted.optional;
import static foretress.questionnaire.Posted.read;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer.Text;
import foretress.questionnaire.Question.Kind;
import org.junit.jupiter.api.Test;

class ReadingFreeWordsTest {
    private final Question note = optional("note", Kind.NOTE);
    private final Question label = optional("label", Kind.INGREDIENTS);

    @Test
    void wordsAreKeptAsWritten() {
        assertSays(read(note, "note", "Mi pelo: ½ liso\r\n— «مجعد» 👩🏽‍🦱"),
            new Text("Mi pelo: ½ liso\n— «مجعد» 👩🏽‍🦱"));
    }

    @Test
    void whatNoHandTypesIsTakenOut() {
        assertSays(read(note, "note", "a\0b\u0007c\u001B[0m\u009Fd\uD800e\tf"), new Text("abc[0md\uFFFDe\tf"));
    }

    @Test
    void onlyControlLettersAreNothing() {
        assertThat(read(note, "note", "\0\0").answers()).isEqualTo(Answers.NONE);
        assertThat(read(note, "note", " \n\t ").answers()).isEqualTo(Answers.NONE);
    }

    @Test
    void lettersAreCountedAsPeopleCountThem() {
        assertThat(read(note, "note", "👍".repeat(1000)).clean()).isTrue();
        assertRefuses(read(note, "note", "👍".repeat(1001)), "note", "too-long", "1000", "1001");
        assertThat(read(label, "label", "a".repeat(4000)).clean()).isTrue();
        assertRefuses(read(label, "label", "a".repeat(4001)), "label", "too-long", "4000", "4001");
    }

    @Test
    void wordsThatAreTooLongAreGivenBackWhole() {
        String tenThousand = "x".repeat(10_000);
        FormReading reading = read(note, "note", tenThousand);
        assertRefuses(reading, "note", "too-long", "1000", "10000");
        assertThat(reading.said("note")).isEqualTo(tenThousand);
    }

    @Test
    void markupIsOnlyWords() {
        assertSays(read(note, "note", "<script>alert(1)</script>"), new Text("<script>alert(1)</script>"));
    }
}
