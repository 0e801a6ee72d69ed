package foretress.assessment;

import static foretress.assessment.Told.choice;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Keeps;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.Topic;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What a list of ingredients says, read by a lexicon of a few words")
class LabelFactsTest {
    private static final Question BOX = choice("box", List.of("yes", "no"), Set.of(), Map.of());
    private static final Question LIST = ingredients("list", false, Map.of("box", List.of("yes")));
    private static final Question POWDER = ingredients("powder", true, Map.of());
    private static final Questionnaire QUESTIONS =
        new Questionnaire(List.of(new Topic("all", List.of(BOX, LIST, POWDER))));
    private static final FactDef METAL = new FactDef("metal", List.of("none", "trace", "residue"), List.of(),
        Optional.empty());
    private static final FactDef UNKNOWN = new FactDef("unknown", List.of("none", "some"), List.of(), Optional.empty());

    /** Risks and classes by word; every other word is not recognised. */
    private static final Map<String, Lexicon.Word> WORDS = Map.of(
        "henna", word("henna", Set.of(), Set.of("plant-dye")), "basic-red",
        word("basic-red", Set.of(), Set.of("direct-dye")),
        "ppd", word("ppd", Set.of("ppd-group-allergen"), Set.of("oxidative-dye-primary")),
        "allergen", word("allergen", Set.of("ppd-group-allergen"), Set.of()),
        "lead", word("lead", Set.of("metal-residue"), Set.of()), "iron", word("iron", Set.of("metal-trace"), Set.of()),
        "soap", word("soap", Set.of(), Set.of("surfactant")));

    private static Lexicon.Word word(String name, Set<String> risks, Set<String> classes) {
        return new Lexicon.Word(new ReadAs(name, List.of(name), true), risks, classes);
    }

    private static Question ingredients(String id, boolean required, Map<String, List<String>> when) {
        return new Question(id, Kind.INGREDIENTS, List.of(), true, false, Set.of(), when, required, Keeps.FOR_GOOD,
            false);
    }

    private static final Lexicon LEXICON = new Lexicon() {
        @Override
        public Set<String> medicine(String typed) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Label label(String text) {
            List<Word> words = new ArrayList<>();
            Set<String> risks = new HashSet<>();
            Set<String> classes = new HashSet<>();
            for (String one : text.split(" ")) {
                Word word = WORDS.getOrDefault(one,
                    new Word(new ReadAs(one, List.of(), false), Set.of(), Set.of()));
                words.add(word);
                risks.addAll(word.risks());
                classes.addAll(word.classes());
            }
            return new Label(risks, classes, words.stream().anyMatch(word -> !word.read().sure()), words);
        }
    };

    private static LabelFacts labels(Answers answers) {
        var situation = new Situation(Told.TODAY, Optional.empty(), Set.of("oxidative-dye"), QUESTIONS, answers,
            Told.UK, List.of());
        return new LabelFacts(new Asking(situation), LEXICON);
    }

    private static Answers box(String code) {
        return Answers.NONE.with("box", Answer.Chosen.of(code));
    }

    private static Answers list(String text) {
        return box("yes").with("list", new Answer.Text(text)).with("powder", new Answer.Text(""));
    }

    @ParameterizedTest(name = "{0}: proves a plant dye and nothing else {1}")
    @CsvSource({ "henna, true", "henna soap, true", "soap, false", "henna basic-red, false", "basic-red, false",
        "henna lead, false", "henna iron, false", "henna allergen, false", "henna ppd, false", "henna mystery, false",
        "' ', false" })
    void aListProvesADyeWhenItNamesNothingElseThatMatters(String text, boolean proves) {
        assertThat(labels(list(text)).prove("plant-dye")).isEqualTo(proves);
    }

    @Test
    void oneOfTwoListsIsEnoughAndOneThatNobodyIsAskedForIsNone() {
        Answers both = list("basic-red").with("powder", new Answer.Text("henna"));
        assertThat(labels(both).prove("plant-dye")).isTrue();
        assertThat(labels(box("yes")).prove("plant-dye")).isFalse();
        assertThat(labels(box("no").with("list", new Answer.Text("henna"))).prove("plant-dye")).isFalse();
    }

    @ParameterizedTest(name = "{0}: metal {1}, dye {2}, not recognised {3}")
    @CsvSource({ "soap, none, none, none", "iron soap, trace, none, none", "iron lead, residue, none, none",
        "henna, none, trace, none", "henna ppd, none, residue, none", "allergen, none, residue, none",
        "soap mystery, none, none, some", "'', none, none, none" })
    void theWorstWordOfAListCounts(String text, String metal, String dye, String unknown) {
        LabelFacts labels = labels(list(text));
        assertThat(labels.metal(METAL)).hasToString("metal = " + metal);
        assertThat(labels.dyeGroup(METAL)).hasToString("metal = " + dye);
        assertThat(labels.notRecognised(UNKNOWN)).hasToString("unknown = " + unknown);
    }

    @Test
    void theWordsThatMadeItSoStandBesideIt() {
        assertThat(typed(labels(list("iron lead soap")).metal(METAL))).containsExactly("lead");
        assertThat(typed(labels(list("iron soap")).metal(METAL))).containsExactly("iron");
        assertThat(typed(labels(list("soap")).metal(METAL))).isEmpty();
        assertThat(typed(labels(list("henna basic-red soap")).dyeGroup(METAL))).containsExactly("henna", "basic-red");
        assertThat(typed(labels(list("soap mystery")).notRecognised(UNKNOWN))).containsExactly("mystery");
        assertThat(labels(list("lead")).metal(METAL).causes()).containsExactly("list");
    }

    private static List<String> typed(FactValue value) {
        return value.read().stream().map(ReadAs::typed).toList();
    }

    /** Nobody has to copy a list; whoever is asked for one and gives none, or says she does not know, leaves it open. */
    @Test
    void aListLeftOutIsNoDoubtAndOneNotKnownIs() {
        Answers powder = Answers.NONE.with("powder", new Answer.Text(""));
        assertThat(labels(powder.with("box", Answer.Chosen.of("yes"))).metal(METAL)).hasToString("metal = none");
        assertThat(labels(list("soap").with("list", Answer.DONT_KNOW)).metal(METAL))
            .hasToString("metal = none..residue");
        assertThat(labels(box("no").with("list", Answer.DONT_KNOW).with("powder", new Answer.Text(""))).metal(METAL))
            .as("nobody asks for it").hasToString("metal = none");
        assertThat(labels(box("yes")).metal(METAL)).as("the powder's list must be answered")
            .hasToString("metal = none..residue");
    }
}
