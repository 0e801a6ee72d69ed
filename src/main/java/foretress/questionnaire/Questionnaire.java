package foretress.questionnaire;

import foretress.questionnaire.Question.Status;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** All topics in the order they are asked, and which of their questions are put to whom. */
public final class Questionnaire {
    private final List<Topic> topics;
    private final Map<String, Question> byId = new LinkedHashMap<>();
    private final List<Question> questions;
    private final Map<Question.Kind, List<Question>> byKind;

    public Questionnaire(List<Topic> topics) {
        this.topics = List.copyOf(topics);
        for (Topic topic : topics) {
            for (Question question : topic.questions()) {
                if (byId.put(question.id(), question) != null) {
                    throw new IllegalArgumentException("two questions are called " + question.id());
                }
            }
        }
        this.questions = List.copyOf(byId.values());
        this.byKind = questions.stream().collect(Collectors.groupingBy(Question::kind));
    }

    public List<Topic> topics() {
        return topics;
    }

    public List<Question> questions() {
        return questions;
    }

    /** All of a kind, in their order. */
    public List<Question> ofKind(Question.Kind kind) {
        return byKind.getOrDefault(kind, List.of());
    }

    public Optional<Question> question(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    public Optional<Topic> topic(String id) {
        return topics.stream().filter(t -> t.id().equals(id)).findFirst();
    }

    /** The first topic, as they are asked, with one of these questions; empty where none of them is asked anywhere. */
    public Optional<Topic> topicOf(Collection<String> questionIds) {
        return topics.stream().filter(t -> t.questions().stream().anyMatch(q -> questionIds.contains(q.id())))
            .findFirst();
    }

    /** Whether this question is put to a client with these booked chemistries and answers so far. */
    public Status status(Question question, Set<String> chemistries, Answers answers) {
        if (!question.forSome(chemistries)) {
            return Status.NOT_FOR_SERVICE;
        }
        if (question.retired()) {
            return answers.to(question.id()).isPresent() ? Status.ASKED : Status.CLOSED;
        }
        Status opened = opened(question.when(), chemistries, answers);
        boolean otherwise = question.orWhen().entrySet().stream()
            .anyMatch(e -> opened(Map.of(e.getKey(), e.getValue()), chemistries, answers) == Status.ASKED);
        return otherwise ? Status.ASKED : opened;
    }

    /**
     * These answers, and those that follow from not knowing: where an opener is not known, a question that would only ask about it
     * reads as not known as well, or as the one question put about everything that is not known. A gate that came later reads as yes
     * where what lies behind it was told; nothing reads as a no.
     */
    public Answers implied(Set<String> chemistries, Answers answers) {
        Answers all = opened(chemistries, answers);
        for (Question question : byId.values()) {
            if (all.to(question.id()).isEmpty() && question.ifUnsure().isPresent() && unsure(question, all)
                && status(question, chemistries, all) == Status.ASKED) {
                Optional<Answer> implied = implied(question, question.ifUnsure().get(), chemistries, all);
                all = implied.isPresent() ? all.with(question.id(), implied.get()) : all;
            }
        }
        return all;
    }

    private Answers opened(Set<String> chemistries, Answers answers) {
        Answers all = answers;
        for (Question question : byId.values()) {
            if (all.to(question.id()).isEmpty() && saysAny(question.yesIf(), all)
                && status(question, chemistries, all) == Status.ASKED) {
                all = all.with(question.id(), Answer.Chosen.of(Question.YES));
            }
        }
        return all;
    }

    private static boolean unsure(Question question, Answers answers) {
        return question.when().keySet().stream().anyMatch(id -> answers.to(id).filter(Answer::unknown).isPresent());
    }

    private Optional<Answer> implied(Question question, String source, Set<String> chemistries, Answers answers) {
        if (source.equals(Question.NOT_KNOWN)) {
            return Optional.of(Answer.DONT_KNOW);
        }
        return statusOf(source, chemistries, answers) == Status.ASKED
            ? Optional.of(answers.to(source).map(said -> within(question, said)).orElse(Answer.DONT_KNOW))
            : Optional.empty();
    }

    private static Answer within(Question question, Answer said) {
        List<String> codes = said.codes().stream().filter(question.options()::contains).toList();
        return codes.isEmpty() ? Answer.DONT_KNOW : new Answer.Chosen(codes);
    }

    private Status opened(Map<String, List<String>> openings, Set<String> chemistries, Answers answers) {
        for (Map.Entry<String, List<String>> opening : openings.entrySet()) {
            Status earlier = statusOf(opening.getKey(), chemistries, answers);
            if (earlier != Status.ASKED) {
                return earlier;
            }
            // Not answered yet leaves the question open: it must never read as a no.
            Optional<Answer> said = answers.to(opening.getKey());
            if (said.isPresent() && said.get().codes().stream().noneMatch(opening.getValue()::contains)) {
                return Status.CLOSED;
            }
        }
        return Status.ASKED;
    }

    /** The questions of a topic that are put; those waiting for an unanswered earlier one are put later. */
    public List<Question> put(Topic topic, Set<String> chemistries, Answers answers) {
        return topic.questions().stream()
            .filter(q -> status(q, chemistries, answers) == Status.ASKED && opened(q, answers))
            .toList();
    }

    /** The topics that have something to ask. */
    public List<Topic> relevant(Set<String> chemistries, Answers answers) {
        return topics.stream().filter(t -> !put(t, chemistries, answers).isEmpty()).toList();
    }

    /** Required questions put and not yet answered. */
    public List<Question> missing(Set<String> chemistries, Answers answers) {
        return topics.stream()
            .flatMap(t -> put(t, chemistries, answers).stream())
            .filter(q -> q.required() && answers.to(q.id()).isEmpty())
            .toList();
    }

    /** Answers without those that a later answer closed: in the order of the questionnaire, since closing one can close the next. */
    public Answers stillOpen(Set<String> chemistries, Answers all) {
        Answers open = all;
        for (Question question : byId.values()) {
            if (status(question, chemistries, open) == Status.CLOSED) {
                open = open.without(question.id());
            }
        }
        return open;
    }

    private Status statusOf(String id, Set<String> chemistries, Answers answers) {
        Question question = question(id).orElseThrow(() -> new IllegalArgumentException("no question is called " + id));
        return status(question, chemistries, answers);
    }

    private static boolean opened(Question question, Answers answers) {
        return question.when().keySet().stream().allMatch(id -> answers.to(id).isPresent())
            && says(question.when(), answers)
            || saysAny(question.orWhen(), answers);
    }

    private static boolean saysAny(Map<String, List<String>> openings, Answers answers) {
        return openings.entrySet().stream().anyMatch(e -> says(Map.of(e.getKey(), e.getValue()), answers));
    }

    private static boolean says(Map<String, List<String>> openings, Answers answers) {
        return openings.entrySet().stream().allMatch(
            e -> answers.to(e.getKey()).filter(a -> a.codes().stream().anyMatch(e.getValue()::contains)).isPresent());
    }
}
