package foretress.knowledge;

import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Keeps;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.TickList;
import foretress.questionnaire.Topic;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads the questionnaire, one file a topic, in the order of the file names. */
final class QuestionnaireReader {
    private static final Map<String, Kind> KINDS = Map.of("one-of", Kind.ONE_OF, "several-of", Kind.SEVERAL_OF,
        "said-date", Kind.SAID_DATE, "hair-length", Kind.HAIR_LENGTH, "treatments", Kind.TREATMENTS, "medicines",
        Kind.MEDICINES,
        "ingredients", Kind.INGREDIENTS, "note", Kind.NOTE);
    private static final Map<String, Keeps> KEEPS = Map.of("the day only",
        Keeps.THE_DAY_ONLY, "the day", Keeps.THE_DAY, "3 months", Keeps.THREE_MONTHS,
        "6 months", Keeps.SIX_MONTHS, "12 months", Keeps.TWELVE_MONTHS, "for good", Keeps.FOR_GOOD);
    private static final Set<Kind> WITH_OPTIONS = Set.of(Kind.ONE_OF, Kind.SEVERAL_OF);

    private final ServicesReader services;
    private final Map<String, Question> questions = new LinkedHashMap<>();
    private final Map<String, Yaml> openings = new LinkedHashMap<>();
    private final Map<String, Yaml> alternatives = new LinkedHashMap<>();
    private final Map<String, Yaml> tellings = new LinkedHashMap<>();
    private final Map<String, Yaml> places = new LinkedHashMap<>();
    private final Set<String> topics = new HashSet<>();

    QuestionnaireReader(ServicesReader services) {
        this.services = services;
    }

    Questionnaire read(List<Yaml> files) {
        List<Topic> read = new ArrayList<>();
        files.forEach(file -> file.trying(f -> read.add(topic(f))));
        openings.forEach((id, when) -> when.trying(w -> Whens.check(w, questions)));
        alternatives.forEach((id, when) -> when.trying(w -> Whens.check(w, questions)));
        tellings.forEach((id, when) -> when.trying(w -> Whens.check(w, questions)));
        openings.forEach((id, when) -> refuseCircle(id, when));
        // Duplicates and circles are complained about; what is left of them must not end the reading with a second message.
        return new Questionnaire(read.stream()
            .map(t -> new Topic(t.id(), t.questions().stream().filter(q -> questions.get(q.id()) == q).toList(),
                t.list()))
            .toList());
    }

    /** Complains about a question where it stands. */
    void complain(String question, String message) {
        places.get(question).complain(message);
    }

    private Topic topic(Yaml file) {
        file.only("topic", "list", "questions");
        String id = IdSyntax.read(file.at("topic"));
        if (!topics.add(id)) {
            file.at("topic").complain("two topics are called '%s'".formatted(id));
        }
        List<Question> own = file.at("questions").each(this::question);
        return new Topic(id, own, list(file, own));
    }

    /** Only what can be ticked stands in a list. */
    private static List<String> list(Yaml file, List<Question> own) {
        Map<String, String> tickable = new LinkedHashMap<>();
        own.stream().filter(q -> WITH_OPTIONS.contains(q.kind()) && q.options().contains(TickList.no(q)))
            .forEach(q -> tickable.put(q.id(), q.id()));
        return file.maybe("list").map(list -> list.list().stream()
            .map(id -> id.oneOf(tickable, "question of this topic that can be ticked")).toList()).orElse(List.of());
    }

    private Question question(Yaml entry) {
        entry.only("id", "kind", "options", "what", "unsure", "private", "asked-for", "when", "or-when", "required",
            "keeps", "record", "rows", "if-unsure", "yes-if", "retired");
        Kind kind = entry.at("kind").oneOf(KINDS, "kind of question");
        var question = new Question(IdSyntax.read(entry.at("id")), kind, options(entry, kind), entry.yes("unsure"),
            entry.yes("private"),
            askedFor(entry), when(entry, "when"), entry.yes("required"), entry.at("keeps").oneOf(KEEPS, "shelf life"),
            entry.yes("record"), new Question.Put(when(entry, "or-when"), rows(entry, kind),
                entry.maybe("if-unsure").map(Yaml::text), when(entry, "yes-if"), entry.yes("retired")));
        if (questions.putIfAbsent(question.id(), question) != null) {
            entry.at("id").complain("two questions are called '%s'".formatted(question.id()));
        }
        places.putIfAbsent(question.id(), entry.at("id"));
        entry.maybe("when").ifPresent(when -> openings.putIfAbsent(question.id(), when));
        entry.maybe("yes-if").ifPresent(when -> {
            if (!question.options().contains(Question.YES)) {
                when.complain("only a question with a yes can be yes");
            }
            tellings.putIfAbsent(question.id(), when);
        });
        entry.maybe("or-when").ifPresent(when -> alternatives.putIfAbsent(question.id(), when));
        return question;
    }

