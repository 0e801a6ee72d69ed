package foretress.consent;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** One signing, kept as it was: nothing changes it, a later one supersedes it. */
@Entity
@Immutable
@Table(name = "signed_consent")
public class SignedConsent extends PanacheEntityBase {
    @Id
    public UUID id;
    @Column(name = "visit_id")
    public UUID visitId;
    @Column(name = "client_id")
    public UUID clientId;
    /** What it is for, as {@link ConsentInput.Purpose} codes it. */
    @Column(length = 16)
    public String purpose;
    /** 1 for the visit's first signing of this purpose. */
    @Column(name = "version_no")
    public int versionNo;
    UUID supersedes;
    UUID submission;
    public String language;
    @Column(name = "text_version")
    public String textVersion;
    /** Text, answers and document each named under the client's key: an open hash of any of them could be tried out. */
    @Column(name = "text_code")
    String textCode;
    @Column(name = "answers_code")
    public String answersCode;
    @Column(name = "pdf_code")
    String pdfCode;
    @Column(name = "rule_set")
    public String ruleSet;
    @Column(name = "mark_kind")
    public String markKind;
    @Column(name = "signed_at")
    public Instant signedAt;
    /** What a copy is saved as; no word about health in it. */
    @Column(name = "file_name")
    public String fileName;
    @Column(columnDefinition = "text")
    String body;
    @Column(columnDefinition = "text")
    String evidence;
    @Column(columnDefinition = "text")
    String pdf;

    /** Whether this is what came of that pressing of the button. */
    public boolean isOf(UUID pressed) {
        return submission.equals(pressed);
    }

    public Optional<UUID> supersedes() {
        return Optional.ofNullable(supersedes);
    }

    /** The form that made it. */
    public UUID submission() {
        return submission;
    }

    public static final String ANSWERS = "signed_consent.answers_code";

    /** Where a sealed part belongs; moved anywhere else it cannot be opened. */
    static String place(String part, UUID id) {
        return "signed_consent." + part + "." + id;
    }

    static Optional<SignedConsent> submitted(UUID submission) {
        return find("submission", submission).firstResultOptional();
    }

    /** Newest first. */
    static List<SignedConsent> ofVisit(UUID visitId, ConsentInput.Purpose purpose) {
        return list("visitId = ?1 and purpose = ?2 order by versionNo desc", visitId, purpose.code());
    }
}
