package foretress.questionnaire;

import static foretress.questionnaire.Posted.TODAY;
import static foretress.questionnaire.Posted.form;
import static foretress.questionnaire.Posted.optional;
import static foretress.questionnaire.Posted.question;
import static foretress.questionnaire.Posted.read;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer.Chosen;
import foretress.questionnaire.Answer.Text;
import foretress.questionnaire.Question.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class FormReaderTest {
    private final Question itch = question("itch", Kind.ONE_OF, "yes", "no");
    private final Question itchWhat = question("itch-what", Kind.SEVERAL_OF, "hives", "none");

    @Test
    @DisplayName("B24 unknown fields never bind")
    void fieldsOfNoQuestionOnThePageAreIgnored() {
        FormReading reading = new FormReader(TODAY).read(List.of(itch),
            form("itch", "no", "itch-what", "hives", "visit", "42", "itch.state", "signed"),
            Answers.NONE);
        assertThat(reading.answers().byQuestion()).containsOnlyKeys("itch");
        assertThat(reading.said()).doesNotContainKeys("itch-what", "visit");
    }

    @Test
    void oneMistakeLeavesTheOtherAnswersGood() {
        FormReading reading = new FormReader(TODAY).read(List.of(itch, itchWhat),
            form("itch", "yes", "itch-what", "wings"), Answers.NONE);
        assertThat(reading.answers().byQuestion()).containsOnlyKeys("itch");
        assertThat(reading.mistakes()).containsExactly(new AnswerMistake("itch-what", "not-offered", List.of("wings")));
        assertThat(reading.ticked("itch-what", "wings")).isTrue();
        assertThat(reading.mistakesAt("itch-what")).hasSize(1);
    }

    @Test
    void mistakesComeInTheOrderOfThePage() {
        FormReading reading = new FormReader(TODAY).read(List.of(itchWhat, itch), form(), Answers.NONE);
        assertThat(reading.mistakes()).extracting(AnswerMistake::field).containsExactly("itch-what", "itch");
    }

    @Test
    void anOptionalAnswerTakenBackIsGone() {
        Answers earlier = Answers.NONE.with("note", new Text("old")).with("other", Chosen.of("yes"));
        FormReading reading = read(optional("note", Kind.NOTE), earlier, "note", "");
        assertThat(reading.over(earlier)).isEqualTo(Answers.NONE.with("other", Chosen.of("yes")));
    }

    @Test
    void aMistakeKeepsTheEarlierAnswer() {
        Answers earlier = Answers.NONE.with("itch", Chosen.of("yes"));
        assertThat(read(itch, earlier, "itch", "forged").over(earlier)).isEqualTo(earlier);
    }

    @Test
    @DisplayName("no page, however wild, brings an exception, an answer beside the question's codes, or silence")
    void wildPagesAreAlwaysAnsweredInKind() {
        var random = new Random(20261124);
        List<Question> put =
            List.of(itch, itchWhat, question("when", Kind.SAID_DATE), question("hair", Kind.HAIR_LENGTH),
                question("done", Kind.TREATMENTS, "perm", "dont-know"), question("taken", Kind.MEDICINES),
                optional("note", Kind.NOTE));
        for (int i = 0; i < 20_000; i++) {
            FormReading reading = new FormReader(TODAY).read(put, wild(random), Answers.NONE);
            for (Question question : put) {
                boolean answered = reading.answers().to(question.id()).isPresent();
                boolean refused =
                    reading.mistakes().stream().anyMatch(m -> (m.field() + ".").startsWith(question.id() + "."));
                assertThat(answered || refused || !question.required() || reading.adding()).isTrue();
                assertThat(reading.answers().codes(question.id())).allMatch(question::offers);
            }
        }
    }

    private Map<String, List<String>> wild(Random random) {
        List<String> fields =
            List.of("itch", "itch-what", "when", "when.precision", "when.year", "when.month", "when.day", "when.season",
                "when.ago", "hair", "hair.cm", "hair.unit", "hair.straight", "done", "done.what", "done.when.precision",
                "done.when.year", "done.zone",
                "done.act", "done.drop", "taken", "taken.name", "taken.dose", "taken.act", "taken.drop", "note", "x");
        List<String> values = List.of("", " ", "yes", "no", "none", "dont-know", "rather-not-say", "hives", "day",
            "month", "season", "year",
            "summer", "years-ago", "2-3", "2024", "99999999", "-1", "0", "3", "31", "٣", "cm", "in", "perm", "whole",
            "add", "done", "\0", "\uD800", "😀", "%00");
        Map<String, List<String>> form = new LinkedHashMap<>();
        for (int i = random.nextInt(fields.size()); i > 0; i--) {
            form.computeIfAbsent(fields.get(random.nextInt(fields.size())), f -> new ArrayList<>())
                .add(values.get(random.nextInt(values.size())));
        }
        return form;
    }
}
