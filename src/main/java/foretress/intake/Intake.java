package foretress.intake;

import foretress.knowledge.Knowledge;
import foretress.knowledge.Sha256;
import foretress.ledger.Ledger;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.FormReader;
import foretress.questionnaire.FormReading;
import foretress.questionnaire.Question;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.TickList;
import foretress.questionnaire.Topic;
import foretress.questionnaire.Walk;
import foretress.running.Asked;
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
import java.util.stream.Collectors;

/** What a client says about one visit: kept topic by topic, version by version, and read back whole. */
@ApplicationScoped
public class Intake {
    private static final String CSRF = "csrf-token";
    private static final Set<Question.Kind> LISTS = Set.of(Question.Kind.TREATMENTS, Question.Kind.MEDICINES);

    private final Ledger ledger;
    private final Knowledge knowledge;
    private final BookedChemistry chemistry;
    private final Assessments assessments;
    private final Care care;
    private final Vault vault;
    private final Clock clock;

    Intake(Knowledge knowledge, BookedChemistry chemistry, Assessments assessments, Care care, Vault vault,
        Clock clock, Ledger ledger) {
        this.ledger = ledger;
        this.knowledge = knowledge;
        this.chemistry = chemistry;
        this.assessments = assessments;
        this.care = care;
        this.vault = vault;
        this.clock = clock;
    }

    /** What was told, and what follows from not knowing: see {@link Questionnaire#implied}. */
    public Answers said(Visit visit) {
        return questionnaire().implied(chemistry.of(visit), told(visit));
    }

    /** The newest version of every answer; answers that a later "no" closed are left out, though they stay on file. */
    private Answers told(Visit visit) {
        Set<String> booked = chemistry.of(visit);
        List<KeptTopic> newest = KeptTopic.newest(visit.id);
        return Asked.reckoned(List.of(Intake.class, booked, newest), () -> {
            Answers all = Answers.NONE;
            for (KeptTopic kept : newest) {
                all = all.and(open(kept));
            }
            return questionnaire().stillOpen(booked, all);
        });
    }

    /** The answers as they stood at that moment. */
    public Answers saidBy(Visit visit, Instant moment) {
        Map<String, Answers> byTopic = new LinkedHashMap<>();
        KeptTopic.savedBy(visit.id, moment).forEach(kept -> {
            byTopic.remove(kept.topic()); // the topic saved last speaks last: a question may have moved from one to another
            byTopic.put(kept.topic(), open(kept));
        });
        Answers all = Answers.NONE;
        for (Answers own : byTopic.values()) {
            all = all.and(own);
        }
        return questionnaire().implied(chemistry.of(visit), stillOpen(visit, all));
    }

    /** The topics that have something to ask for this visit, in order. */
    public List<Topic> topics(Visit visit, Answers said) {
        return questionnaire().relevant(chemistry.of(visit), said);
    }

    /** The questions of a topic that are put now. */
    public List<Question> put(Visit visit, Topic topic, Answers said) {
        return questionnaire().put(topic, chemistry.of(visit), said);
    }

    /** Required questions put and not answered, without those of the last days: these are due by the day itself ({@link ShelfLife}). */
    public List<Question> missing(Visit visit, Answers said) {
        return questionnaire().missing(chemistry.of(visit), said).stream().filter(q -> !q.onlyNear()).toList();
    }

    /** The way from here to reading back. */
    public Walk walk(Visit visit, Answers said) {
        return new Walk(questionnaire(), chemistry.of(visit), said, everPut(visit),
            LastDays.begun(visit, today(visit)));
    }

    /** The questions that stood on a page which was sent, whether or not they were answered. */
    private Set<String> everPut(Visit visit) {
        return KeptTopic.sent(visit.id).stream().flatMap(page -> put(visit, page).stream()).collect(Collectors.toSet());
    }

    public int version(Visit visit, Topic topic) {
        return KeptTopic.lastVersion(visit.id, code(visit, topic));
    }

    /** A page's words, read; where something needs a second look nothing is stored and everything typed comes back. */
    @Transactional
    public Kept keep(UUID visitId, Topic topic, Page page) {
        Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
        Answers before = told(visit);
        List<Question> put = put(visit, topic, questionnaire().implied(chemistry.of(visit), before)).stream()
            .filter(page::asks).toList();
        if (KeptTopic.submitted(visit.id, pressing(visit, page)).isPresent()) {
            return Kept.again();
        }
        FormReading reading =
            new FormReader(today(visit)).read(put, TickList.apart(topic.together(put), page.fields()), before);
        if (!reading.clean()) {
            return Kept.mistaken(reading);
        }
        if (page.version() != version(visit, topic)) {
            return Kept.overtaken(reading);
        }
        store(visit, topic, Telling.byClient(page, pressing(visit, page), put), ofTopic(topic, reading.over(before)));
        return Kept.clean(reading);
    }

