package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Weight;
import foretress.consent.ConsentInput;
import foretress.consent.ConsentText;
import foretress.consent.ConsentWords;
import foretress.intake.Choices.Choice;
import foretress.knowledge.AnswerWords;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Loaded;
import foretress.knowledge.Words;
import foretress.questionnaire.Answers;
import foretress.questionnaire.FormReader;
import foretress.questionnaire.FormReading;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every slip of every question is chosen through the one door of all answers, and looked for in the text that is signed. */
class ChosenIsSignedTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    private static final Map<String, String> TREATED = Map.of("what", "bleach", "when.precision", "years-ago",
        "when.ago", "1-2", "zone", "ends",
        "by", "salon", "often", "regularly", "every", "6-weeks", "since.precision", "years-ago", "since.ago", "5-plus");
    private static final Map<String, String> TAKEN =
        Map.of("name", "loratadine", "dose", "low", "route", "mouth", "last", "now");

    /** One slip: the fields a browser would send with it, and its label on the page. */
    private record Slip(Question question, Map<String, String> fields, String label) {}

    @ParameterizedTest
    @ValueSource(strings = { "en", "es" })
    @DisplayName("R14: what was chosen is signed letter for letter: every option of every question")
    void theWordsChosenAreTheWordsSigned(String language) {
        Words words = KNOWLEDGE.words(language);
        List<Slip> slips =
            KNOWLEDGE.questionnaire().questions().stream().flatMap(q -> slips(q, words).stream()).toList();
        assertThat(slips).hasSizeGreaterThan(200);
        for (Slip slip : slips) {
            assertThat(signed(slip, words)).as("%s, chosen: %s", slip.question().id(), slip.fields())
                .contains(slip.label());
        }
    }

    /** Inside a line an answer begins with a small letter; nothing else may differ. */
    private static String signed(Slip slip, Words words) {
        Map<String, List<String>> posted = new HashMap<>();
        slip.fields().forEach((name, value) -> posted.put(name, List.of(value)));
        FormReading reading = new FormReader(TODAY).read(List.of(slip.question()), posted, Answers.NONE);
        assertThat(reading.mistakes()).as(slip.fields().toString()).isEmpty();
        String said = AnswerWords.say(slip.question(), reading.answers().to(slip.question().id()).orElseThrow(), words);
        String text = ConsentText.of(consent(said, words.language()), ConsentWords.in(words.language())).canonical();
        String small = slip.label().substring(0, 1).toLowerCase(Locale.ROOT) + slip.label().substring(1);
        return text.replace(small, slip.label());
    }

    private static ConsentInput consent(String said, String language) {
        var visit = new ConsentInput.Visit(UUID.randomUUID(), TODAY.atTime(14, 0).atZone(ZoneId.of("Europe/London")),
            "Petra Lind", List.of("Colour"));
        return new ConsentInput(language, new ConsentInput.Salon("s", "a", "t", "p", "e", "o", "112"),
            new ConsentInput.Client(UUID.randomUUID(), "Ottilie Brandt", Optional.empty()), visit, Weight.NOTE,
            List.of(), List.of(),
            List.of(new ConsentInput.Answered("t", "q", said)));
    }

    private static List<Slip> slips(Question question, Words words) {
        Choices choices = Choices.in(words, Locale.forLanguageTag(words.language()));
        return switch (question.kind()) {
            case ONE_OF, SEVERAL_OF -> codes(question, question.options(), words);
            case SAID_DATE -> when(question, "", Map.of(), choices);
            case HAIR_LENGTH -> length(question, words, choices);
            case TREATMENTS -> treatments(question, words, choices);
            case MEDICINES -> medicines(question, words, choices);
            case INGREDIENTS, NOTE -> List.of(new Slip(question, Map.of(question.id(), "as typed"), "as typed"));
        };
    }

    /** The question's own slips, the ways of not saying among them. */
    private static List<Slip> codes(Question question, List<String> options, Words words) {
        List<String> codes = new ArrayList<>(options);
        List.of(Question.DONT_KNOW, Question.RATHER_NOT_SAY).stream().filter(question::offers).forEach(codes::add);
        return codes.stream().distinct()
            .map(c -> new Slip(question, Map.of(question.id(), c), words.option(question.id(), c))).toList();
    }

    private static List<Slip> length(Question question, Words words, Choices choices) {
        List<Slip> slips = new ArrayList<>(codes(question, List.of(), words));
        choices.straight().forEach(c -> slips.add(new Slip(question,
            Map.of("hair-length.cm", "40", "hair-length.unit", "cm", "hair-length.straight", c.code()), c.label())));
        return slips;
    }

    private static List<Slip> when(Question question, String part, Map<String, String> rest, Choices choices) {
        List<Slip> slips = new ArrayList<>();
        slips.add(with(question, rest, precision(choices, Question.DONT_KNOW).label(), part + "precision",
            Question.DONT_KNOW));
        choices.date().agos().forEach(
            c -> slips.add(with(question, rest, c.label(), part + "precision", "years-ago", part + "ago", c.code())));
        choices.date().seasons().forEach(c -> slips.add(with(question, rest, c.label(), part + "precision", "season",
            part + "season", c.code(), part + "year", "2020")));
        choices.date().months().forEach(c -> slips.add(with(question, rest, c.label(), part + "precision", "month",
            part + "month", c.code(), part + "year", "2020")));
        return slips;
    }

    private static Choice precision(Choices choices, String code) {
        return choices.date().precisions().stream().filter(c -> c.code().equals(code)).findFirst().orElseThrow();
    }

    private static List<Slip> treatments(Question question, Words words, Choices choices) {
        List<Slip> slips = new ArrayList<>(
            List.of(new Slip(question, Map.of(question.id(), Question.NONE), AnswerWords.none(question, words))));
        question.options()
            .forEach(code -> slips.add(with(question, TREATED, words.option(question.id(), code), "what", code)));
        slips.addAll(when(question, "when.", TREATED, choices));
        slips.addAll(when(question, "since.", lastYear(), choices));
        each(question, TREATED, "zone", choices.treatment().zones(), slips);
        each(question, TREATED, "by", choices.treatment().by(), slips);
        each(question, TREATED, "often", choices.treatment().often(), slips);
        each(question, TREATED, "every", choices.treatment().every(), slips);
        Map<String, String> ends = new HashMap<>(TREATED);
        ends.put("zone", "ends");
        each(question, ends, "extent",
            choices.treatment().extents().stream().filter(c -> !c.code().equals("dont-know")).toList(),
            slips);
        return slips;
    }

    /** Nothing can have been done first after it was last done. */
    private static Map<String, String> lastYear() {
        Map<String, String> late = new HashMap<>(TREATED);
        late.putAll(Map.of("when.precision", "month", "when.month", "6", "when.year", "2026"));
        late.remove("when.ago");
        return late;
    }

    private static List<Slip> medicines(Question question, Words words, Choices choices) {
        List<Slip> slips = new ArrayList<>(
            List.of(new Slip(question, Map.of(question.id(), Question.NONE), AnswerWords.none(question, words))));
        slips.addAll(codes(question, List.of(), words));
        each(question, TAKEN, "dose", choices.medicine().doses(), slips);
        each(question, TAKEN, "route", choices.medicine().routes(), slips);
        each(question, TAKEN, "last", choices.medicine().last(), slips);
        return slips;
    }

    private static void each(Question question, Map<String, String> rest, String field, List<Choice> choices,
        List<Slip> slips) {
        choices.forEach(c -> slips.add(with(question, rest, c.label(), field, c.code())));
    }

    private static Slip with(Question question, Map<String, String> rest, String label, String... chosen) {
        Map<String, String> fields = new HashMap<>();
        rest.forEach((name, value) -> fields.put(question.id() + "." + name, value));
        for (int i = 0; i < chosen.length; i += 2) {
            fields.keySet().remove(question.id() + "." + chosen[i].replaceAll("precision$", "ago"));
            fields.put(question.id() + "." + chosen[i], chosen[i + 1]);
        }
        if (question.kind() != Kind.SAID_DATE) {
            fields.put(question.id() + ".act", "add");
        }
        return new Slip(question, fields, label);
    }
}
