package foretress.intake;

import foretress.intake.QuestionView.Detail;
import foretress.intake.QuestionView.Manner;
import foretress.intake.QuestionView.Slip;
import foretress.intake.QuestionView.Wording;
import foretress.intake.ReadBackPages.Chapter;
import foretress.intake.ReadBackPages.Line;
import foretress.knowledge.AnswerWords;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.FormFill;
import foretress.questionnaire.FormReading;
import foretress.questionnaire.Question;
import foretress.questionnaire.SaidTreatment;
import foretress.questionnaire.Topic;
import foretress.questionnaire.Walk;
import foretress.visit.Visit;
import foretress.web.Mistake;
import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Questions and answers in the client's words, ready for a page. */
@RequestScoped
public class Views {
    private final Knowledge knowledge;
    private final Intake intake;
    private final ClientLanguage speech;
    private final MistakeWords mistakeWords;

    Views(Knowledge knowledge, Intake intake, ClientLanguage speech, MistakeWords mistakeWords) {
        this.knowledge = knowledge;
        this.intake = intake;
        this.speech = speech;
        this.mistakeWords = mistakeWords;
    }

    public Optional<Topic> topic(String id) {
        return knowledge.questionnaire().topic(id);
    }

    public String title(Topic topic) {
        return speech.words().topic(topic.id());
    }

    /** Over several questions: the one that holds for all of them, or what more is asked about. */
    String heading(Walk.Step step) {
        return step.opened() ? title(step.topic()) : speech.words().opening(step.topic().id());
    }

    /** How the questions of a whole page are meant. */
    String lead(Walk.Step step) {
        return step.opened() ? "" : speech.words().openingHint(step.topic().id());
    }

    /** A client's page: what can be ticked together is one list, and on a page of several each question is a short row. */
    List<Block> blocks(Walk.Step step, List<QuestionView> asked, Answers said, OptionalInt entry,
        Optional<FormReading> posted) {
        if (asked.size() == 1 && asked.get(0).question().kind() == Question.Kind.TREATMENTS) {
            return List.of(Block.of(treatments(step, asked.get(0), said, entry, posted), true));
        }
        if (asked.size() == 1) {
            return List.of(Block.of(asked.get(0), true));
        }
        List<Question> together = step.topic().together(step.questions());
        List<Block> blocks = new ArrayList<>();
        for (QuestionView q : asked) {
            QuestionView row = q.inARow(speech.words().question(q.id()).row());
            if (together.size() < 2 || !together.contains(q.question())) {
                blocks.add(Block.of(row, false));
            } else if (q.question().equals(together.get(0))) {
                blocks.add(list(step.topic(), asked.stream().filter(a -> together.contains(a.question())).toList(),
                    together.size() == asked.size()));
            }
        }
        return blocks;
    }

    /** First what there was, to tick; then a page about each that was only ticked, or about the one that is to be changed. */
    private QuestionView treatments(Walk.Step step, QuestionView q, Answers said, OptionalInt entry,
        Optional<FormReading> posted) {
        List<SaidTreatment> list = said.to(q.id()).filter(Answer.Treatments.class::isInstance)
            .map(a -> ((Answer.Treatments) a).list()).orElse(List.of());
        int at = entry.orElseGet(() -> IntStream.range(0, list.size()).filter(i -> list.get(i).onlyTicked()).findFirst()
            .orElse(list.size()));
        return step.opened() && at < list.size() ? about(q, list.get(at), at, posted) : ticks(q, list, posted);
    }

    private QuestionView ticks(QuestionView q, List<SaidTreatment> list, Optional<FormReading> posted) {
        List<Slip> rows = new ArrayList<>();
        for (Question.Row row : q.question().rows()) {
            boolean listed = list.stream().anyMatch(t -> row.kinds().contains(t.what()));
            rows.add(new Slip(row.head(), speech.words().tick(q.id(), row.head()),
                posted.map(p -> p.ticked(q.name("tick"), row.head())).orElse(listed)));
        }
        return q.toTick(rows);
    }

    private QuestionView about(QuestionView q, SaidTreatment told, int at, Optional<FormReading> posted) {
        Map<String, List<String>> fields = posted.map(FormReading::said)
            .orElseGet(() -> told.onlyTicked() ? Map.of() : FormFill.entry(q.id(), told));
        Question.Row row = q.question().row(told.what()).orElse(Question.Row.of(told.what()));
        List<String> chosen = fields.getOrDefault(q.name("what"), List.of());
        List<Slip> kinds = row.kinds().size() < 2 ? List.of() : row.kinds().stream()
            .map(k -> new Slip(k, speech.words().option(q.id(), k), chosen.contains(k))).toList();
        return q.about(new Detail(at, speech.words().tick(q.id(), row.head()), kinds, row.by().isEmpty()), fields);
    }

