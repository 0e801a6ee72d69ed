package foretress.plan;

import static foretress.assessment.Weight.NOTE;
import static foretress.assessment.Weight.PREVENTS;
import static foretress.assessment.Weight.TEST_FIRST;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.ComputedAs;
import foretress.assessment.Condition;
import foretress.assessment.FactDef;
import foretress.assessment.FactFinder;
import foretress.assessment.KnownTreatments;
import foretress.assessment.Lexicon;
import foretress.assessment.Policy;
import foretress.assessment.Rule;
import foretress.assessment.RuleSet;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Step;
import foretress.assessment.Weight;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Keeps;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.SaidDate.Hemisphere;
import foretress.questionnaire.Topic;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What is owed, under three or four rules made for it")
class OwedByHandTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    private static final Step TINT = new Step("tint", Set.of("oxidative-dye"));
    private static final Service COLOUR = new Service("colour", List.of(TINT));
    private static final Question REACTED = new Question("reacted", Kind.ONE_OF, List.of("yes", "no"), true, false,
        Set.of("oxidative-dye"), Map.of(), true, Keeps.THE_DAY, false);
    private static final Policy POLICY = new Policy("uk",
        Map.of("skin-test-wait-hours", 48, "skin-test-validity-months", 6), Map.of(), "999", "A4", Hemisphere.NORTH,
        List.of());

    private static final FactDef REACTION = new FactDef("reaction", List.of("none", "some"),
        List.of(new FactDef.Row(0, Map.of("reacted", List.of("no"))),
            new FactDef.Row(1, Map.of("reacted", List.of("yes")))),
        Optional.empty());
    private static final FactDef SKIN = computed("skin", ComputedAs.SKIN_TEST, "negative", "not-done", "positive");
    private static final FactDef METAL =
        computed("metal", ComputedAs.METAL_TEST, "negative", "not-done", "nothing", "positive");

    private static final FactDef WORD = new FactDef("word", List.of("with-care", "not-asked", "advised-against"),
        List.of(), Optional.of(new FactDef.Computation(ComputedAs.MEDICAL_ADVICE, List.of("reaction"),
            Optional.empty(), Optional.empty())));

    private static final Rule SKIN_FIRST = rule("skin-first", SKIN, TEST_FIRST, 0, "skin-test");
    private static final Rule NOT_OVER_METAL = rule("not-over-metal", METAL, PREVENTS, 0, "incompatibility-test");
    private static final Rule NEVER_AFTER_A_REACTION = rule("never-after-a-reaction", REACTION, PREVENTS, 0);
    private static final Rule READ_AGAIN = rule("read-again", REACTION, NOTE, 3);

    private static final Rule WORD_FIRST = new Rule("word-first",
        new Condition.And(List.of(new Condition.Compare("reaction", Condition.Op.EQUAL, "some", 1),
            new Condition.Compare("word", Condition.Op.GREATER_OR_EQUAL, "not-asked", 1))),
        Map.of("oxidative-dye", TEST_FIRST), Optional.empty(), List.of("medical-advice"), List.of("s"), false, false, 0,
        true, Optional.empty());

    private static FactDef computed(String id, ComputedAs as, String... classes) {
        return new FactDef(id, List.of(classes), List.of(),
            Optional.of(new FactDef.Computation(as, List.of(), Optional.empty(), Optional.empty())));
    }

    private static Rule rule(String id, FactDef fact, Weight weight, int readAgain, String... demands) {
        return new Rule(id,
            new Condition.Compare(fact.id(), Condition.Op.GREATER_OR_EQUAL, fact.classes().get(1), 1),
            Map.of("oxidative-dye", weight), Optional.empty(), List.of(demands), List.of("s"), false, false, readAgain,
            false, Optional.empty());
    }

    private static Situation client(Answers answers) {
        return new Situation(TODAY, Optional.empty(), COLOUR.chemistries(),
            new Questionnaire(List.of(new Topic("all", List.of(REACTED)))), answers, POLICY, List.of());
    }

    private static Answers reacted(String code) {
        return Answers.NONE.with("reacted", Answer.Chosen.of(code));
    }

    private static Owing owing(Situation known, Situation hoped, Rule... rules) {
        var set = new RuleSet(List.of(REACTION, SKIN, METAL, WORD), KnownTreatments.NONE, List.of(rules), List.of(TINT),
            List.of(COLOUR), List.of("skin-test", "incompatibility-test", "medical-advice"), Map.of(), "0");
        return Owing.of(set, new FactFinder(set, Lexicon.KNOWS_NOTHING)::find, known, hoped, List.of(COLOUR));
    }

    private static Owing owing(String code, Rule... rules) {
        Situation known = client(reacted(code));
        return owing(known, known, rules);
    }

    @Test
    void whatGoesAheadOwesEveryTestThatIsAskedFor() {
        assertThat(owing("no", SKIN_FIRST)).isEqualTo(new Owing(List.of("skin-test"), List.of(), 0));
    }

    @Test
    void whatIsOffOwesOnlyTheTestThatCanOpenItAgain() {
        assertThat(owing("no", SKIN_FIRST, NOT_OVER_METAL))
            .isEqualTo(new Owing(List.of("incompatibility-test"), List.of(), 0));
    }

    @Test
    void whatNoTestCanOpenOwesNoneNotEvenTheOneThatIsInTheWayToo() {
        assertThat(owing("yes", SKIN_FIRST, NOT_OVER_METAL, NEVER_AFTER_A_REACTION))
            .isEqualTo(new Owing(List.of(), List.of(), 0));
    }

    /** Only what is known holds the skin test back: nobody waits for a word on what may not be. */
    @Test
    void theSkinTestWaitsForTheWordThatComesFirst() {
        assertThat(owing("yes", WORD_FIRST, SKIN_FIRST))
            .isEqualTo(new Owing(List.of("medical-advice"), List.of("skin-test"), 0));
        assertThat(owing("no", WORD_FIRST, SKIN_FIRST)).isEqualTo(new Owing(List.of("skin-test"), List.of(), 0));
        Situation open = client(Answers.NONE);
        assertThat(owing(open, open, WORD_FIRST, SKIN_FIRST).tests())
            .containsExactlyInAnyOrder("medical-advice", "skin-test");
    }

    @Test
    void aTestIsReadOnceMoreForWhatWasToldAndNotForWhatIsStillToBeAnswered() {
        assertThat(owing("yes", READ_AGAIN).readAgainDays()).isEqualTo(3);
        assertThat(owing(client(Answers.NONE), client(reacted("no")), READ_AGAIN).readAgainDays()).isZero();
        assertThat(owing(client(Answers.NONE), client(Answers.NONE), READ_AGAIN).readAgainDays()).isEqualTo(3);
        assertThat(owing(client(Answers.NONE), client(reacted("yes")), READ_AGAIN).readAgainDays()).isEqualTo(3);
    }
}
