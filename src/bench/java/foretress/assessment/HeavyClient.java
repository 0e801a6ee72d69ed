package foretress.assessment;

import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answer.Chosen;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.Question;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidTreatment;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** An invented client with much to say: twelve treatments, eight medicines, a label of sixty names, an answer to every question. */
final class HeavyClient {
    static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    static final String LABEL =
        String.join(", ", "aqua", "cetearyl alcohol", "ammonium hydroxide", "p-phenylenediamine", "resorcinol",
            "m-aminophenol", "toluene-2,5-diamine sulfate", "4-amino-2-hydroxytoluene", "sodium sulfite",
            "ascorbic acid", "glycerin", "parfum")
            + ", " + java.util.stream.IntStream.range(0, 48)
                .mapToObj(i -> "plant extract no" + (char) ('a' + i % 26) + i).collect(Collectors.joining(", "));
    private static final List<String> MEDICINES =
        List.of("prednisolone 5 mg", "cetirizine", "methotrexate", "metformin", "levothyroxine",
            "isotretinoin", "atorvastatin", "something my doctor gave me");

    private HeavyClient() {}

    static Situation of(Knowledge knowledge) {
        Set<String> everything =
            knowledge.ruleSet().steps().stream().flatMap(s -> s.uses().stream()).collect(Collectors.toSet());
        Answers answers = new Answers(Map.of());
        for (Question question : knowledge.questionnaire().questions()) {
            answers = answers.with(question.id(), answer(question));
        }
        return new Situation(TODAY, TODAY.plusDays(3), Optional.of(TODAY.minusYears(44)), everything,
            knowledge.questionnaire(), answers,
            knowledge.policy("uk"), List.of(), Optional.of(55));
    }

    private static Answer answer(Question question) {
        return switch (question.kind()) {
            case ONE_OF, SEVERAL_OF -> Chosen.of(question.options().get(0));
            case SAID_DATE -> new Answer.Said(new SaidDate.YearsAgo(1, 3));
            case HAIR_LENGTH -> new Answer.Length(55, true);
            case TREATMENTS -> new Answer.Treatments(treatments(question));
            case MEDICINES -> new Answer.Medicines(
                MEDICINES.stream().map(name -> new Medicine(name, "dont-know", "mouth", "now")).toList());
            case INGREDIENTS -> new Answer.Text(LABEL);
            case NOTE -> new Answer.Text("A note.");
        };
    }

    private static List<SaidTreatment> treatments(Question question) {
        List<SaidTreatment> list = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            String what = question.options().get(i % question.options().size());
            list.add(new SaidTreatment(what, new SaidDate.OnDay(TODAY.minusDays(60L * i + 30)), "whole", "home",
                i % 3 == 0 ? "regularly" : "once"));
        }
        return list;
    }
}
