package foretress.intake;

import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.FormReader;
import foretress.questionnaire.Question;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.Reading;
import foretress.questionnaire.Topic;
import foretress.vault.Vault;
import foretress.visit.State;
import foretress.visit.Visit;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;

/** What a client says about one visit: kept topic by topic, version by version, and read back whole. */
@ApplicationScoped
public class Intake {
    private static final String CSRF = "csrf-token";

    private final Knowledge knowledge;
    private final BookedChemistry chemistry;
    private final Assessments assessments;
    private final Care care;
    private final Vault vault;
    private final Clock clock;

    Intake(Knowledge knowledge, BookedChemistry chemistry, Assessments assessments, Care care, Vault vault, Clock clock) {
        this.knowledge = knowledge;
        this.chemistry = chemistry;
        this.assessments = assessments;
        this.care = care;
        this.vault = vault;
        this.clock = clock;
    }

    /** The newest version of every answer; answers that a later "no" closed are left out, though they stay on file. */
    public Answers said(Visit visit) {
        Answers all = Answers.NONE;
        for (KeptTopic kept : KeptTopic.newest(visit.id)) {
            all = all.and(open(kept));
        }
        return stillOpen(visit, all);
    }

    /** The answers as they stood at that moment. */
    public Answers saidBy(Visit visit, Instant moment) {
        Map<String, Answers> byTopic = new LinkedHashMap<>();
        KeptTopic.savedBy(visit.id, moment).forEach(kept -> byTopic.put(kept.topic, open(kept)));
        Answers all = Answers.NONE;
        for (Answers own : byTopic.values()) {
            all = all.and(own);
        }
        return stillOpen(visit, all);
    }

    /** The topics that have something to ask for this visit, in order. */
    public List<Topic> topics(Visit visit, Answers said) {
        return questionnaire().relevant(chemistry.of(visit), said);
    }

    /** The questions of a topic that are put now. */
    public List<Question> put(Visit visit, Topic topic, Answers said) {
        return questionnaire().put(topic, chemistry.of(visit), said);
    }

    public List<Question> missing(Visit visit, Answers said) {
        return questionnaire().missing(chemistry.of(visit), said);
    }

    public int version(Visit visit, Topic topic) {
        return KeptTopic.lastVersion(visit.id, topic.id());
    }

    /** A page's words, read; where something needs a second look nothing is stored and everything typed comes back. */
    @Transactional
    public Kept keep(UUID visitId, Topic topic, Page page) {
        Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
        Answers before = said(visit);
        List<Question> put = put(visit, topic, before);
        if (KeptTopic.submitted(visit.id, page.pressing()).isPresent()) {
            return Kept.again();
        }
        Reading reading = new FormReader(today(visit)).read(put, page.fields(), before);
        if (!reading.clean()) {
            return Kept.mistaken(reading);
        }
        if (page.version() != version(visit, topic)) {
            return Kept.overtaken(reading);
        }
        store(visit, topic, page.language(), page.pressing(), ofTopic(topic, reading.over(before)));
        return Kept.clean(reading);
    }

    /** Keeps a topic's answers that did not come from a page: read from paper, or invented for the demo. */
    @Transactional
    public void record(UUID visitId, Topic topic, Answers answers, String language) {
        Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
        store(visit, topic, language, UUID.randomUUID().toString(), ofTopic(topic, answers));
    }

    /** The client has read exactly these answers back. */
    @Transactional
    public void readBack(Visit visit, Answers said) {
        ReadBack read = new ReadBack();
        read.id = UUID.randomUUID();
        read.visitId = visit.id;
        read.answersSha256 = hash(said);
        read.confirmedAt = clock.instant();
        read.persist();
    }

    private void store(Visit visit, Topic topic, String language, String submission, Answers own) {
        KeptTopic kept = new KeptTopic();
        kept.id = UUID.randomUUID();
        kept.visitId = visit.id;
        kept.clientId = visit.client.id;
        kept.topic = topic.id();
        kept.version = version(visit, topic) + 1;
        kept.language = language;
        kept.savedAt = clock.instant();
        kept.submission = submission;
        kept.body = vault.seal(visit.client.id, kept.place(), AnswerJson.write(own));
        kept.persist();
        // What was signed stays signed for what it said; these answers want a signature of their own.
        if (visit.state == State.SIGNED) {
            visit.moveTo(State.ANSWERING);
            visit.unsign();
        }
        care.watch(visit, assessments.renew(visit, said(visit)));
    }

    private Answers open(KeptTopic kept) {
        return AnswerJson.read(vault.open(kept.clientId, kept.place(), kept.body));
    }

    /** Closed ones fall away in the order of the questionnaire, since closing one can close the next. */
    private Answers stillOpen(Visit visit, Answers all) {
        Set<String> chemistries = chemistry.of(visit);
        Answers open = all;
        for (Question question : questionnaire().questions()) {
            if (questionnaire().status(question, chemistries, open) == Question.Status.CLOSED) {
                open = open.without(question.id());
            }
        }
        return open;
    }

    private static Answers ofTopic(Topic topic, Answers answers) {
        Map<String, Answer> own = new LinkedHashMap<>();
        for (Question question : topic.questions()) {
            answers.to(question.id()).ifPresent(a -> own.put(question.id(), a));
        }
        return new Answers(own);
    }

    /** Names exactly these answers. */
    static String hash(Answers said) {
        return Hashes.sha256(AnswerJson.write(said));
    }

    LocalDate today(Visit visit) {
        return clock.instant().atZone(visit.zone()).toLocalDate();
    }

    private Questionnaire questionnaire() {
        return knowledge.questionnaire();
    }

    /**
     * One posted page.
     *
     * @param submission made with the page
     * @param version of the topic's answers that the page was made from
     */
    public record Page(Map<String, List<String>> fields, String submission, int version, String language) {
        /**
         * The same words sent again from the same page are one saving. Other words from it, after Back, are not: they must not
         * be taken for what was kept already.
         */
        String pressing() {
            Map<String, List<String>> said = new TreeMap<>(fields);
            said.remove(CSRF);
            return Hashes.sha256((submission + said).getBytes(StandardCharsets.UTF_8));
        }
    }

    /** What became of a posted page. */
    public record Kept(Outcome outcome, Optional<Reading> reading) {
        public enum Outcome { CLEAN, AGAIN, MISTAKEN, OVERTAKEN }

        static Kept clean(Reading reading) {
            return new Kept(Outcome.CLEAN, Optional.of(reading));
        }

        static Kept again() {
            return new Kept(Outcome.AGAIN, Optional.empty());
        }

        static Kept mistaken(Reading reading) {
            return new Kept(Outcome.MISTAKEN, Optional.of(reading));
        }

        /** The same topic was answered elsewhere since this page was made. */
        static Kept overtaken(Reading reading) {
            return new Kept(Outcome.OVERTAKEN, Optional.of(reading));
        }
    }
}
