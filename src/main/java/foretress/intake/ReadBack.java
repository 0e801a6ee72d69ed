package foretress.intake;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** The client read exactly these answers back and said they are right; changing one needs a new reading. */
@Entity
@Table(name = "read_back")
class ReadBack extends Stored {
    @Column(name = "visit_id") private UUID visitId;
    /** Names the answers under the client's key. */
    @Column(name = "answers_code") private String answersCode;
    @Column(name = "confirmed_at") private Instant confirmedAt;

    protected ReadBack() {}

    ReadBack(UUID visitId, String answersCode, Instant now) {
        super(visitId, answersCode, now);
        this.visitId = visitId;
        this.answersCode = answersCode;
        this.confirmedAt = now;
    }

    static final String ANSWERS = "read_back.answers_code";

    static Optional<ReadBack> of(UUID visitId, String answersCode) {
        return find("visitId = ?1 and answersCode = ?2 order by confirmedAt desc", visitId, answersCode)
            .firstResultOptional();
    }

    Instant confirmedAt() {
        return confirmedAt;
    }
}