    private static List<String> options(Yaml entry, Kind kind) {
        String field = kind == Kind.TREATMENTS ? "what" : "options";
        boolean needs = kind == Kind.TREATMENTS || WITH_OPTIONS.contains(kind);
        if (!needs) {
            entry.maybe("options").or(() -> entry.maybe("what"))
                .ifPresent(o -> o.complain("only one-of, several-of and treatments have a list to choose from"));
            return List.of();
        }
        List<String> options = new ArrayList<>();
        for (Yaml option : entry.at(field).list()) {
            String code = IdSyntax.read(option);
            if (options.contains(code)) {
                option.complain("'%s' is offered twice".formatted(code));
            }
            if (WITH_OPTIONS.contains(kind)
                && (code.equals(Question.DONT_KNOW) || code.equals(Question.RATHER_NOT_SAY))) {
                option.complain("write 'unsure: yes' or 'private: yes' to offer this");
            }
            options.add(code);
        }
        return options;
    }

    private Set<String> askedFor(Yaml entry) {
        Set<String> asked = new HashSet<>();
        entry.maybe("asked-for").ifPresent(list -> list.listOrOne()
            .forEach(c -> asked.addAll(services.members(c.oneOf(services.named(), "chemistry")))));
        return asked;
    }

    /** What one ticks of a list of treatments; without rows of its own, each kind is one. */
    private static List<Question.Row> rows(Yaml entry, Kind kind) {
        if (kind != Kind.TREATMENTS) {
            return List.of();
        }
        Map<String, String> kinds = new LinkedHashMap<>();
        entry.at("what").list().forEach(code -> kinds.put(code.text(), code.text()));
        return entry.maybe("rows").map(rows -> rows.each(row -> row(row, kinds)))
            .orElseGet(() -> kinds.keySet().stream().map(Question.Row::of).toList());
    }

    private static Question.Row row(Yaml row, Map<String, String> kinds) {
        row.only("row", "kinds", "by");
        String head = row.at("row").oneOf(kinds, "kind of treatment");
        Map<String, String> by = Map.of("home", "home", "salon", "salon");
        return new Question.Row(head,
            row.maybe("kinds").map(list -> list.list().stream().map(k -> k.oneOf(kinds, "kind of treatment")).toList())
                .orElse(List.of(head)),
            row.maybe("by").map(who -> who.oneOf(by, "maker")));
    }

    private static Map<String, List<String>> when(Yaml entry, String field) {
        return entry.maybe(field).map(Whens::read).orElse(Map.of());
    }

    private void refuseCircle(String id, Yaml when) {
        List<String> way = new ArrayList<>(List.of(id));
        wayBack(id, id, way, new HashSet<>()).ifPresent(back -> {
            when.complain("questions open each other in a circle: " + String.join(" ← ", back));
            way.forEach(q -> questions.computeIfPresent(q, (k, v) -> withoutOpening(v)));
        });
    }

    private Optional<List<String>> wayBack(String from, String to, List<String> way, Set<String> seen) {
        Question question = questions.get(from);
        for (String opener : question == null ? Set.<String>of() : question.when().keySet()) {
            if (opener.equals(to)) {
                way.add(to);
                return Optional.of(way);
            }
            if (seen.add(opener)) {
                List<String> longer = new ArrayList<>(way);
                longer.add(opener);
                Optional<List<String>> back = wayBack(opener, to, longer, seen);
                if (back.isPresent()) {
                    return back;
                }
            }
        }
        return Optional.empty();
    }

    private static Question withoutOpening(Question q) {
        return new Question(q.id(), q.kind(), q.options(), q.unsure(), q.personal(), q.askedFor(), Map.of(),
            q.required(), q.keeps(),
            q.recordOnly(), q.put());
    }
}
