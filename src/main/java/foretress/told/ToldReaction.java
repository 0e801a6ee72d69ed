package foretress.told;

import foretress.vault.SealedRow;
import foretress.visit.Client;
import foretress.visit.OnFile;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** A reaction that a client told of by the link of a visit. One that was none of ours is struck out and stays. */
@Entity
@Table(name = "told_reaction")
public class ToldReaction extends SealedRow {
    @Column(name = "visit_id") private UUID visitId;
    private UUID submission;
    @Column(name = "told_at") private Instant toldAt;
    @Column(name = "struck_at") private Instant struckAt;
    @Column(name = "struck_by") private UUID struckBy;
    @Column(name = "struck_why", columnDefinition = "text") private String struckWhy;
    @Version private int version;

    protected ToldReaction() {}

    ToldReaction(Visit visit, UUID submission, Instant now, UnaryOperator<String> seal) {
        super(visit.client.id, seal, submission, now);
        this.visitId = visit.id;
        this.submission = submission;
        this.toldAt = now;
    }

    static Optional<ToldReaction> submitted(UUID submission) {
        return find("submission", submission).firstResultOptional();
    }

    /** Newest first; those of a record that became one with this one are among them. */
    static List<ToldReaction> ofClient(UUID clientId) {
        return OnFile.of(clientId, "told_reaction", clientId,
            () -> list("clientId in " + Client.SAME_PERSON + " order by toldAt desc, id", clientId));
    }

    /** The last one told by the link of this visit. */
    static Optional<ToldReaction> newest(UUID visitId) {
        return find("visitId = ?1 order by toldAt desc, id", visitId).firstResultOptional();
    }

    /** It has nothing to do with what is used here: it weighs no more. */
    void strike(UUID by, Instant now, UnaryOperator<String> seal) {
        needed(by, now);
        this.struckWhy = sealed("struck_why", seal);
        this.struckAt = now;
        this.struckBy = by;
    }

    public boolean struck() {
        return struckAt != null;
    }

    public Optional<Instant> struckAt() {
        return Optional.ofNullable(struckAt);
    }

    public Optional<UUID> struckBy() {
        return Optional.ofNullable(struckBy);
    }

    String struckWhy() {
        return struckWhy;
    }

    public UUID visitId() {
        return visitId;
    }

    public Instant toldAt() {
        return toldAt;
    }
}
