package foretress.knowledge;

import foretress.assessment.Assessor;
import foretress.assessment.FactFinder;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Step;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Status;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The client every case starts from: grown up, 40 cm of hair, nothing ever done to it, no medicines, and "no" to every
 * question that is put. Where a choice offers none of {@code no, never, none}, the option that weighs
 * least, of two the first. A case says only what differs; questions which that opens are answered in the same way.
 */
final class BaseClient {
    static final int LENGTH_CM = 40;
    private static final LocalDate DAY = LocalDate.of(2026, 6, 10);

    private final Knowledge knowledge;
    private final FactFinder facts;

    BaseClient(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.facts = knowledge.factFinder();
    }

    /** These answers, and the base client's to everything else that is put; the named questions stay unanswered. */
    Answers complete(Answers given, Set<String> chemistries, Set<String> unanswered) {
        Answers answers = given;
        for (Question question : knowledge.questionnaire().questions()) {
            boolean put = knowledge.questionnaire().status(question, chemistries, answers) == Status.ASKED;
            if (put && answers.to(question.id()).isEmpty() && !unanswered.contains(question.id())) {
                Optional<Answer> no = answer(question, answers, chemistries);
                answers = no.isPresent() ? answers.with(question.id(), no.get()) : answers;
            }
        }
        return answers;
    }

    private Optional<Answer> answer(Question question, Answers answers, Set<String> chemistries) {
        return switch (question.kind()) {
            case ONE_OF, SEVERAL_OF -> Optional.of(Answer.Chosen.of(bestOption(question, answers, chemistries)));
            case HAIR_LENGTH -> Optional.of(new Answer.Length(LENGTH_CM, true));
            case TREATMENTS -> Optional.of(new Answer.Treatments(List.of()));
            case MEDICINES -> Optional.of(new Answer.Medicines(List.of()));
            case SAID_DATE, INGREDIENTS, NOTE -> Optional.empty();
        };
    }

    private String bestOption(Question question, Answers answers, Set<String> chemistries) {
        return question.options().stream().filter(Question.NOES::contains).findFirst()
            .or(() -> question.options().stream().min(Comparator.comparingInt(
                code -> heaviness(answers.with(question.id(), Answer.Chosen.of(code)), chemistries))))
            .orElseThrow();
    }

    /** The heaviest finding first, then how much all of them weigh together. */
    private int heaviness(Answers answers, Set<String> chemistries) {
        var all = new Service("all", List.of(new Step("all", chemistries)));
        var situation =
            new Situation(DAY, Optional.of(DAY.minusYears(40)), chemistries, knowledge.questionnaire(), answers,
                knowledge.policy("uk"), List.of());
        List<Finding> findings = Assessor.assess(knowledge.ruleSet(), facts.find(situation), List.of(all)).findings();
        return findings.stream().mapToInt(f -> f.weight().ordinal()).max().orElse(0) * 10_000
            + findings.stream().mapToInt(f -> f.weight().ordinal()).sum();
    }
}
