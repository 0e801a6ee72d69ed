package foretress.questionnaire;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Several questions put as one list to tick. What the list as a whole says is said of each question that has no tick of its own:
 * "none of these", "don't know" and "rather not say", which the page sends under {@link #WHOLE}; or, once something is ticked and
 * the page is sent, that the rest is not so. A list left blank says nothing of any of them, and nor does "don't know" of one
 * group say anything of the others.
 */
public final class TickList {
    /** The field of the rows that speak for the whole list. */
    public static final String WHOLE = "whole-list";
    /** Names, unseen, the questions that stood together, group by group; without it each was put by itself. */
    public static final String TOGETHER = "together";

    private TickList() {}

    /** The code that says a question's worst is not so; both stand last where they are offered. */
    public static String no(Question question) {
        return question.kind() == Question.Kind.SEVERAL_OF ? Question.NONE : "no";
    }

    /** The fields as if each question had been put by itself. */
    public static Map<String, List<String>> apart(List<Question> list, Map<String, List<String>> fields) {
        List<Question> stood = list.stream().filter(q -> named(fields).contains(q.id())).toList();
        Map<String, List<String>> apart = new LinkedHashMap<>(fields);
        List<String> whole = fields.getOrDefault(WHOLE, List.of());
        Map<String, List<String>> own = own(stood, fields);
        boolean ticked = own.values().stream().anyMatch(said -> !said.isEmpty() && !unsure(said));
        own.forEach((id, said) -> apart.remove(id));
        stood.forEach(q -> apart.put(q.id(), of(q, own.get(q.id()), whole, ticked)));
        return apart;
    }

    /** What was said of each; "don't know" of the first in a group is said of the whole group. */
    private static Map<String, List<String>> own(List<Question> stood, Map<String, List<String>> fields) {
        Map<String, List<String>> own = new LinkedHashMap<>();
        stood.forEach(q -> own.put(q.id(), said(q, fields)));
        for (String group : fields.getOrDefault(TOGETHER, List.of())) {
            List<String> ids = List.of(group.split(" ")).stream().filter(own::containsKey).toList();
            List<String> first = ids.isEmpty() ? List.of() : own.get(ids.get(0));
            ids.stream().filter(id -> unsure(first) && own.get(id).isEmpty()).forEach(id -> own.put(id, first));
        }
        return own;
    }

    private static List<String> named(Map<String, List<String>> fields) {
        return fields.getOrDefault(TOGETHER, List.of()).stream().flatMap(ids -> List.of(ids.split(" ")).stream())
            .toList();
    }

    private static List<String> said(Question question, Map<String, List<String>> fields) {
        return fields.getOrDefault(question.id(), List.of()).stream().filter(v -> v != null && !v.isBlank()).toList();
    }

    private static List<String> of(Question question, List<String> own, List<String> whole, boolean ticked) {
        if (unsure(own) && whole.equals(List.of(Question.NONE))) {
            return own; // "none of these" speaks of what there was no word of
        }
        List<String> said = new ArrayList<>(one(question, own));
        whole.forEach(code -> said.add(said(question, code)));
        return said.isEmpty() && ticked ? List.of(no(question)) : said.stream().distinct().toList();
    }

    private static boolean unsure(List<String> own) {
        return own.equals(List.of(Question.DONT_KNOW));
    }

    /** Of a question that takes one answer, the row that stands first; what weighs more stands there. */
    private static List<String> one(Question question, List<String> own) {
        boolean offered = question.options().containsAll(own);
        return question.kind() == Question.Kind.ONE_OF && offered && own.size() > 1
            ? question.options().stream().filter(own::contains).limit(1).toList() : own;
    }

    /** Who would rather not say of the whole list does not know, as far as a question goes that has no such answer. */
    private static String said(Question question, String whole) {
        if (whole.equals(Question.NONE)) {
            return no(question);
        }
        return whole.equals(Question.RATHER_NOT_SAY) && !question.offers(whole) ? Question.DONT_KNOW : whole;
    }
}
