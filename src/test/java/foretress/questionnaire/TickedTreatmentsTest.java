package foretress.questionnaire;

import static foretress.questionnaire.Posted.assertRefuses;
import static foretress.questionnaire.Posted.assertSays;
import static foretress.questionnaire.Posted.question;
import static foretress.questionnaire.Posted.read;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer.Treatments;
import foretress.questionnaire.Question.Keeps;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Question.Row;
import foretress.questionnaire.SaidDate.InYear;
import foretress.questionnaire.SaidDate.NotKnown;
import java.time.Year;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Earlier treatments as a client tells of them: a list to tick, then a page about each thing ticked. */
class TickedTreatmentsTest {
    private final Question done = new Question("done", Kind.TREATMENTS,
        List.of("box", "henna-pure", "henna-dark", "perm"), true, false, Set.of(), Map.of(), true, Keeps.THE_DAY, false,
        new Question.Put(Map.of(), List.of(new Row("box", List.of("box"), Optional.of("home")),
            new Row("henna-dark", List.of("henna-pure", "henna-dark"), Optional.empty()), Row.of("perm")),
            Optional.empty(), Map.of(), false));
    private final SaidTreatment perm =
        new SaidTreatment("perm", new InYear(Year.of(2023)), "whole", "salon", "once");

    private static Answers said(SaidTreatment... list) {
        return Answers.NONE.with("done", new Treatments(List.of(list)));
    }

    @Test
    @DisplayName("what is ticked is a treatment of which nothing is known, until its page is sent")
    void aTickIsATreatmentAtATimeNobodyKnows() {
        FormReading reading = read(done, "done.ticks", "yes", "done.tick", "box");
        assertSays(reading, new Treatments(List.of(SaidTreatment.ticked("box"))));
        SaidTreatment ticked = SaidTreatment.ticked("box");
        assertThat(ticked.when()).isEqualTo(new NotKnown());
        assertThat(ticked.zone()).isEqualTo("dont-know");
        assertThat(ticked.repeated()).isTrue();
        assertThat(ticked.onlyTicked()).isTrue();
    }

    @Test
    void theListLeftBlankIsNoAnswer() {
        FormReading reading = read(done, "done.ticks", "yes");
        assertThat(reading.answers().byQuestion()).isEmpty();
        assertThat(reading.mistakes()).containsExactly(new AnswerMistake("done", "required", List.of()));
    }

    @Test
    void nothingAndNotKnowingAreOneTapEach() {
        assertSays(read(done, "done.ticks", "yes", "done", "none"), new Treatments(List.of()));
        assertSays(read(done, "done.ticks", "yes", "done", "dont-know"), Answer.DONT_KNOW);
    }

    @Test
    void nothingBesideATickIsRefused() {
        assertRefuses(read(done, "done.ticks", "yes", "done", "none", "done.tick", "box"), "done", "none-and-others",
            "none");
    }

    @Test
    void aRowNobodyOfferedIsRefused() {
        assertRefuses(read(done, "done.ticks", "yes", "done.tick", "magic"), "done", "not-offered", "magic");
        assertRefuses(read(done, "done.ticks", "yes", "done", "rather-not-say"), "done", "not-offered",
            "rather-not-say");
    }

    @Test
    @DisplayName("what was told before stays while its row is ticked, and goes when the tick goes")
    void toldStaysWhileTicked() {
        assertSays(read(done, said(perm), "done.ticks", "yes", "done.tick", "perm"), new Treatments(List.of(perm)));
        assertSays(read(done, said(perm), "done.ticks", "yes", "done.tick", "box"),
            new Treatments(List.of(SaidTreatment.ticked("box"))));
    }

    @Test
    @DisplayName("a page about one thing tells of that one; who did it is known where the row says so")
    void aPageTellsOfOne() {
        FormReading reading = read(done, said(SaidTreatment.ticked("box"), perm), "done.of", "0",
            "done.when.precision", "year", "done.when.year", "2024", "done.zone", "ends");
        assertSays(reading, new Treatments(List.of(
            new SaidTreatment("box", new InYear(Year.of(2024)), "ends", "home", "dont-know"), perm)));
    }

    @Test
    @DisplayName("a row of several kinds asks which it was")
    void severalKindsAreAskedFor() {
        Answers henna = said(SaidTreatment.ticked("henna-dark"));
        FormReading blank = read(done, henna, "done.of", "0", "done.when.precision", "dont-know", "done.zone", "whole");
        assertThat(blank.mistakes()).extracting(AnswerMistake::field).containsExactly("done.what");
        assertSays(read(done, henna, "done.of", "0", "done.what", "henna-pure", "done.when.precision", "dont-know",
            "done.zone", "whole"),
            new Treatments(
                List.of(new SaidTreatment("henna-pure", new NotKnown(), "whole", "dont-know", "dont-know"))));
    }

    @Test
    void aPageLeftBlankSaysWhatIsMissingAndChangesNothing() {
        Answers before = said(SaidTreatment.ticked("box"));
        FormReading reading = read(done, before, "done.of", "0");
        assertThat(reading.mistakes()).extracting(AnswerMistake::field)
            .containsExactly("done.when.precision", "done.zone");
        assertThat(reading.over(before)).isEqualTo(before);
    }

    @Test
    void aPageAboutNothingOnTheListIsRefused() {
        assertRefuses(read(done, said(perm), "done.of", "7", "done.zone", "whole"), "done.of", "not-offered", "7");
    }

    @Test
    @DisplayName("R52: the walk goes to a page about each thing ticked, one after the other, and only then on")
    void theWalkAsksAboutEachThingTicked() {
        var topic = new Topic("hair", List.of(done));
        var later = new Topic("later", List.of(question("later", Kind.NOTE)));
        var all = new Questionnaire(List.of(topic, later));
        Walk begun = new Walk(all, Set.of(), said(SaidTreatment.ticked("box")), Set.of("done"));
        assertThat(begun.after(topic)).contains(new Walk.Step(topic, List.of(done), true));
        assertThat(begun.next()).contains(new Walk.Step(topic, List.of(done), true));
        Walk told = new Walk(all, Set.of(), said(perm), Set.of("done"));
        assertThat(told.after(topic).orElseThrow().topic()).isEqualTo(later);
    }
}
