package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import foretress.api.Shape.Fields;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.Question;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidTreatment;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Answers as programs send them: the coded form in which {@link foretress.intake.AnswerJson} keeps them, checked before it is read. What is left
 * out of a treatment or a medicine is not known.
 */
final class CodedAnswers {
    static final int MOST_ENTRIES = 60;
    static final int LONGEST_TEXT = 10_000;

    private final Questionnaire questionnaire;
    private final Shape shape;

    CodedAnswers(Questionnaire questionnaire) {
        this.questionnaire = questionnaire;
        Fields all = Shape.object();
        for (Question question : questionnaire.questions()) {
            all = all.may(question.id(), answer(question));
        }
        this.shape = all.named("Answers");
    }

    Shape shape() {
        return shape.saying(
            "What the client said, by the id of the question. A question that is left out counts as not answered, never as no.");
    }

    private static Shape answer(Question question) {
        Class<? extends CodedAnswer> way = switch (question.kind()) {
            case ONE_OF, SEVERAL_OF -> CodedAnswer.Chosen.class;
            case SAID_DATE -> CodedAnswer.OnDate.class;
            case HAIR_LENGTH -> CodedAnswer.Length.class;
            case TREATMENTS -> CodedAnswer.Treatments.class;
            case MEDICINES -> CodedAnswer.Medicines.class;
            case INGREDIENTS, NOTE -> CodedAnswer.Text.class;
        };
        boolean told = !question.unsure() && !question.personal();
        return new RecordShape(known(question)).either(told ? List.of(way) : List.of(way, CodedAnswer.Not.class));
    }

    /** The codes an answer to this question can have. */
    private static Map<String, Shape> known(Question question) {
        int most = question.kind() == Question.Kind.ONE_OF ? 1 : question.options().size();
        List<String> nots = new ArrayList<>(question.unsure() ? List.of("known") : List.of());
        nots.addAll(question.personal() ? List.of("said") : List.of());
        Map<String, Shape> known = new HashMap<>(Map.of("options", Shape.set(Shape.code(question.options()), 1, most),
            "nots", Shape.code(nots), "treatments", Shape.code(question.options()), "doses", Shape.code(Medicine.DOSES),
            "routes", Shape.code(Medicine.ROUTES), "last taken", Shape.code(Medicine.LAST_TAKEN)));
        known.putAll(Map.of("zones", Shape.code(SaidTreatment.ZONES), "extents", Shape.code(SaidTreatment.EXTENTS),
            "by", Shape.code(SaidTreatment.BY), "often", Shape.code(SaidTreatment.OFTEN),
            "every", Shape.code(SaidTreatment.EVERY)));
        return known;
    }

    /** The codes of treatments the salon did itself, which it tells in the same form as a client. */
    Map<String, Shape> ofTreatments() {
        return known(questionnaire.questions().stream().filter(q -> q.kind() == Question.Kind.TREATMENTS).findFirst()
            .orElseThrow());
    }

    static List<SaidTreatment> treatments(List<CodedTreatment> list, String pointer, LocalDate today, Faults faults) {
        var inside = new Faults();
        for (int i = 0; i < list.size(); i++) {
            list.get(i).check(pointer + "/" + i, inside);
        }
        List<SaidTreatment> read =
            inside.isEmpty() ? list.stream().map(CodedTreatment::treatment).toList() : List.of();
        past(read, pointer, today, inside);
        inside.list().forEach(fault -> faults.add(fault.pointer(), "%s", fault.detail()));
        return read;
    }

    /** What the form alone cannot tell: dates that lie ahead, a span the wrong way round, "none" beside something else. */
    Answers read(JsonNode said, String pointer, LocalDate today, Faults faults) {
        Map<String, CodedAnswer> coded = new TreeMap<>();
        said.properties()
            .forEach(field -> coded.put(field.getKey(), RecordShape.read(field.getValue(), CodedAnswer.class)));
        coded.forEach((id, answer) -> answer.check(Faults.below(pointer, id), faults));
        if (!faults.isEmpty()) {
            return Answers.NONE;
        }
        Map<String, Answer> answers = new TreeMap<>();
        coded.forEach((id, answer) -> answers.put(id, answer.answer()));
        answers.forEach((id, answer) -> past(answer, Faults.below(pointer, id), today, faults));
        return new Answers(answers);
    }

    private static void past(Answer answer, String place, LocalDate today, Faults faults) {
        if (answer instanceof Answer.Said said) {
            past(said.date(), place + "/date", today, faults);
        } else if (answer instanceof Answer.Treatments treatments) {
            past(treatments.list(), place + "/treatments", today, faults);
        }
    }

    private static void past(List<SaidTreatment> list, String place, LocalDate today, Faults faults) {
        for (int i = 0; i < list.size(); i++) {
            SaidTreatment treatment = list.get(i);
            String at = place + "/" + i;
            past(treatment.when(), at + "/when", today, faults);
            past(treatment.since(), at + "/since", today, faults);
            faults.expect(!treatment.since().surelyAfter(treatment.when(), today), at + "/since",
                "it was first done after it was last done");
        }
    }

    private static void past(SaidDate date, String place, LocalDate today, Faults faults) {
        faults.expect(!date.wholeInFuture(today), place, "this lies after the day on which the answers are read, %s",
            today);
    }
}