    /**
     * The same, put by a member of staff at the chair: only these questions of the topic, the others stay as they were said.
     * A question in {@code same} keeps what was said before, and counts as asked.
     */
    @Transactional
    public Kept askAgain(UUID visitId, Topic topic, Page page, List<Question> due, List<String> same, UUID staffId) {
        Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
        Answers before = told(visit);
        if (KeptTopic.submitted(visit.id, pressing(visit, page)).isPresent()) {
            return Kept.again();
        }
        List<Question> anew = due.stream().filter(q -> !same.contains(q.id()) || before.to(q.id()).isEmpty()).toList();
        FormReading reading = new FormReader(today(visit)).read(anew, page.fields(), before);
        if (!reading.clean()) {
            return Kept.mistaken(reading);
        }
        if (page.version() != version(visit, topic)) {
            return Kept.overtaken(reading);
        }
        // A list that is still growing has not been answered yet.
        List<Question> asked = due.stream().filter(q -> !reading.adding() || !LISTS.contains(q.kind())).toList();
        store(visit, topic, Telling.byStaff(page, pressing(visit, page), asked, staffId),
            ofTopic(topic, reading.over(before)));
        return Kept.clean(reading);
    }

    /** The same, from the client's paper: typed in by a member of staff, and kept as such. */
    @Transactional
    public Kept typed(PaperForm paper, Topic topic, Page page, List<Question> due, UUID staffId) {
        Kept kept = askAgain(paper.visitId(), topic, page, due, List.of(), staffId);
        if (kept.outcome() == Kept.Outcome.CLEAN) {
            KeptTopic.submitted(paper.visitId(), page.pressing()).ifPresent(one -> one.typedFrom(paper.id()));
        }
        return kept;
    }

    /** When each question was last put, whatever was answered, by question id. */
    public Map<String, Instant> askedAt(Visit visit) {
        Map<String, Instant> at = new LinkedHashMap<>();
        for (KeptTopic kept : KeptTopic.all(visit.id)) {
            put(visit, kept.sent()).forEach(question -> at.put(question, kept.savedAt()));
        }
        return at;
    }

    /** Ids of the questions that this version put; in old rows, the whole topic's. */
    private List<String> put(Visit visit, KeptTopic.Sent sent) {
        return sent.sealed().map(asked -> List.of(vault.openWord(sent.clientId(), sent.place(), asked).split(" ")))
            .orElseGet(() -> questionnaire().topics().stream().filter(t -> code(visit, t).equals(sent.topic()))
                .flatMap(t -> t.questions().stream()).map(Question::id).toList());
    }

    /** Keeps a topic's answers that did not come from a page: read from paper, or invented for the demo. */
    @Transactional
    public void record(UUID visitId, Topic topic, Answers answers, String language) {
        Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
        store(visit, topic, new Telling(language, UUID.randomUUID().toString(), topic.questions(), Optional.empty()),
            ofTopic(topic, answers));
    }

    /** What was said before an earlier visit is still so; these questions count as put. */
    @Transactional
    void confirm(UUID visitId, Topic topic, List<Question> put, Answers answers, String language) {
        Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
        store(visit, topic, new Telling(language, UUID.randomUUID().toString(), put, Optional.empty()),
            ofTopic(topic, answers));
    }

    /** The client has read exactly these answers back. */
    @Transactional
    public void readBack(Visit visit, Answers said) {
        new ReadBack(visit.id, code(visit, ReadBack.ANSWERS, said), clock.instant()).persist();
        ledger.note("client", "answers confirmed", visit.id.toString());
    }

    /** How a version came about: in which language, by which press of a button, with which questions put, and by whom. */
    private record Telling(String language, String submission, List<Question> put, Optional<UUID> staff) {
        static Telling byClient(Page page, String pressing, List<Question> put) {
            return new Telling(page.language(), pressing, put, Optional.empty());
        }

        static Telling byStaff(Page page, String pressing, List<Question> put, UUID staff) {
            return new Telling(page.language(), pressing, put, Optional.of(staff));
        }
    }

