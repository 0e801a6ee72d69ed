package foretress.knowledge;

import foretress.assessment.ComputedAs;
import foretress.assessment.Cue;
import foretress.assessment.FactDef;
import foretress.assessment.FactDef.Computation;
import foretress.assessment.FactDef.Event;
import foretress.assessment.FactDef.Medicines;
import foretress.assessment.FactDef.Outcomes;
import foretress.assessment.FactDef.Row;
import foretress.assessment.Figure;
import foretress.assessment.TestFact;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Questionnaire;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads the facts: what the answers mean, as classes from better to worse. */
final class FactsReader {
    /** Words CEL keeps for itself; a fact or class called so could not be written in a condition. */
    private static final Set<String> CEL_WORDS =
        Set.of("as", "break", "const", "continue", "else", "false", "for", "function", "if",
            "import", "in", "let", "loop", "namespace", "null", "package", "return", "true", "var", "void", "while");
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
    private static final Set<ComputedAs> FROM_TREATMENTS =
        EnumSet.of(ComputedAs.LEFT, ComputedAs.LEFT_BY_AGE, ComputedAs.KIND_LEFT, ComputedAs.METAL);
    private static final Set<ComputedAs> NEEDS_NO_OF = EnumSet.of(ComputedAs.AGE, ComputedAs.HAIR_LENGTH,
        ComputedAs.UNKNOWN_MEDICINE, ComputedAs.LOOKED_UP_MEDICINE, ComputedAs.LABEL_METAL,
        ComputedAs.LABEL_DYE_GROUP, ComputedAs.LABEL_UNKNOWN, ComputedAs.SKIN_TEST, ComputedAs.METAL_TEST);
    private static final Set<ComputedAs> FROM_FACTS =
        EnumSet.of(ComputedAs.SKIN_TEST, ComputedAs.LETTER_OR_TEST, ComputedAs.MEDICAL_ADVICE);

    private final Map<String, Question> questions = new LinkedHashMap<>();
    private final Set<String> treatments = new LinkedHashSet<>();
    private final Set<String> read = new LinkedHashSet<>();
    private final Map<String, FactDef> facts = new LinkedHashMap<>();
    private final List<Cue> cues = new ArrayList<>();
    private final List<Map<String, List<String>>> slowing = new ArrayList<>();
    /** Facts that a computation reads; held against the facts once all are read. */
    private final List<Yaml> named = new ArrayList<>();

    FactsReader(Questionnaire questionnaire) {
        for (Question question : questionnaire.questions()) {
            questions.put(question.id(), question);
            read.addAll(question.when().keySet());
            if (question.kind() == Kind.TREATMENTS) {
                treatments.addAll(question.options());
            }
        }
    }

    void read(Yaml file) {
        file.each(this::fact);
        named.forEach(list -> list.each(id -> id.oneOf(facts.keySet(), "fact")));
    }

    void readCues(Yaml file) {
        file.trying(whole -> whole.list().forEach(entry -> entry.trying(this::cueOrSlowing)));
    }

    private void cueOrSlowing(Yaml entry) {
        if (entry.maybe("slows-growth").isEmpty()) {
            cues.add(cue(entry));
        } else if (entry.only("slows-growth", "when").yes("slows-growth")) {
            slowing.add(when(entry.at("when")));
        }
    }

    private Cue cue(Yaml entry) {
        entry.only("what", "listed-as", "at-least", "when");
        String what = entry.at("what").oneOf(treatments, "treatment");
        List<String> listedAs = entry.maybe("listed-as")
            .map(list -> list.each(code -> code.oneOf(treatments, "treatment"))).orElse(List.of(what));
        return new Cue(what, listedAs, entry.maybe("at-least").map(n -> n.number(1, 20)).orElse(1),
            when(entry.at("when")));
    }

