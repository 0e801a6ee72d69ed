package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;

/** A client who goes through the real pages and says "no" to everything, except where the test says otherwise. */
public final class Answering {
    private static final List<String> AS_GOOD_AS_NO = List.of("no", "none", "never", "not-pregnant", "nothing");

    private final Walker walker;
    private final Map<String, List<String>> told;
    private final List<String> pages = new ArrayList<>();

    Answering(Walker walker, Map<String, List<String>> told) {
        this.walker = walker;
        this.told = told;
    }

    /** Goes on answering on whatever page of questions is open there. */
    public static Answering on(Walker walker, Map<String, List<String>> told) {
        return new Answering(walker, told);
    }

    /** Agrees to the notice. */
    public Answering agree() {
        walker.expect(200);
        assertThat(walker.at()).isEqualTo("/answers/notice");
        send(beside(Map.of("agree", List.of("yes"), "act", List.of("agree")), Map.of()));
        if (walker.at().equals("/answers/last-time")) {
            walker.open(walker.only(".links a[href!=/answers/stop]").attr("href"));
        }
        return this;
    }

    /** With a parent's word beside the client's, where the page asks for one. */
    private Map<String, List<String>> beside(Map<String, List<String>> own, Map<String, List<String>> parents) {
        Map<String, List<String>> all = new LinkedHashMap<>(own);
        if (walker.page().selectFirst("#guardian") != null) {
            all.put("guardian-name", List.of("Solveig Brandt"));
            all.put("guardian-relation", List.of("parent"));
            all.putAll(parents);
        }
        return all;
    }

    /** Answers page after page until it is all read back. */
    public Answering all() {
        for (int i = 0; i < 60 && !walker.at().equals("/answers/read-back"); i++) {
            step();
        }
        assertThat(walker.at()).isEqualTo("/answers/read-back");
        return this;
    }

    /** Answers the page that is open, or goes on from one that asks nothing. */
    Answering step() {
        if (walker.at().equals("/answers/care")) {
            walker.open(walker.only("a.main").attr("href"));
            return this;
        }
        return page();
    }

    /** Answers the page that is open. */
    public Answering page() {
        walker.expect(200);
        pages.add(walker.at());
        return send(filled());
    }

    public Answering readBack() {
        return send(Map.of());
    }

    /** Ticks every statement and types the name. */
    public Answering sign(String name) {
        List<String> ids = walker.page().select("input[name=agree]").eachAttr("value");
        return send(beside(Map.of("agree", ids, "mark", List.of("typed"), "typed", List.of(name)),
            Map.of("guardian-mark", List.of("typed"), "guardian-typed", List.of("Solveig Brandt"))));
    }

    List<String> pages() {
        return pages;
    }

    public Walker walker() {
        return walker;
    }

    /** Sends the page's form with these fields in place of what stands in them. */
    Answering send(Map<String, List<String>> filled) {
        List<Map.Entry<String, String>> fields = new ArrayList<>(walker.fields("main form").stream()
            .filter(f -> !filled.containsKey(f.getKey())).toList());
        filled.forEach((name, values) -> values.forEach(v -> fields.add(Map.entry(name, v))));
        walker.post(walker.page().selectFirst("main form").attr("action"), fields);
        return this;
    }

    /** Every question of the page with what is told about it, else the answer that says no. */
    private Map<String, List<String>> filled() {
        Map<String, List<String>> filled = new LinkedHashMap<>();
        for (Element question : walker.page().select("[data-kind]")) {
            switch (question.attr("data-kind")) {
                case "ONE_OF", "SEVERAL_OF" -> choose(question, filled);
                case "TOGETHER" -> tick(question, filled);
                case "SOME" -> some(question, filled);
                case "TICKS" -> ticks(question, filled);
                case "DETAIL" -> detail(question, filled);
                case "SAID_DATE" -> date(question, filled);
                case "HAIR_LENGTH" -> length(question, filled);
                case "TREATMENTS", "MEDICINES" -> list(question, filled);
                default -> words(question, filled);
            }
        }
        return filled;
    }

    private void choose(Element question, Map<String, List<String>> filled) {
        String id = question.selectFirst("input").attr("name");
        List<String> offered = question.select("input").eachAttr("value");
        filled.put(id, told.getOrDefault(id,
            List.of(offered.stream().filter(AS_GOOD_AS_NO::contains).findFirst().orElse(offered.get(0)))));
    }

