package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.api.Shape.Either;
import foretress.api.Shape.Fields;
import foretress.intake.AnswerJson;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.Question;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidTreatment;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Answers as programs send them: the coded form in which {@link AnswerJson} keeps them, checked before it is read. What is left
 * out of a treatment or a medicine is not known.
 */
final class CodedAnswers {
    static final int MOST_ENTRIES = 60;
    static final int LONGEST_TEXT = 10_000;
    private static final int LONGEST_NAME = 200;
    private static final int MOST_YEARS = 120;

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
        Either answer = switch (question.kind()) {
            case ONE_OF -> Shape.either().or("chosen",
                Shape.object().need("chosen", Shape.set(Shape.code(question.options()), 1, 1)));
            case SEVERAL_OF -> Shape.either().or("chosen",
                Shape.object().need("chosen", Shape.set(Shape.code(question.options()), 1, question.options().size())));
            case SAID_DATE -> Shape.either().or("date", Shape.object().need("date", date()));
            case HAIR_LENGTH ->
                Shape.either().or("lengthCm", Shape.object().need("lengthCm", Shape.whole(0, Answer.Length.LONGEST_CM))
                    .need("drawnStraight", Shape.flag()));
            case TREATMENTS -> Shape.either().or("treatments",
                Shape.object().need("treatments", Shape.list(treatment(question), 0, MOST_ENTRIES)));
            case MEDICINES -> Shape.either().or("medicines",
                Shape.object().need("medicines", Shape.list(medicine(), 0, MOST_ENTRIES)));
            case INGREDIENTS, NOTE ->
                Shape.either().or("text", Shape.object().need("text", Shape.text(1, LONGEST_TEXT)));
        };
        List<String> nots = new ArrayList<>();
        if (question.unsure()) {
            nots.add("known");
        }
        if (question.personal()) {
            nots.add("said");
        }
        return nots.isEmpty() ? answer : answer.or("not", Shape.object().need("not", Shape.code(nots)));
    }

    private static Shape treatment(Question question) {
        return Shape.object().need("what", Shape.code(question.options())).need("when", date())
            .may("zone", Shape.code(SaidTreatment.ZONES))
            .may("by", Shape.code(SaidTreatment.BY)).may("often", Shape.code(SaidTreatment.OFTEN))
            .may("every", Shape.code(SaidTreatment.EVERY).saying("How far apart, where it was done more than once."))
            .may("since", date().saying("When it was first done, where it was done more than once."))
            .named("Treatment");
    }

    private static Shape medicine() {
        return Shape.object().need("name", Shape.text(1, LONGEST_NAME)).may("dose", Shape.code(Medicine.DOSES))
            .may("route", Shape.code(Medicine.ROUTES)).may("lastTaken", Shape.code(Medicine.LAST_TAKEN))
            .named("Medicine");
    }

    /** A date as precise as one can say it. */
    private static Shape date() {
        Shape year = Shape.whole(Times.FIRST_YEAR, Times.LAST_YEAR);
        Shape years = Shape.whole(0, MOST_YEARS);
        return Shape.either().or("day", Shape.object().need("day", Times.day()))
            .or("month", Shape.object().need("month", Times.month()))
            .or("season",
                Shape.object().need("season", Shape.code(List.of("SPRING", "SUMMER", "AUTUMN", "WINTER"))).need("year",
                    year))
            .or("year", Shape.object().need("year", year))
            .or("from", Shape.object().need("from", years).need("to", years))
            .or("longerThan", Shape.object().need("longerThan", years))
            .or("not", Shape.object().need("not", Shape.code(List.of("known")))).named("SaidDate");
    }

    /** Treatments the salon did itself, in the same form as those a client lists. */
    Shape treatments() {
        Question listing = listing();
        return Shape.list(treatment(listing), 0, MOST_ENTRIES);
    }

    private Question listing() {
        return questionnaire.questions().stream().filter(q -> q.kind() == Question.Kind.TREATMENTS).findFirst()
            .orElseThrow();
    }

    List<SaidTreatment> treatments(JsonNode list, String pointer, LocalDate today, Faults faults) {
        ObjectNode wrapped = JsonNodeFactory.instance.objectNode();
        wrapped.putObject(listing().id()).set("treatments", list);
        var inside = new Faults();
        Answers read = read(wrapped, "", today, inside);
        String around = "/" + listing().id() + "/treatments";
        inside.list()
            .forEach(fault -> faults.add(pointer + fault.pointer().substring(around.length()), "%s", fault.detail()));
        return read.to(listing().id()).map(a -> ((Answer.Treatments) a).list()).orElse(List.of());
    }

    /** What the form alone cannot tell: dates that lie ahead, a span the wrong way round, "none" beside something else. */
    Answers read(JsonNode said, String pointer, LocalDate today, Faults faults) {
        ObjectNode whole = said.deepCopy();
        whole.properties().forEach(field -> complete(field.getValue(), Faults.below(pointer, field.getKey()), faults));
        if (!faults.isEmpty()) {
            return Answers.NONE;
        }
        Answers answers = AnswerJson.read(whole.toString().getBytes(StandardCharsets.UTF_8));
        answers.byQuestion().forEach((id, answer) -> past(answer, Faults.below(pointer, id), today, faults));
        return answers;
    }

    private static void complete(JsonNode answer, String place, Faults faults) {
        JsonNode chosen = answer.path("chosen");
        chosen.forEach(code -> faults.expect(chosen.size() == 1 || !code.textValue().equals(Question.NONE),
            place + "/chosen", "'none' stands alone"));
        span(answer.path("date"), place + "/date", faults);
        for (int i = 0; i < answer.path("treatments").size(); i++) {
            ObjectNode treatment = (ObjectNode) answer.get("treatments").get(i);
            List.of("zone", "by", "often").forEach(name -> otherwise(treatment, name, Question.DONT_KNOW));
            span(treatment.get("when"), place + "/treatments/" + i + "/when", faults);
            span(treatment.path("since"), place + "/treatments/" + i + "/since", faults);
        }
        answer.path("medicines").forEach(medicine -> List.of("dose", "route", "lastTaken")
            .forEach(name -> otherwise((ObjectNode) medicine, name, Medicine.NOT_ASKED)));
    }

    private static void otherwise(ObjectNode entry, String name, String code) {
        if (!entry.has(name)) {
            entry.put(name, code);
        }
    }

    private static void span(JsonNode date, String place, Faults faults) {
        faults.expect(date.path("from").intValue() <= date.path("to").intValue(), place,
            "'from' is the smaller number of years, 'to' the larger");
    }

    private static void past(Answer answer, String place, LocalDate today, Faults faults) {
        if (answer instanceof Answer.Said said) {
            past(said.date(), place + "/date", today, faults);
        } else if (answer instanceof Answer.Treatments treatments) {
            for (int i = 0; i < treatments.list().size(); i++) {
                SaidTreatment treatment = treatments.list().get(i);
                String at = place + "/treatments/" + i;
                past(treatment.when(), at + "/when", today, faults);
                past(treatment.since(), at + "/since", today, faults);
                faults.expect(!treatment.since().surelyAfter(treatment.when(), today), at + "/since",
                    "it was first done after it was last done");
            }
        }
    }

    private static void past(SaidDate date, String place, LocalDate today, Faults faults) {
        faults.expect(!date.wholeInFuture(today), place, "this lies after the day on which the answers are read, %s",
            today);
    }
}
