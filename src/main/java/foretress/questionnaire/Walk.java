package foretress.questionnaire;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The way of one client through the questionnaire: which page comes next and which questions stand on it. Worked out here and
 * nowhere else. Every question that is open is put before the answers are read back; an optional one may then be left empty.
 *
 * @param chemistries of what is booked
 * @param said the answers so far, without those that a later answer closed
 * @param put ids of questions that stood on a page which the client sent, answered or left empty
 * @param near whether the visit is so near that what is asked only then is put; else it stands on no page
 */
public record Walk(Questionnaire questionnaire, Set<String> chemistries, Answers said, Set<String> put, boolean near) {
    /** Everything asked near the visit is put too. */
    public Walk(Questionnaire questionnaire, Set<String> chemistries, Answers said, Set<String> put) {
        this(questionnaire, chemistries, said, put, true);
    }

    /**
     * One page to come.
     *
     * @param opened it asks only what came up since the rest of its topic was sent
     */
    public record Step(Topic topic, List<Question> questions, boolean opened) {}

    public Walk {
        chemistries = Set.copyOf(chemistries);
        put = Set.copyOf(put);
    }

    /** The topics that have something to ask, in order. */
    public List<Topic> topics() {
        return questionnaire.topics().stream().filter(t -> !open(t).isEmpty()).toList();
    }

    /** Everything a topic asks now. */
    public List<Question> open(Topic topic) {
        return questionnaire.put(topic, chemistries, said).stream().filter(q -> near || !q.onlyNear()).toList();
    }

    /** What is still to be put before the answers are read back. */
    public List<Question> waiting() {
        return questionnaire.topics().stream().flatMap(t -> waiting(t).stream()).toList();
    }

    /** The first page with something that was not put yet; none once all can be read back. */
    public Optional<Step> next() {
        return topics().stream().filter(t -> !waiting(t).isEmpty()).findFirst()
            .map(t -> opened(t).orElseGet(() -> whole(t)));
    }

    /** The page after this topic: what an answer opened in it, else the next topic in order so that nobody is thrown about. */
    public Optional<Step> after(Topic topic) {
        return opened(topic).or(() -> following(topic)).or(this::next);
    }

    /** What came up in a topic since it was sent, alone. */
    public Optional<Step> opened(Topic topic) {
        List<Question> waiting = waiting(topic);
        List<Question> ticked =
            waiting.stream().filter(q -> said.to(q.id()).filter(Walk::onlyTicked).isPresent()).toList();
        if (!ticked.isEmpty()) {
            return Optional.of(new Step(topic, ticked.subList(0, 1), true));
        }
        return waiting.isEmpty() || waiting.size() == open(topic).size() ? Optional.empty()
            : Optional.of(new Step(topic, listsLast(waiting), true));
    }

    /** A list is made on a page of its own, after whatever else came up. */
    private static List<Question> listsLast(List<Question> waiting) {
        List<Question> others = waiting.stream().filter(q -> q.kind() != Question.Kind.MEDICINES).toList();
        return others.isEmpty() ? waiting : others;
    }

    /** The page at a topic's address: all of it, or what came up; whoever comes back to the latter finds the same kind of questions. */
    public Step page(Topic topic, boolean opened) {
        return opened ? opened(topic).or(() -> followUps(topic)).orElseGet(() -> whole(topic)) : whole(topic);
    }

    /** Questions of the same page that opened this one. */
    public List<Question> openers(Topic topic, Question question) {
        return topic.questions().stream().filter(q -> question.when().containsKey(q.id())
            || question.orWhen().containsKey(q.id())).toList();
    }

    private Optional<Step> followUps(Topic topic) {
        List<Question> opened = open(topic).stream().filter(q -> !openers(topic, q).isEmpty() || listed(q)).toList();
        return opened.isEmpty() ? Optional.empty() : Optional.of(new Step(topic, opened, true));
    }

    /** A list that was begun stands on a page of its own too, beside others it is only asked whether there is something for it. */
    private boolean listed(Question question) {
        return said.to(question.id()).filter(a -> a instanceof Answer.Medicines || a instanceof Answer.Treatments)
            .isPresent();
    }

    private Step whole(Topic topic) {
        return new Step(topic, open(topic), false);
    }

    private Optional<Step> following(Topic topic) {
        int at = questionnaire.topics().indexOf(topic);
        return topics().stream().filter(t -> questionnaire.topics().indexOf(t) > at).filter(this::toShow).findFirst()
            .map(this::whole);
    }

    /** A topic of which everything follows from not knowing, and nothing was ever put, is passed over. */
    private boolean toShow(Topic topic) {
        return !waiting(topic).isEmpty() || open(topic).stream().anyMatch(q -> put.contains(q.id()));
    }

    private List<Question> waiting(Topic topic) {
        return open(topic).stream().filter(this::waits).toList();
    }

    /** Whether something on the list was only ticked, so that a page of its own is still to come. */
    private static boolean onlyTicked(Answer answer) {
        return answer instanceof Answer.Treatments treatments
            && treatments.list().stream().anyMatch(SaidTreatment::onlyTicked);
    }

    private boolean waits(Question question) {
        return said.to(question.id()).filter(Walk::onlyTicked).isPresent()
            || said.to(question.id()).isEmpty() && (question.required() || !put.contains(question.id()));
    }
}