    private FactDef fact(Yaml entry) {
        entry.only("id", "classes", "rows", "computed", "of", "recent-weeks", "old-years", "past-months",
            "overtaken-by", "names",
            "lighter", "also-on-skin", "not-on-skin", "outcomes", "not-done",
            "from");
        String id = name(entry.at("id"));
        List<String> classes = classes(entry.at("classes"));
        if (entry.maybe("rows").isEmpty() && entry.maybe("computed").isEmpty()) {
            throw entry.refuse("a fact has rows, a computation, or both: write 'rows:' or 'computed:'");
        }
        List<Row> rows = entry.maybe("rows").map(list -> list.each(row -> row(row, classes))).orElse(List.of());
        var def = new FactDef(id, classes, rows, entry.maybe("computed").map(c -> computation(entry, c, classes)));
        if (facts.putIfAbsent(id, def) != null) {
            entry.at("id").complain("two facts are called '%s'".formatted(id));
        }
        return def;
    }

    private static String name(Yaml yaml) {
        String name = yaml.text();
        if (!NAME.matcher(name).matches() || CEL_WORDS.contains(name)) {
            throw yaml.refuse(
                "'%s' cannot be written in a condition: small letters and figures joined by hyphens, a letter first, no word of the condition language"
                    .formatted(name));
        }
        return name;
    }

    private static List<String> classes(Yaml list) {
        List<String> classes = new ArrayList<>();
        for (Yaml entry : list.list()) {
            if (classes.contains(name(entry))) {
                entry.complain("two classes are called '%s'".formatted(entry.text()));
            }
            classes.add(entry.text());
        }
        if (classes.size() < 2) {
            throw list.refuse("a fact has at least two classes, the best first");
        }
        return classes;
    }

    private Row row(Yaml entry, List<String> classes) {
        entry.only("class", "when", "policy");
        int ordinal = ordinal(entry.at("class"), classes);
        if (ordinal == 0) {
            entry.at("class").complain("the best class needs no row: it is what is left when no other row holds");
        }
        return new Row(ordinal, when(entry.at("when")),
            entry.maybe("policy").map(FactsReader::atLeast).orElse(Map.of()));
    }

    private static Map<String, Integer> atLeast(Yaml figures) {
        Map<String, Integer> read = new LinkedHashMap<>();
        figures.pairs().forEach(pair -> pair.getKey().trying(
            name -> read.put(name.oneOf(PolicyReader.FIGURES, "figure of a policy called"),
                pair.getValue().number(1, 1000))));
        return read;
    }

    private Map<String, List<String>> when(Yaml when) {
        Whens.check(when, questions);
        read.addAll(when.fields().keySet());
        return Whens.read(when);
    }

    private Computation computation(Yaml entry, Yaml name, List<String> classes) {
        ComputedAs as = ComputedAs.of(name.oneOf(ComputedAs.codes(), "computation"));
        if (!as.fits(classes.size())) {
            entry.at("classes")
                .complain("'%s' tells these classes apart: %s".formatted(as.code(), String.join(" < ", as.meanings())));
        }
        if (as == ComputedAs.LEFT && (classes.size() == 3) != entry.maybe("recent-weeks").isPresent()) {
            entry.at("classes").complain("'left' has a third class exactly where 'recent-weeks' says what is recent");
        }
        if ((as == ComputedAs.LEFT_BY_AGE) == entry.maybe("old-years").isEmpty()) {
            entry.at("classes").complain("'left-by-age', and nothing else, says with 'old-years' what is old");
        }
        if ((as == ComputedAs.ANY_OF) == entry.maybe("from").isEmpty()) {
            throw name
                .refuse("'any-of', and nothing else, says with 'from:' which facts count, each from which class on");
        }
        if (as == ComputedAs.ANY_OF) {
            return Computation.anyOf(from(entry.at("from")));
        }
        if (!NEEDS_NO_OF.contains(as) && entry.maybe("of").isEmpty()) {
            throw name.refuse("say what to look for: 'of: [...]'");
        }
        return new Computation(as, of(entry, as), figure(entry, "recent-weeks"),
            figure(entry, "old-years"), figure(entry, "past-months"),
            entry.maybe("overtaken-by").map(list -> list.each(this::event)).orElse(List.of()),
            new Medicines(texts(entry, "names"), texts(entry, "lighter"), texts(entry, "also-on-skin"),
                texts(entry, "not-on-skin")),
            outcomes(entry, as, classes), Map.of());
    }

