package foretress.questionnaire;

import foretress.questionnaire.SaidDate.InMonth;
import foretress.questionnaire.SaidDate.InSeason;
import foretress.questionnaire.SaidDate.InYear;
import foretress.questionnaire.SaidDate.LatelyAgo;
import foretress.questionnaire.SaidDate.LongerThan;
import foretress.questionnaire.SaidDate.OnDay;
import foretress.questionnaire.SaidDate.YearsAgo;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The other way round from {@link FormReader}: what the fields of a question hold when its answer is shown again. */
public final class FormFill {
    private FormFill() {}

    /** Field name → values, as a browser would post them. Lists (treatments, medicines) are shown apart, not filled in, unless they say none. */
    public static Map<String, List<String>> fields(Question question, Answer answer) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        String id = question.id();
        if (answer instanceof Answer.Treatments treatments && !treatments.list().isEmpty()) {
            return fields;
        }
        if (!answer.codes().isEmpty()) {
            fields.put(question.kind() == Question.Kind.SAID_DATE ? id + ".precision" : id, answer.codes());
        } else if (isNone(answer)) {
            fields.put(id, List.of(Question.NONE));
        } else if (answer instanceof Answer.Text text) {
            fields.put(id, List.of(text.text()));
        } else if (answer instanceof Answer.Length length) {
            fields.put(id + ".cm", List.of(Integer.toString(length.lengthCm())));
            fields.put(id + ".unit", List.of("cm"));
            fields.put(id + ".straight", List.of(length.drawnStraight() ? "yes" : "no"));
        } else if (answer instanceof Answer.Said said) {
            date(id, said.date(), fields);
        }
        return fields;
    }

    /** What the fields of the page about one treatment hold. */
    public static Map<String, List<String>> entry(String id, SaidTreatment t) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        fields.put(id + ".what", List.of(t.what()));
        fields.put(id + ".zone", List.of(t.zone()));
        fields.put(id + ".extent", List.of(t.extent()));
        fields.put(id + ".by", List.of(t.by()));
        fields.put(id + ".often", List.of(t.often()));
        fields.put(id + ".every", List.of(t.every()));
        date(id + ".when", t.when(), fields);
        date(id + ".since", t.since(), fields);
        return fields;
    }

    private static boolean isNone(Answer answer) {
        return answer instanceof Answer.Treatments treatments && treatments.list().isEmpty()
            || answer instanceof Answer.Medicines medicines && medicines.list().isEmpty();
    }

    private static void date(String id, SaidDate date, Map<String, List<String>> fields) {
        if (date instanceof OnDay d) {
            put(fields, id, "month", "day", d.day().getDayOfMonth(), "month", d.day().getMonthValue(), "year",
                d.day().getYear());
        } else if (date instanceof InMonth m) {
            put(fields, id, "month", "month", m.month().getMonthValue(), "year", m.month().getYear());
        } else if (date instanceof InSeason s) {
            put(fields, id, "season", "season", s.season().name().toLowerCase(Locale.ROOT), "year",
                s.year().getValue());
        } else if (date instanceof InYear y) {
            put(fields, id, "year", "year", y.year().getValue());
        } else if (date instanceof YearsAgo a) {
            put(fields, id, "years-ago", "ago", a.from() + "-" + a.to());
        } else if (date instanceof LatelyAgo a) {
            put(fields, id, "years-ago", "ago", a.code());
        } else if (date instanceof LongerThan l) {
            put(fields, id, "longer", "ago", l.years() + "-plus");
        } else {
            put(fields, id, Question.DONT_KNOW);
        }
    }

    private static void put(Map<String, List<String>> fields, String id, String precision, Object... parts) {
        fields.put(id + ".precision", List.of(precision));
        for (int i = 0; i < parts.length; i += 2) {
            fields.put(id + "." + parts[i], List.of(parts[i + 1].toString()));
        }
    }
}
