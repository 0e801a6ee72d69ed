package foretress.intake;

import foretress.picture.Paper;
import foretress.running.Stored;
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
public class PaperForm extends Stored {
    @Column(name = "visit_id") private UUID visitId;
    @Column(name = "client_id") private UUID clientId;
    /** The day the client wrote beside the signature. */
    @Column(name = "signed_on") private LocalDate signedOn;
    @Column(name = "typed_at") private Instant typedAt;
    @Column(name = "typed_by") private UUID typedBy;
    @Column(name = "media_type") private String mediaType;
    @Column(columnDefinition = "text") private String body;

    protected PaperForm() {}

    PaperForm(Visit visit, Paper paper, LocalDate signedOn, UUID staff, Instant now, UnaryOperator<String> seal) {
        super(visit, paper, signedOn, staff, now);
        this.visitId = visit.id;
        this.clientId = visit.client.id;
        this.signedOn = signedOn;
        this.typedAt = now;
        this.typedBy = staff;
        this.mediaType = paper.mediaType();
        this.body = sealed("body", seal);
    }

    static Optional<PaperForm> of(UUID visitId) {
        return find("visitId", visitId).firstResultOptional();
    }

    public UUID visitId() {
        return visitId;
    }

    UUID clientId() {
        return clientId;
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

    String body() {
        return body;
    }
}
