package foretress.intake;

import foretress.ledger.Ledger;
import foretress.picture.Paper;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Topic;
import foretress.vault.Vault;
import foretress.visit.State;
import foretress.visit.Visit;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** Answers on paper, typed in by staff as such: the signed paper first, then its questions one after the other. */
@ApplicationScoped
public class PaperForms {
    private final Intake intake;
    private final NoticeConsent notices;
    private final Vault vault;
    private final Ledger ledger;
    private final Clock clock;

    PaperForms(Intake intake, NoticeConsent notices, Vault vault, Ledger ledger, Clock clock) {
        this.intake = intake;
        this.notices = notices;
        this.vault = vault;
        this.ledger = ledger;
        this.clock = clock;
    }

    public Optional<PaperForm> of(UUID visitId) {
        return PaperForm.of(visitId);
    }

    /** Whether a paper may be typed in: one was begun, or nobody has answered yet. */
    public boolean mayType(Visit visit) {
        return of(visit.id).isPresent() ? visit.state.takesAnswers()
            : visit.state == State.BOOKED || visit.state == State.INVITED;
    }

    /**
     * Keeps the paper; with it the client's agreement, ticked on it, that the salon holds health answers. The same again changes
     * nothing.
     *
     * @param guardian who signed the paper too, for a client too young to sign alone
     * @throws IllegalStateException when somebody has begun to answer already
     */
    @Transactional
    public void begin(UUID visitId, Paper paper, LocalDate signedOn, Optional<Guardians.Named> guardian, UUID staff) {
        Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
        if (of(visitId).isPresent()) {
            return;
        }
        if (!mayType(visit)) {
            throw new IllegalStateException("answers were given otherwise");
        }
        new PaperForm(visit, paper, signedOn, staff, clock.instant(),
            vault.sealing(visit.client.id, paper.bytes())).persist();
        if (visit.state == State.BOOKED) {
            visit.moveTo(State.INVITED);
        }
        visit.moveTo(State.ANSWERING);
        notices.give(visitId, visit.client.language, guardian);
        ledger.note(staff.toString(), "paper form kept, typing begun", visitId.toString());
    }

    public byte[] bytes(PaperForm form) {
        return vault.open(form);
    }

    /** Questions of this topic on the paper that nobody has typed in yet. */
    public List<Question> pending(Visit visit, Topic topic, Answers said) {
        Set<String> typed = intake.askedAt(visit).keySet();
        return intake.put(visit, topic, said).stream().filter(q -> !typed.contains(q.id())).toList();
    }
}
