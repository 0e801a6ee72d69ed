package foretress.intake;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** The client read exactly these answers back and said they are right; changing one needs a new reading. */
@Entity
@Table(name = "read_back")
class ReadBack extends PanacheEntityBase {
    @Id
    public UUID id;
    @Column(name = "visit_id")
    public UUID visitId;
    @Column(name = "answers_sha256")
    public String answersSha256;
    @Column(name = "confirmed_at")
    public Instant confirmedAt;

    static Optional<ReadBack> of(UUID visitId, String answersSha256) {
        return find("visitId = ?1 and answersSha256 = ?2 order by confirmedAt desc", visitId, answersSha256)
            .firstResultOptional();
    }
}
