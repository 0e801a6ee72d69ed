package foretress.intake;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** The printed form as the client filled it in and signed it, and who typed it in. The photo or PDF of it is sealed. */
@Entity
@Immutable
@Table(name = "paper_form")
public class PaperForm extends PanacheEntityBase {
    @Id
    public UUID id;
    @Column(name = "visit_id")
    public UUID visitId;
    @Column(name = "client_id")
    UUID clientId;
    /** The day the client wrote beside the signature. */
    @Column(name = "signed_on")
    public LocalDate signedOn;
    @Column(name = "typed_at")
    public Instant typedAt;
    @Column(name = "typed_by")
    public UUID typedBy;
    @Column(name = "media_type")
    public String mediaType;
    @Column(columnDefinition = "text")
    String body;

    String place() {
        return "paper_form.body." + id;
    }

    static Optional<PaperForm> of(UUID visitId) {
        return find("visitId", visitId).firstResultOptional();
    }
}
