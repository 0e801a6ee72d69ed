package foretress.closing;

import foretress.running.Asked;
import foretress.vault.SealedRow;
import foretress.visit.Client;
import foretress.visit.OnFile;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.hibernate.annotations.Immutable;

/** The end of a visit: what was done and used, kept as it was said; a correction is another version and changes nothing in it. */
@Entity
@Immutable
@Table(name = "closing")
public class KeptClosing extends SealedRow {
    @Column(name = "visit_id") private UUID visitId;
    /** 1 as it was closed; each correction one more. */
    @Column(name = "version_no") private int versionNo;
    private UUID submission;
    @Column(name = "closed_at") private Instant closedAt;
    @Column(name = "closed_by") private UUID closedBy;

    protected KeptClosing() {}

    /** @param versionNo 1 for the first; a later one corrects it */
    KeptClosing(Visit visit, int versionNo, UUID submission, UUID by, Instant now, UnaryOperator<String> seal) {
        super(visit.client.id, seal, submission, by, now);
        this.visitId = visit.id;
        this.versionNo = (int) counted(versionNo);
        this.submission = submission;
        this.closedAt = now;
        this.closedBy = by;
    }

    /** Every version of the closings of visits that were closed in that time, the newest first; when one was put right does not matter. */
    public static List<KeptClosing> between(Instant from, Instant until) {
        return list(
            "visitId in (select one.visitId from KeptClosing one where one.versionNo = 1 and one.closedAt >= ?1 and one.closedAt < ?2) "
                + "order by closedAt desc, versionNo desc, id",
            from, until);
    }

    /** The one that holds. */
    static Optional<KeptClosing> ofVisit(UUID visitId) {
        return versions(visitId).stream().findFirst();
    }

    /** Newest first. */
    static List<KeptClosing> versions(UUID visitId) {
        return Asked.once(question(visitId), () -> list("visitId = ?1 order by versionNo desc", visitId));
    }

    /** Has every version of each of these visits at hand. */
    static void ready(Collection<UUID> visits) {
        Asked.together(visits, KeptClosing::question, KeptClosing::visitId,
            these -> KeptClosing.<KeptClosing>list("visitId in ?1 order by versionNo desc", these));
    }

    private static Object question(UUID visitId) {
        return List.of(KeptClosing.class, visitId);
    }

    /** Those that hold, of all visits of the client and of records merged into this one. */
    static List<KeptClosing> ofClient(UUID clientId) {
        return OnFile.of(clientId, "closing", clientId, () -> list("from KeptClosing k where k.clientId in "
            + Client.SAME_PERSON + " and k.versionNo ="
            + " (select max(o.versionNo) from KeptClosing o where o.visitId = k.visitId)", clientId));
    }

    public UUID visitId() {
        return visitId;
    }

    public int versionNo() {
        return versionNo;
    }

    UUID submission() {
        return submission;
    }

    public Instant closedAt() {
        return closedAt;
    }

    public UUID closedBy() {
        return closedBy;
    }
}