    /** One list of several questions: what is told is ticked, and where nothing is, none of these. */
    private void tick(Element list, Map<String, List<String>> filled) {
        List<String> questions = list.select("input[name=together]").eachAttr("value").stream()
            .flatMap(ids -> List.of(ids.split(" ")).stream()).toList();
        questions.forEach(id -> filled.put(id, told(id).stream()
            .filter(code -> !list.select("input[name=%s][value=%s]".formatted(id, code)).isEmpty()).toList()));
        boolean rather = questions.stream().anyMatch(id -> told(id).contains("rather-not-say"));
        boolean no = questions.stream().allMatch(id -> Set.of(List.of(), List.of("dont-know")).contains(filled.get(id)))
            && questions.stream().anyMatch(id -> filled.get(id).isEmpty() && !told(id).contains("dont-know"));
        filled.put("whole-list", rather ? List.of("rather-not-say") : no ? List.of("none") : List.of());
    }

    private List<String> told(String id) {
        return told.getOrDefault(id, List.of());
    }

    /** Whether there is something for a list that is made on the next page. */
    private void some(Element question, Map<String, List<String>> filled) {
        String id = question.selectFirst("input").attr("name");
        boolean some = told.keySet().stream().anyMatch(name -> name.startsWith(id + "."));
        filled.put(id, some ? List.of("some") : told.getOrDefault(id, List.of("none")));
    }

    /** What was done to the hair: one row for each thing told. */
    private void ticks(Element question, Map<String, List<String>> filled) {
        String id = question.selectFirst("input[name$=.ticks]").attr("name").replace(".ticks", "");
        List<String> rows = Told.rows(told, id, question.select("input[name$=.tick]").eachAttr("value"));
        filled.put(id, told.getOrDefault(id, rows.isEmpty() ? List.of("none") : List.of()));
        filled.put(id + ".tick", rows);
    }

    /** About one thing ticked: what is told, else that it is not known. */
    private void detail(Element question, Map<String, List<String>> filled) {
        String id = question.selectFirst("input[name$=.of]").attr("name").replace(".of", "");
        filled.put(id + ".when.precision", List.of("dont-know"));
        filled.put(id + ".zone", List.of("dont-know"));
        told.forEach((name, values) -> {
            if (name.startsWith(id + ".") && !name.endsWith(".what")) {
                filled.put(name, values);
            }
        });
        List<String> kinds = question.select("input[name$=.what]").eachAttr("value");
        if (!kinds.isEmpty()) {
            filled.put(id + ".what", List.of(Told.kind(told, id, kinds)));
        }
    }

    private void date(Element question, Map<String, List<String>> filled) {
        String name = question.selectFirst("input[name$=.precision]").attr("name");
        filled.put(name, told.getOrDefault(name, List.of("dont-know")));
    }

    private void length(Element question, Map<String, List<String>> filled) {
        String id = question.selectFirst("input[name$=.cm]").attr("name").replace(".cm", "");
        if (told.getOrDefault(id, List.of()).contains("dont-know")) {
            filled.put(id, told.get(id));
            return;
        }
        filled.put(id + ".cm", told.getOrDefault(id, List.of("40")));
        filled.put(id + ".straight", List.of("yes"));
    }

    /** Adds what is told of it, as many a page as there is room for: of a field with as many values as there are entries, each its own. */
    private void list(Element question, Map<String, List<String>> filled) {
        String id = question.selectFirst("button[name$=.act]").attr("name").replace(".act", "");
        Map<String, List<String>> told = this.told.entrySet().stream().filter(e -> e.getKey().startsWith(id + "."))
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        int added = question.select("button[name$=.drop]").size();
        int entries = Stream.of(".name", ".what").flatMap(field -> Stream.ofNullable(told.get(id + field)))
            .mapToInt(List::size).findFirst().orElse(told.isEmpty() ? 0 : 1);
        if (added == 0 && entries == 0) {
            filled.put(id, this.told.getOrDefault(id, List.of("none")));
        }
        List<String> rows = question.select("input[name$=.name]").eachAttr("name").stream()
            .map(name -> name.substring(0, name.length() - "name".length())).toList();
        int room = Math.max(1, rows.size());
        for (int i = added; i < Math.min(added + room, entries); i++) {
            String row = rows.isEmpty() ? id + "." : rows.get(i - added);
            int entry = i;
            told.forEach((field, values) -> filled.put(row + field.substring(id.length() + 1),
                entries > 1 && values.size() == entries ? List.of(values.get(entry)) : values));
        }
        boolean more = rows.isEmpty() ? added < entries : added + room < entries;
        filled.put(id + ".act", List.of(more ? "add" : "done"));
    }

    private void words(Element question, Map<String, List<String>> filled) {
        Set<String> names = Set.copyOf(question.select("textarea").eachAttr("name"));
        names.forEach(n -> filled.put(n, told.getOrDefault(n, List.of(""))));
    }
}
