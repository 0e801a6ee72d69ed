package foretress.api;

import foretress.assessment.Service;
import foretress.assessment.Step;
import foretress.knowledge.AnswerWords;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Topic;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every question with its codes, its words and when it is asked, and the services with their steps. */
final class AskQuestionnaire {
    private static final int MOST = 1_000;

    private final Knowledge knowledge;

    AskQuestionnaire(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    record Asked(@Json(as = "languages") Optional<String> language) {}

    @Json(name = "Questionnaire")
    record Everything(String ruleSet, String language, @Json(most = MOST) List<OneTopic> topics,
        @Json(most = MOST) List<OneService> services) {}

    record OneTopic(String topic, String title, @Json(most = MOST) List<OneQuestion> questions) {}

    @Json(name = "Question")
    record OneQuestion(String question, Kind kind, String ask, String why, Optional<String> hint,
        @Json(most = MOST) List<Option> options, boolean mayNotKnow, boolean mayRatherNotSay, boolean required,
        @Json(most = MOST) List<String> askedFor, Map<String, List<String>> when) {}

    record Option(String code, String words) {}

    record OneService(String service, String name, @Json(most = MOST) List<OneStep> steps) {}

    record OneStep(String step, String name, @Json(most = MOST) List<String> uses) {}

    Operation operation() {
        return Operation.ofQuery(Map.of("languages", ClientBody.languages(knowledge)), "questionnaire",
            "What can be asked, with every code",
            "Topics and questions in the order they are asked. A question is put when its 'askedFor' names a chemistry of the booked steps (none named: always) "
                + "and every question in its 'when' has one of the named answers; one that waits for an unanswered question stays open.",
            Asked.class, Everything.class, asked -> everything(knowledge.words(asked.language().orElse("en"))));
    }

    private Everything everything(Words words) {
        return new Everything(knowledge.ruleSet().hash(), words.language(),
            knowledge.questionnaire().topics().stream().map(topic -> topic(topic, words)).toList(),
            knowledge.ruleSet().services().stream().map(service -> service(service, words)).toList());
    }

    private static OneTopic topic(Topic topic, Words words) {
        return new OneTopic(topic.id(), words.topic(topic.id()),
            topic.questions().stream().map(question -> question(question, words)).toList());
    }

    private static OneQuestion question(Question question, Words words) {
        Words.QuestionWords said = words.question(question.id());
        return new OneQuestion(question.id(), question.kind(), said.ask(), said.why(),
            Optional.of(said.hint()).filter(hint -> !hint.isEmpty()),
            question.options().stream().map(code -> new Option(code, words(question, code, words))).toList(),
            question.unsure(), question.personal(), question.required(), question.askedFor().stream().sorted().toList(),
            question.when());
    }

    private static String words(Question question, String code, Words words) {
        return question.kind() == Kind.TREATMENTS ? AnswerWords.slip("treatment", code, words)
            : words.option(question.id(), code);
    }

    private static OneService service(Service service, Words words) {
        return new OneService(service.id(), words.service(service.id()),
            service.steps().stream().map(step -> step(step, words)).toList());
    }

    private static OneStep step(Step step, Words words) {
        return new OneStep(step.id(), words.step(step.id()), step.uses().stream().sorted().toList());
    }
}
