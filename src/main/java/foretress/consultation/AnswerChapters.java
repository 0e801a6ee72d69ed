package foretress.consultation;

import foretress.consultation.VisitView.Chapter;
import foretress.consultation.VisitView.Line;
import foretress.intake.Intake;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Topic;
import foretress.visit.Visit;
import foretress.web.Language;
import foretress.web.StylistWords;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;

/** Every answer, by topic, in the staff's language whatever the client's was. */
@RequestScoped
class AnswerChapters {
    private final Intake intake;
    private final Knowledge knowledge;
    private final MeasuredLength measured;
    private final Language language;
    private final StylistWords say;

    AnswerChapters(Intake intake, Knowledge knowledge, MeasuredLength measured, Language language, StylistWords say) {
        this.intake = intake;
        this.knowledge = knowledge;
        this.measured = measured;
        this.language = language;
        this.say = say;
    }

    List<Chapter> of(Visit visit, Answers said) {
        return intake.topics(visit, said).stream().map(t -> chapter(visit, t, said)).filter(c -> !c.lines().isEmpty())
            .toList();
    }

    /** How many topics, and how many answers are not known. */
    String brief(Visit visit, Answers said) {
        int topics = of(visit, said).size();
        int unknown = (int) said.byQuestion().values().stream().filter(Answer::unknown).count();
        return unknown > 0 ? say.consultation_topics_unknown(topics, unknown) : say.consultation_topics(topics);
    }

    private Chapter chapter(Visit visit, Topic topic, Answers said) {
        List<Question> put = intake.put(visit, topic, said);
        List<Line> lines = put.stream().map(q -> line(visit, q, said)).toList();
        int unknown = (int) put.stream().filter(q -> said.to(q.id()).filter(Answer::unknown).isPresent()).count();
        int open = (int) put.stream().filter(q -> said.to(q.id()).isEmpty() && q.required()).count();
        String brief = open > 0 ? say.consultation_open(open) : unknown > 0 ? say.consultation_unknown(unknown) : "";
        return new Chapter(words().topic(topic.id()), brief, lines);
    }

    private Line line(Visit visit, Question question, Answers said) {
        return new Line(words().question(question.id()).short_(),
            measured.say(visit, question, said.to(question.id()), words()));
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