    private Block list(Topic topic, List<QuestionView> ticked, boolean alone) {
        Words words = speech.words();
        return new Block(words.list(topic.id()), ticked.stream()
            .map(q -> q.inARow(words.question(q.id()).short_()).labelled(code -> words.tick(q.id(), code))).toList(),
            alone, ticked.stream().collect(Collectors.toMap(QuestionView::id, q -> words.group(q.id()))));
    }

    /** Why a page asks more: what was said on the page before it. Empty where something else than an answer brought it up. */
    String because(Walk walk, Walk.Step step) {
        Words words = speech.words();
        String told = step.questions().stream().flatMap(q -> walk.openers(step.topic(), q).stream()).distinct()
            .flatMap(q -> walk.said().to(q.id()).stream()
                .map(a -> words.question(q.id()).short_() + " – " + AnswerWords.say(q, a, words)))
            .collect(Collectors.joining(" · "));
        return told.isEmpty() ? "" : speech.say().topic_you_said(told);
    }

    /** The questions of a page: with what was just posted where there was a mistake, else with what is on file. */
    public List<QuestionView> asked(List<Question> put, Answers said, Optional<FormReading> posted) {
        Choices choices = Choices.in(speech.words(), speech.locale());
        return put.stream().map(q -> asked(q, put.size() == 1, said.to(q.id()), posted, choices)).toList();
    }

    private QuestionView asked(Question question, boolean alone, Optional<Answer> said, Optional<FormReading> posted,
        Choices choices) {
        Words words = speech.words();
        Map<String, List<String>> fields = posted.map(FormReading::said)
            .orElseGet(() -> said.map(a -> FormFill.fields(question, a)).orElse(Map.of()));
        return new QuestionView(question, alone, Manner.FULL, List.of(), wording(question, words),
            slips(question, words, fields), fields, entries(question, said), mistakes(question, posted), choices);
    }

    private static Wording wording(Question question, Words words) {
        Words.QuestionWords said = words.question(question.id());
        return new Wording(said.ask(), said.hint(), said.why(), said.short_(), AnswerWords.none(question, words));
    }

    private List<Slip> slips(Question question, Words words, Map<String, List<String>> fields) {
        List<String> codes = new ArrayList<>(question.options());
        if (question.unsure()) {
            codes.add(Question.DONT_KNOW);
        }
        if (question.personal()) {
            codes.add(Question.RATHER_NOT_SAY);
        }
        List<String> chosen = fields.getOrDefault(question.id(), List.of());
        return codes.stream().distinct().map(c -> new Slip(c, words.option(question.id(), c), chosen.contains(c)))
            .toList();
    }

    private List<String> entries(Question question, Optional<Answer> said) {
        Words words = speech.words();
        if (said.isPresent() && said.get() instanceof Answer.Treatments treatments) {
            return treatments.list().stream().map(t -> AnswerWords.say(question, t, words)).toList();
        }
        if (said.isPresent() && said.get() instanceof Answer.Medicines medicines) {
            return medicines.list().stream().map(m -> AnswerWords.say(m, words)).toList();
        }
        return List.of();
    }

    private Map<String, String> mistakes(Question question, Optional<FormReading> posted) {
        Map<String, String> sentences = new LinkedHashMap<>();
        posted.map(FormReading::mistakes).orElse(List.of()).stream().filter(m -> of(question, m))
            .forEach(m -> sentences.put(m.field(),
                mistakeWords.sentence(m, speech.words().question(question.id()).short_())));
        return sentences;
    }

    private static boolean of(Question question, foretress.questionnaire.AnswerMistake mistake) {
        return mistake.field().equals(question.id()) || mistake.field().startsWith(question.id() + ".");
    }

    /** The list on top of a page: every mistake once, in the order of the page. */
    public List<Mistake> mistakes(List<QuestionView> asked, Optional<Mistake> first) {
        List<Mistake> all = new ArrayList<>(first.stream().toList());
        asked.forEach(a -> a.mistakes().forEach((field, text) -> all.add(new Mistake(field, text))));
        return all;
    }

    public Mistake overtaken() {
        return new Mistake("main", speech.say().topic_overtaken());
    }

    /** Everything said, topic by topic, in the client's words. */
    List<Chapter> chapters(Visit visit, Answers said) {
        return intake.topics(visit, said).stream()
            .map(topic -> new Chapter(topic.id(), title(topic), lines(intake.put(visit, topic, said), said)))
            .filter(c -> !c.lines().isEmpty()).toList();
    }

    /** What was said to these questions, where something was. */
    List<Line> lines(List<Question> questions, Answers said) {
        Words words = speech.words();
        return questions.stream().filter(q -> said.to(q.id()).isPresent())
            .map(q -> new Line(q.id(), words.question(q.id()).short_(),
                AnswerWords.say(q, said.to(q.id()).orElseThrow(), words), said.to(q.id()).orElseThrow().saysNo()))
            .toList();
    }
}
