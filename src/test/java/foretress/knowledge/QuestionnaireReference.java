package foretress.knowledge;

import foretress.assessment.Cue;
import foretress.assessment.FactDef;
import foretress.assessment.Service;
import foretress.knowledge.Words.QuestionWords;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Keeps;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Topic;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes docs/reference/questionnaire.md from knowledge. */
final class QuestionnaireReference {
    private static final Map<Kind, String> KINDS = Map.of(Kind.ONE_OF, "one of", Kind.SEVERAL_OF, "several of",
        Kind.SAID_DATE,
        "a date as precise as one can say it", Kind.HAIR_LENGTH, "the length of the longest hair", Kind.TREATMENTS,
        "a list of earlier treatments",
        Kind.MEDICINES, "a list of medicines", Kind.INGREDIENTS, "a copied ingredient list", Kind.NOTE, "free words");
    private static final Map<Keeps, String> KEEPS =
        Map.of(Keeps.THE_DAY_ONLY, "for the day, and is asked in the last two days before it", Keeps.THE_DAY,
            "for the day", Keeps.THREE_MONTHS, "3 months", Keeps.SIX_MONTHS, "6 months",
            Keeps.TWELVE_MONTHS, "12 months", Keeps.FOR_GOOD, "for good");

    private final Knowledge knowledge;
    private final Words words;
    private final StringBuilder page = new StringBuilder();

    QuestionnaireReference(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.words = knowledge.words("en");
    }

    String write() {
        line("# The questionnaire");
        line("");
        line(
            "Every question a client can be asked, in the order of the pages, in the English words. This page is made from");
        line("`src/main/knowledge`; a test fails when it is out of date and says how to make it anew.");
        line("");
        line(
            "Each question that can be answered with a fact offers *don't know*; private ones also *rather not say*. Nothing is chosen");
        line(
            "beforehand, and a blank is never a no. A question is put when the booked service needs it and earlier answers open it. The names");
        line("set `like-this` are the codes of `src/main/knowledge`: questions, answers, services and facts.");
        knowledge.questionnaire().topics().forEach(this::topic);
        return page.toString();
    }

    private void topic(Topic topic) {
        line("");
        line("## " + words.topic(topic.id()));
        line("");
        line("Topic `%s`.%s".formatted(topic.id(), topic.list().isEmpty() ? ""
            : " One list to tick: " + topic.list().stream().map("`%s`"::formatted).collect(Collectors.joining(", "))
                + "."));
        topic.questions().forEach(this::question);
    }

    private void question(Question question) {
        QuestionWords own = words.question(question.id());
        line("");
        line("### " + own.ask());
        line("");
        line(own.hint().isEmpty() ? "" : own.hint() + "  ");
        line("*Why we ask:* " + own.why());
        line("");
        line("- `%s`, %s%s%s".formatted(question.id(), KINDS.get(question.kind()),
            question.required() ? ", must be answered" : ", may be left out",
            question.personal() ? ", private" : ""));
        question.options().forEach(code -> line("  - `%s` %s".formatted(code, words.option(question.id(), code))));
        line("- asked for " + services(question));
        opened(question);
        line("- stays good " + KEEPS.get(question.keeps()));
        line("- read by " + readers(question));
    }

    private void opened(Question question) {
        if (!question.when().isEmpty()) {
            line("- only when " + question.when().entrySet().stream().sorted(Map.Entry.comparingByKey())
                .map(e -> "`%s` is %s".formatted(e.getKey(),
                    e.getValue().stream().map("`%s`"::formatted).collect(Collectors.joining(" or "))))
                .collect(Collectors.joining(" and ")));
        }
        question.orWhen().forEach((opener, codes) -> line("- or when `%s` is %s".formatted(opener,
            codes.stream().map("`%s`"::formatted).collect(Collectors.joining(" or ")))));
        question.ifUnsure().ifPresent(source -> line(source.equals(Question.NOT_KNOWN)
            ? "- not asked where its opener is not known: it is not known either"
            : "- not asked where its opener is not known: the answer to `%s` stands for it".formatted(source)));
        if (question.retired()) {
            line("- no longer put; an answer given before still counts");
        }
    }

    /** The shorter of the two lists: those that ask it, or those that do not. */
    private String services(Question question) {
        List<Service> all = knowledge.ruleSet().services();
        List<Service> asking = all.stream().filter(s -> asked(question, s.chemistries())).toList();
        List<Service> others = all.stream().filter(s -> !asking.contains(s)).toList();
        String every = others.isEmpty() ? "every service" : "every service but " + ids(others);
        return others.size() < asking.size() ? every : ids(asking);
    }

    private static String ids(List<Service> services) {
        return services.stream().map(s -> "`%s`".formatted(s.id())).collect(Collectors.joining(", "));
    }

    private static boolean asked(Question question, Set<String> chemistries) {
        return question.askedFor().isEmpty() || question.askedFor().stream().anyMatch(chemistries::contains);
    }

    private String readers(Question question) {
        Stream<String> facts = knowledge.ruleSet().facts().stream().filter(f -> reads(f, question))
            .map(f -> "the fact `%s`".formatted(f.id()));
        Stream<String> cues = knowledge.ruleSet().cues().stream().filter(c -> c.when().containsKey(question.id()))
            .map(Cue::what).distinct()
            .map(what -> "the cue for `%s`".formatted(what));
        String read = Stream.concat(facts, cues).collect(Collectors.joining(", "));
        return !read.isEmpty() ? read : question.recordOnly() ? "the record alone" : "a computation";
    }

    private static boolean reads(FactDef fact, Question question) {
        return fact.rows().stream().anyMatch(row -> row.when().containsKey(question.id()));
    }

    private void line(String line) {
        page.append(line).append('\n');
    }
}
