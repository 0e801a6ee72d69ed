package foretress.intake;

import foretress.assessment.Service;
import foretress.invitation.HowLong;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Topic;
import foretress.salon.Menu;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * Counted from the words of the questions a client with nothing to tell is asked before the service that asks most: the door is
 * the same for everybody.
 */
@Singleton
class ReadingTime implements HowLong {
    /** Slower than adults read print in silence (238 words a minute in English; from memory, Brysbaert 2019). */
    private static final double WORDS_A_MINUTE = 200;
    /** To choose an answer; our own figure. */
    private static final double SECONDS_A_QUESTION = 3;
    /** What stands around the questions: door, notice, read-back, consent, what comes then. WalkLengthTest holds it to what is counted. */
    private static final int AROUND = 500;

    private record Asked(String language, Set<String> chemistries) {}

    private final Knowledge knowledge;
    private final Menu menu;
    private final Map<Asked, Integer> known = new ConcurrentHashMap<>();

    ReadingTime(Knowledge knowledge, Menu menu) {
        this.knowledge = knowledge;
        this.menu = menu;
    }

    @Override
    public int minutes(String language) {
        return menu.offered().stream().map(Service::chemistries)
            .mapToInt(chemistries -> known.computeIfAbsent(new Asked(language, Set.copyOf(chemistries)), this::minutes))
            .max().orElse(1);
    }

    private int minutes(Asked asked) {
        Answers nothing = knowledge.answeredWell(Answers.NONE, asked.chemistries());
        List<Question> put = knowledge.questionnaire().relevant(asked.chemistries(), nothing).stream()
            .flatMap(topic -> put(topic, asked, nothing)).toList();
        Words words = knowledge.words(asked.language());
        long read = AROUND + put.stream().mapToLong(q -> counted(q, words)).sum();
        return (int) Math.ceil(read / WORDS_A_MINUTE + put.size() * SECONDS_A_QUESTION / 60);
    }

    private Stream<Question> put(Topic topic, Asked asked, Answers said) {
        return knowledge.questionnaire().put(topic, asked.chemistries(), said).stream();
    }

    private static long counted(Question question, Words words) {
        Words.QuestionWords said = words.question(question.id());
        Stream<String> options = question.options().stream().map(code -> words.option(question.id(), code));
        return Stream.concat(Stream.of(said.row()), options)
            .mapToLong(text -> text.split("\\s+").length).sum();
    }
}
