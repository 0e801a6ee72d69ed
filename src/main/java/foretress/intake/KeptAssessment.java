package foretress.intake;

import foretress.running.Asked;
import foretress.vault.SealedRow;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** An assessment as it was made: its facts and findings, and the rules that made them. Nothing in it is ever changed. */
@Entity
@Table(name = "assessment")
public class KeptAssessment extends SealedRow {
    @Column(name = "visit_id") private UUID visitId;
    @Column(name = "assessed_at") private Instant assessedAt;
    @Column(name = "rule_set_sha256") private String ruleSetSha256;
    /** Names the answers it was made from, under the client's key. */
    @Column(name = "answers_code") private String answersCode;
    /** Something rests on it: it was signed, decided or looked at. The others give way to the next one. */
    private boolean held;

    protected KeptAssessment() {}

    /** @param held it is kept when a newer one comes; otherwise the newer one takes its place */
    KeptAssessment(Visit visit, Instant now, String ruleSetSha256, String answersCode, boolean held,
        UnaryOperator<String> seal) {
        super(visit.client.id, seal, now, ruleSetSha256, answersCode);
        this.visitId = visit.id;
        this.assessedAt = now;
        this.ruleSetSha256 = ruleSetSha256;
        this.answersCode = answersCode;
        this.held = held;
    }

    /** Something goes by it: from here on it is kept. */
    public void hold() {
        held = true;
    }

    static final String ANSWERS = "assessment.answers_code";

    /** The assessment made when the client signed, or the first one after it. */
    public static Optional<KeptAssessment> madeAt(UUID visitId, Instant signed) {
        return find("visitId = ?1 and assessedAt >= ?2 order by assessedAt", visitId, signed).firstResultOptional();
    }

    /** Every assessment of the visit, oldest first. */
    public static List<KeptAssessment> all(UUID visitId) {
        return list("visitId = ?1 order by assessedAt", visitId);
    }

    /** The newest of each of these visits, in one read. */
    public static List<KeptAssessment> newest(Collection<UUID> visits) {
        return visits.isEmpty() ? List.of() : Asked.once(List.of(KeptAssessment.class, Set.copyOf(visits)),
            () -> list("from KeptAssessment k where k.visitId in ?1 and k.assessedAt ="
                + " (select max(o.assessedAt) from KeptAssessment o where o.visitId = k.visitId)", visits));
    }

    /** These, in one read. */
    public static List<KeptAssessment> byIds(Collection<UUID> ids) {
        return ids.isEmpty() ? List.of() : list("id in ?1", ids);
    }

    public static Optional<KeptAssessment> newest(UUID visitId) {
        return Asked.<List<KeptAssessment>>once(question(visitId),
            () -> find("visitId = ?1 order by assessedAt desc", visitId).range(0, 0).list()).stream().findFirst();
    }

    /** Has the newest of each of these visits at hand. */
    public static void ready(Collection<UUID> visits) {
        Asked.together(visits, KeptAssessment::question, KeptAssessment::visitId, KeptAssessment::newest);
    }

    private static Object question(UUID visitId) {
        return List.of(KeptAssessment.class, visitId);
    }

    public UUID visitId() {
        return visitId;
    }

    public String ruleSetSha256() {
        return ruleSetSha256;
    }

    public String answersCode() {
        return answersCode;
    }

    public boolean held() {
        return held;
    }
}
