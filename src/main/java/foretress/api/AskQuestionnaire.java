package foretress.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.assessment.Service;
import foretress.knowledge.AnswerWords;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Every question with its codes, its words and when it is asked, and the services with their steps. */
final class AskQuestionnaire {
    private static final JsonNodeFactory NODE = JsonNodeFactory.instance;

    private final Knowledge knowledge;

    AskQuestionnaire(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    Operation operation() {
        return new Operation("questionnaire", "questionnaire", Optional.empty(), "What can be asked, with every code",
            "Topics and questions in the order they are asked. A question is put when its 'askedFor' names a chemistry of the booked steps (none named: always) "
                + "and every question in its 'when' has one of the named answers; one that waits for an unanswered question stays open.",
            Optional.empty(), response(), List.of(), body -> told(knowledge.words(body.path("language").asText("en"))));
    }

    private ObjectNode told(Words words) {
        ObjectNode answer =
            NODE.objectNode().put("ruleSet", knowledge.ruleSet().hash()).put("language", words.language());
        ArrayNode topics = answer.putArray("topics");
        knowledge.questionnaire().topics().forEach(topic -> {
            ArrayNode questions =
                topics.addObject().put("topic", topic.id()).put("title", words.topic(topic.id())).putArray("questions");
            topic.questions().forEach(question -> questions.add(question(question, words)));
        });
        ArrayNode services = answer.putArray("services");
        knowledge.ruleSet().services().forEach(service -> services.add(service(service, words)));
        return answer;
    }

    private static ObjectNode question(Question question, Words words) {
        Words.QuestionWords said = words.question(question.id());
        ObjectNode node = NODE.objectNode().put("question", question.id()).put("kind", kind(question.kind()))
            .put("ask", said.ask()).put("why", said.why());
        if (!said.hint().isEmpty()) {
            node.put("hint", said.hint());
        }
        ArrayNode options = node.putArray("options");
        question.options()
            .forEach(code -> options.addObject().put("code", code).put("words", words(question, code, words)));
        node.put("mayNotKnow", question.unsure()).put("mayRatherNotSay", question.personal()).put("required",
            question.required());
        question.askedFor().stream().sorted().forEach(node.putArray("askedFor")::add);
        ObjectNode when = node.putObject("when");
        question.when().forEach((earlier, codes) -> codes.forEach(when.putArray(earlier)::add));
        return node;
    }

    private static String words(Question question, String code, Words words) {
        return question.kind() == Kind.TREATMENTS ? AnswerWords.slip("treatment", code, words)
            : words.option(question.id(), code);
    }

    private static ObjectNode service(Service service, Words words) {
        ObjectNode node = NODE.objectNode().put("service", service.id()).put("name", words.service(service.id()));
        ArrayNode steps = node.putArray("steps");
        service.steps().forEach(step -> {
            ArrayNode uses =
                steps.addObject().put("step", step.id()).put("name", words.step(step.id())).putArray("uses");
            step.uses().stream().sorted().forEach(uses::add);
        });
        return node;
    }

    private static String kind(Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Shape response() {
        Shape texts = Shape.list(Shape.text(), 0, 1_000);
        Shape option = Shape.object().need("code", Shape.text()).need("words", Shape.text());
        Shape question = Shape.object().need("question", Shape.text())
            .need("kind", Shape.code(Arrays.stream(Kind.values()).map(AskQuestionnaire::kind).toList()))
            .need("ask", Shape.text()).need("why", Shape.text()).may("hint", Shape.text())
            .need("options", Shape.list(option, 0, 1_000))
            .need("mayNotKnow", Shape.flag()).need("mayRatherNotSay", Shape.flag()).need("required", Shape.flag())
            .need("askedFor", texts)
            .need("when", Shape.map(texts)).named("Question");
        Shape topic = Shape.object().need("topic", Shape.text()).need("title", Shape.text()).need("questions",
            Shape.list(question, 0, 1_000));
        Shape step = Shape.object().need("step", Shape.text()).need("name", Shape.text()).need("uses", texts);
        Shape service = Shape.object().need("service", Shape.text()).need("name", Shape.text()).need("steps",
            Shape.list(step, 0, 1_000));
        return Shape.object().need("ruleSet", Shape.text()).need("language", Shape.text())
            .need("topics", Shape.list(topic, 0, 1_000))
            .need("services", Shape.list(service, 0, 1_000)).named("Questionnaire");
    }
}
