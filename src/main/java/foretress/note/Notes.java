package foretress.note;

import foretress.assessment.FactDef;
import foretress.intake.Intake;
import foretress.intake.Renewal;
import foretress.knowledge.Knowledge;
import foretress.ledger.Ledger;
import foretress.picture.Paper;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.vault.SealedJson;
import foretress.vault.Vault;
import foretress.visit.Visit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import jakarta.persistence.LockModeType;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/** Keeps what staff write down; it goes into every assessment of the client's coming visits at once. Call it outside a transaction. */
@Singleton
public class Notes {
    public static final int MOST_PAPERS = 4;

    private final SealedJson bodies;
    private final Knowledge knowledge;
    private final Intake intake;
    private final Renewal renewal;
    private final Vault vault;
    private final Ledger ledger;
    private final Clock clock;

    Notes(SealedJson bodies, Knowledge knowledge, Intake intake, Renewal renewal, Vault vault, Ledger ledger,
        Clock clock) {
        this.bodies = bodies;
        this.knowledge = knowledge;
        this.intake = intake;
        this.renewal = renewal;
        this.vault = vault;
        this.ledger = ledger;
        this.clock = clock;
    }

    /** All of a client, newest first; those struck out are among them and say so. */
    public List<Noted> of(UUID clientId) {
        return Noted.ofClient(clientId);
    }

    public Optional<Noted> find(UUID clientId, UUID id) {
        return of(clientId).stream().filter(note -> note.id().equals(id)).findFirst();
    }

    public <T> T body(Noted note, Class<T> type) {
        return bodies.open(note, type);
    }

    public String struckWhy(Noted note) {
        return note.struck() ? bodies.open(note.clientId(), note.place("struck_why"), note.struckWhy(), String.class)
            : "";
    }

    /** Keeps it once a submission; once this returns it is on the device and every coming visit is assessed with it. */
    public Noted keep(UUID visitId, NotedKind kind, String submission, Object body, UUID by) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
            return Noted.sent(visitId, submission).orElseGet(() -> made(visit, kind, submission, body, by));
        });
    }

    private Noted made(Visit visit, NotedKind kind, String submission, Object body, UUID by) {
        List<String> told = body instanceof NotedBody.Word word ? told(word.about(), intake.said(visit)) : List.of();
        var note =
            new Noted(visit, kind, submission, by, clock.instant(), bodies.sealing(visit.client.id, body),
                bodies.sealing(visit.client.id, told));
        note.persistAndFlush();
        ledger.note(by.toString(), "noted: " + kind.code(), note.id().toString());
        renewal.ofClient(note.clientId());
        return note;
    }

    /** Entered in error: it stays to be read, struck out with the reason, and says nothing any more. */
    public void strike(Noted found, String why, UUID by) {
        QuarkusTransaction.requiringNew().run(() -> {
            Noted note = Noted.findById(found.id(), LockModeType.PESSIMISTIC_WRITE);
            if (!note.struck()) {
                note.strike(by, clock.instant(), bodies.sealing(note.clientId(), why));
                note.persistAndFlush();
                ledger.note(by.toString(), "noted in error", note.id().toString());
                renewal.ofClient(Visit.<Visit>findById(note.visitId()).client.id);
            }
        });
    }

    public List<NotedPaper> papers(Noted note) {
        return NotedPaper.of(note.id());
    }

    public Optional<NotedPaper> paper(Noted note, UUID id) {
        return NotedPaper.one(note.id(), id);
    }

    public byte[] bytes(NotedPaper paper) {
        return vault.open(paper);
    }

    /** @return false when the note has as many as it may have */
    public boolean add(Noted found, Paper sent, UUID by) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Noted note = Noted.findById(found.id(), LockModeType.PESSIMISTIC_WRITE);
            return NotedPaper.of(note.id()).size() < MOST_PAPERS && keep(note, sent, by);
        });
    }

    private boolean keep(Noted note, Paper sent, UUID by) {
        new NotedPaper(note, sent, by, clock.instant(), vault.sealing(note.clientId(), sent.bytes()))
            .persist();
        ledger.note(by.toString(), "letter kept with a note", note.id().toString());
        return true;
    }

    /** The answers that the word is about are others than when it was given: it must be asked for anew. */
    boolean overtaken(Noted note, String about, Answers said) {
        List<String> then = List.of(bodies.open(note.clientId(), note.place("told"), note.told(), String[].class));
        return !then.equals(told(about, said));
    }

    /** What was answered to the questions behind a fact. */
    private List<String> told(String about, Answers said) {
        return questions(about).distinct().sorted().map(question -> question + " " + said.to(question)).toList();
    }

    /** Behind a fact that sums up others, theirs; behind one that is computed, every medicine too. */
    private Stream<String> questions(String about) {
        FactDef fact = knowledge.ruleSet().fact(about).orElseThrow();
        if (!fact.sumOf().isEmpty()) {
            return fact.sumOf().keySet().stream().flatMap(this::questions);
        }
        Stream<String> medicines = fact.computation().isEmpty() ? Stream.of()
            : knowledge.questionnaire().questions().stream().filter(q -> q.kind() == Question.Kind.MEDICINES)
                .map(Question::id);
        return Stream.concat(fact.rows().stream().flatMap(row -> row.when().keySet().stream()), medicines);
    }
}
