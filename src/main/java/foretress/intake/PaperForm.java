package foretress.intake;

import foretress.picture.Paper;
import foretress.vault.SealedRow;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.hibernate.annotations.Immutable;

/** The printed form as the client filled it in and signed it, and who typed it in. The photo or PDF of it is sealed. */
@Entity
@Immutable
@Table(name = "paper_form")
public class PaperForm extends SealedRow {
    @Column(name = "visit_id") private UUID visitId;
    /** The day the client wrote beside the signature. */
    @Column(name = "signed_on") private LocalDate signedOn;
    @Column(name = "typed_at") private Instant typedAt;
    @Column(name = "typed_by") private UUID typedBy;
    @Column(name = "media_type") private String mediaType;

    protected PaperForm() {}

    PaperForm(Visit visit, Paper paper, LocalDate signedOn, UUID staff, Instant now, UnaryOperator<String> seal) {
        super(visit.client.id, seal, paper, signedOn, staff, now);
        this.visitId = visit.id;
        this.signedOn = signedOn;
        this.typedAt = now;
        this.typedBy = staff;
        this.mediaType = paper.mediaType();
    }

    static Optional<PaperForm> of(UUID visitId) {
        return find("visitId", visitId).firstResultOptional();
    }

    public UUID visitId() {
        return visitId;
    }

    public LocalDate signedOn() {
        return signedOn;
    }

    public Instant typedAt() {
        return typedAt;
    }

    public UUID typedBy() {
        return typedBy;
    }

    public String mediaType() {
        return mediaType;
    }
}