    private void store(Visit visit, Topic topic, Telling telling, Answers own) {
        Answers before = said(visit);
        String put = telling.put().stream().map(Question::id).collect(Collectors.joining(" "));
        List<KeptTopic> all = new KeptTopic(visit, code(visit, topic), version(visit, topic) + 1, telling.language(),
            telling.submission(),
            telling.staff(), clock.instant(),
            place -> vault.sealWord(visit.client.id, place, put),
            vault.sealing(visit.client.id, AnswerJson.write(own))).written();
        // one entry a quarter of an hour, however many pages
        ledger.read(telling.staff().map(UUID::toString).orElse("client"),
            telling.staff().isPresent() ? "answers typed in from paper" : "answers given", visit.id.toString());
        Answers now = said(visit);
        // What was signed stays signed for what it said; other answers want a signature of their own.
        if (visit.state == State.SIGNED && !stillSigned(visit, before, now)) {
            visit.moveTo(State.ANSWERING);
            visit.unsign();
        }
        care.watch(visit, assessments.passing(visit, now));
        KeptTopic.known(visit.id, all);
    }

    /** What the last days add leaves a signature as it is, unless something is found in it. */
    private boolean stillSigned(Visit visit, Answers before, Answers now) {
        List<Question> all = questionnaire().questions();
        return hash(before).equals(hash(now))
            || hash(LastDays.without(all, before)).equals(hash(LastDays.without(all, now)))
                && assessments.nothingInTheLastDays(visit, now);
    }

    /** Whether these answers are those that have this name, as they are or with no more than a no of the last days besides. */
    public boolean isCodeOf(Visit visit, String column, String code, Answers said) {
        return code.equals(code(visit, column, said))
            || code.equals(code(visit, column, LastDays.without(questionnaire().questions(), said)))
                && assessments.nothingInTheLastDays(visit, said);
    }

    private Answers open(KeptTopic kept) {
        return AnswerJson.read(vault.open(kept));
    }

    private Answers stillOpen(Visit visit, Answers all) {
        return questionnaire().stillOpen(chemistry.of(visit), all);
    }

    private static Answers ofTopic(Topic topic, Answers answers) {
        Map<String, Answer> own = new LinkedHashMap<>();
        for (Question question : topic.questions()) {
            answers.to(question.id()).ifPresent(a -> own.put(question.id(), a));
        }
        return new Answers(own);
    }

    /**
     * Names exactly these answers under the client's key, so that nobody without it can try which answers have this name.
     *
     * @param column where the name is kept: {@code table.column}
     */
    public String code(Visit visit, String column, Answers said) {
        return vault.code(visit.keyOf, column, hash(said));
    }

    private String code(Visit visit, Topic topic) {
        return vault.code(visit.keyOf, "topic_answers.topic", topic.id());
    }

    /**
     * The same words sent again from the same page are one saving. Other words from it, after Back, are not: they must not
     * be taken for what was kept already.
     */
    private String pressing(Visit visit, Page page) {
        return vault.code(visit.keyOf, "topic_answers.submission", page.pressing());
    }

    /** Never stored as it is: see {@link #code}. */
    static String hash(Answers said) {
        return Sha256.of(AnswerJson.write(said));
    }

    /** The day it is where the salon is. */
    public LocalDate today(Visit visit) {
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
        /** Names the field with the ids of the questions on the page; without it the page asked the whole topic. */
        static final String ASKED = "asked";

        /** As it was sent; a version that is no number is nobody's. */
        public static Page of(Map<String, List<String>> fields, String submission, String version, String language) {
            return new Page(fields, submission, version.matches("\\d{1,6}") ? Integer.parseInt(version) : -1, language);
        }

        /** Whether the question stood on the page: what was not seen cannot be left empty. */
        boolean asks(Question question) {
            List<String> asked = fields.getOrDefault(ASKED, List.of());
            return asked.isEmpty() || asked.stream().anyMatch(ids -> List.of(ids.split(" ")).contains(question.id()));
        }

        private String pressing() {
            Map<String, List<String>> said = new TreeMap<>(fields);
            said.remove(CSRF);
            return Sha256.of((submission + said).getBytes(StandardCharsets.UTF_8));
        }
    }

    /** What became of a posted page. */
    public record Kept(Outcome outcome, Optional<FormReading> reading) {
        public enum Outcome { CLEAN, AGAIN, MISTAKEN, OVERTAKEN }

        static Kept clean(FormReading reading) {
            return new Kept(Outcome.CLEAN, Optional.of(reading));
        }

        static Kept again() {
            return new Kept(Outcome.AGAIN, Optional.empty());
        }

        static Kept mistaken(FormReading reading) {
            return new Kept(Outcome.MISTAKEN, Optional.of(reading));
        }

        /** The same topic was answered elsewhere since this page was made. */
        static Kept overtaken(FormReading reading) {
            return new Kept(Outcome.OVERTAKEN, Optional.of(reading));
        }
    }
}
