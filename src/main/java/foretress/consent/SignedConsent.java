package foretress.consent;

import foretress.running.Asked;
import foretress.running.CodeColumn;
import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Converter;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** One signing, kept as it was: nothing changes it, a later one supersedes it. */
@Entity
@Immutable
@Table(name = "signed_consent")
public class SignedConsent extends Stored {
    @Column(name = "visit_id") private UUID visitId;
    @Column(name = "client_id") private UUID clientId;
    /** What it is for. */
    @Convert(converter = PurposeCode.class) private ConsentInput.Purpose purpose;
    /** 1 for the visit's first signing of this purpose. */
    @Column(name = "version_no") private int versionNo;
    private UUID supersedes;
    private UUID submission;
    private String language;
    @Column(name = "text_version") private String textVersion;
    /** Text, answers and document each named under the client's key: an open hash of any of them could be tried out. */
    @Column(name = "text_code") String textCode;
    @Column(name = "answers_code") private String answersCode;
    @Column(name = "pdf_code") String pdfCode;
    @Column(name = "rule_set") private String ruleSet;
    @Column(name = "mark_kind")
    @Convert(converter = MarkCode.class) SignatureMark.Kind markKind;
    @Column(name = "signed_at") private Instant signedAt;
    /** What a copy is saved as; no word about health in it. */
    @Column(name = "file_name") private String fileName;
    @Column(columnDefinition = "text") String body;
    @Column(columnDefinition = "text") String evidence;
    @Column(columnDefinition = "text") String pdf;

    protected SignedConsent() {}

    /** Text, evidence and document follow, each sealed for its place in this row. */
    SignedConsent(ConsentInput input, ConsentText text, SignatureMark mark, HowSigned how) {
        super(input, text, mark, how);
        Evidence told = how.evidence();
        this.id = how.document();
        this.purpose = input.purpose();
        this.visitId = input.visit().id();
        this.clientId = input.client().id();
        this.versionNo = how.version();
        this.supersedes = how.supersedes().map(HowSigned.Superseded::document).orElse(null);
        this.submission = told.submissionId();
        this.language = text.language();
        this.textVersion = text.version();
        this.answersCode = told.text().answersCode();
        this.ruleSet = told.text().ruleSet();
        this.markKind = mark.kind();
        this.signedAt = told.signedAt();
        this.fileName = ConsentPaper.fileName(input, how);
    }

    /** Text, evidence and document, each sealed for its place here. */
    void papers(String body, String evidence, String pdf) {
        this.body = body;
        this.evidence = evidence;
        this.pdf = pdf;
    }

    /** What text and document are named under the client's key. */
    void named(String text, String document) {
        this.textCode = text;
        this.pdfCode = document;
    }

    /** Whether this is what came of that pressing of the button. */
    public boolean isOf(UUID pressed) {
        return submission.equals(pressed);
    }

    public Optional<UUID> supersedes() {
        return Optional.ofNullable(supersedes);
    }

    /** Whether a later signing took its place. */
    boolean isSuperseded() {
        return count("supersedes", id) > 0;
    }

    /** The form that made it. */
    public UUID submission() {
        return submission;
    }

    public static final String ANSWERS = "signed_consent.answers_code";

    static Optional<SignedConsent> submitted(UUID submission) {
        return find("submission", submission).firstResultOptional();
    }

    /** Newest first. */
    static List<SignedConsent> ofVisit(UUID visitId, ConsentInput.Purpose purpose) {
        return Asked.once(question(visitId, purpose),
            () -> list("visitId = ?1 and purpose = ?2 order by versionNo desc", visitId, purpose));
    }

    /** Has those of each of these visits at hand. */
    static void ready(Collection<UUID> visits, ConsentInput.Purpose purpose) {
        Asked.together(visits, visit -> question(visit, purpose), SignedConsent::visitId, these -> SignedConsent
            .<SignedConsent>list("visitId in ?1 and purpose = ?2 order by versionNo desc", these, purpose));
    }

    private static Object question(UUID visitId, ConsentInput.Purpose purpose) {
        return List.of(SignedConsent.class, visitId, purpose);
    }

    public UUID visitId() {
        return visitId;
    }

    public UUID clientId() {
        return clientId;
    }

    public int versionNo() {
        return versionNo;
    }

    public String textVersion() {
        return textVersion;
    }

    public String answersCode() {
        return answersCode;
    }

    public Instant signedAt() {
        return signedAt;
    }

    public String fileName() {
        return fileName;
    }

    public SignatureMark.Kind markKind() {
        return markKind;
    }

    @Converter
    public static class PurposeCode extends CodeColumn<ConsentInput.Purpose> {
        public PurposeCode() {
            super(ConsentInput.Purpose.values(), ConsentInput.Purpose::code);
        }
    }

    @Converter
    public static class MarkCode extends CodeColumn<SignatureMark.Kind> {
        public MarkCode() {
            super(SignatureMark.Kind.values(), SignatureMark.Kind::code);
        }
    }
}