    /** Every outcome of the tests has its class, and one class means that nobody tested. */
    private static Optional<Outcomes> outcomes(Yaml entry, ComputedAs as, List<String> classes) {
        if (as != ComputedAs.CHAIR_TEST) {
            Stream.of("outcomes", "not-done").flatMap(field -> entry.maybe(field).stream())
                .forEach(field -> field.complain("only a fact that is 'computed: chair-test' says this"));
            return Optional.empty();
        }
        Set<String> known = entry.at("of").texts().stream()
            .flatMap(test -> TestFact.OUTCOMES.getOrDefault(test, List.of()).stream())
            .collect(Collectors.toCollection(LinkedHashSet::new));
        Map<String, Integer> ordinals = new LinkedHashMap<>();
        entry.at("outcomes").pairs().forEach(pair -> pair.getKey().trying(outcome -> ordinals
            .put(outcome.oneOf(known, "outcome of these tests called"), ordinal(pair.getValue(), classes))));
        known.stream().filter(outcome -> !ordinals.containsKey(outcome)).findFirst().ifPresent(outcome -> entry
            .at("outcomes").complain("'%s' can come out too: say which class it is".formatted(outcome)));
        return Optional.of(new Outcomes(ordinals, ordinal(entry.at("not-done"), classes)));
    }

    private static int ordinal(Yaml className, List<String> classes) {
        return classes.indexOf(className.oneOf(classes, "class of this fact called"));
    }

    private static List<String> texts(Yaml entry, String field) {
        return entry.maybe(field).map(list -> list.each(Yaml::text)).orElse(List.of());
    }

    private Event event(Yaml entry) {
        entry.only("when", "dated");
        return new Event(when(entry.at("when")), entry.maybe("dated").map(this::date));
    }

    private String date(Yaml name) {
        String id = name.oneOf(questions.keySet(), "question");
        if (questions.get(id).kind() != Kind.SAID_DATE) {
            throw name.refuse("'%s' asks for no date".formatted(id));
        }
        read.add(id);
        return id;
    }

    private List<String> of(Yaml entry, ComputedAs as) {
        Optional<Yaml> list = entry.maybe("of");
        if (list.isPresent() && FROM_TREATMENTS.contains(as)) {
            return list.get().each(code -> code.oneOf(treatments, "treatment"));
        }
        if (list.isPresent() && as == ComputedAs.POLICY_ALLOWS) {
            return list.get().each(figure -> figure.oneOf(PolicyReader.FIGURES, "figure of a policy called"));
        }
        if (list.isPresent() && as == ComputedAs.CHAIR_TEST) {
            return list.get().each(test -> test.oneOf(TestFact.OUTCOMES.keySet(), "test"));
        }
        if (list.isPresent() && FROM_FACTS.contains(as)) {
            named.add(list.get());
        }
        return list.map(l -> l.each(IdSyntax::read)).orElse(List.of());
    }

    /** Facts read before this one, and a class of each. */
    private Map<String, String> from(Yaml parts) {
        Map<String, String> from = new LinkedHashMap<>();
        parts.pairs().forEach(pair -> pair.getKey().trying(id -> {
            FactDef part = facts.get(id.oneOf(facts.keySet(), "fact written before this one called"));
            from.put(part.id(), pair.getValue().oneOf(part.classes(), "class of this fact called"));
        }));
        return from;
    }

    private static Optional<Figure> figure(Yaml entry, String field) {
        return entry.maybe(field).map(f -> Character.isDigit(f.text().charAt(0)) ? Figure.of(f.number(1, 1000))
            : Figure.ofPolicy(f.oneOf(PolicyReader.FIGURES, "figure of a policy called")));
    }

    Map<String, FactDef> facts() {
        return facts;
    }

    List<Map<String, List<String>>> slowing() {
        return slowing;
    }

    List<Cue> cues() {
        return cues;
    }

    /** Choices that no fact, cue or other question looks at, and that are not marked as kept for the record alone. */
    List<String> unread() {
        return questions.values().stream()
            .filter(q -> !q.recordOnly() && !read.contains(q.id()))
            .filter(q -> q.kind() == Kind.ONE_OF || q.kind() == Kind.SEVERAL_OF)
            .map(Question::id).toList();
    }
}
