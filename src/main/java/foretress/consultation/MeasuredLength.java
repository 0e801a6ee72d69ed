package foretress.consultation;

import foretress.bench.BenchRecords;
import foretress.knowledge.AnswerWords;
import foretress.knowledge.Words;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import foretress.visit.Visit;
import foretress.web.StylistWords;
import jakarta.enterprise.context.RequestScoped;
import java.util.Optional;

/** An answer in words; where staff measured the hair, their figure stands in front of what the client said. */
@RequestScoped
class MeasuredLength {
    private final BenchRecords tests;
    private final StylistWords say;

    MeasuredLength(BenchRecords tests, StylistWords say) {
        this.tests = tests;
        this.say = say;
    }

    String say(Visit visit, Question question, Optional<Answer> answer, Words words) {
        Optional<Integer> measured =
            question.kind() == Kind.HAIR_LENGTH ? tests.measuredLengthCm(visit) : Optional.empty();
        String said = answer.map(a -> AnswerWords.say(question, a, words)).orElseGet(say::consultation_not_answered);
        return measured
            .map(cm -> answer.isPresent() ? say.consultation_measured_for(cm, said) : say.consultation_measured(cm))
            .orElse(said);
    }
}
