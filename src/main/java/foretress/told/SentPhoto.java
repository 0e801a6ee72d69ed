package foretress.told;

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
import java.util.UUID;
import java.util.function.UnaryOperator;

/** A photo that a client sent by the link of a visit: drawn anew and sealed, like what it is of. */
@Entity
@Table(name = SentPhoto.TABLE)
class SentPhoto extends SealedRow {
    static final String TABLE = "sent_photo";

    @Column(name = "visit_id") private UUID visitId;
    private UUID submission;
    @Column(name = "sent_at") private Instant sentAt;
    @Column(columnDefinition = "text") private String shows;
    @Column(columnDefinition = "text") private String small;

    protected SentPhoto() {}

    /**
     * @param shows seals what it is of
     * @param small seals it as small as a list shows it
     */
    SentPhoto(Visit visit, UUID submission, Instant now, UnaryOperator<String> photo, UnaryOperator<String> shows,
        UnaryOperator<String> small) {
        super(visit.client.id, photo, submission, now);
        this.visitId = visit.id;
        this.submission = submission;
        this.sentAt = now;
        this.shows = sealed("shows", shows);
        this.small = sealed("small", small);
    }

    /**
     * Something sealed of one of them.
     *
     * @param text as it is stored
     */
    record Sealed(UUID id, UUID clientId, String text, Instant sentAt, UUID visitId) {
        String place(String column) {
            return TABLE + "." + column + "." + id;
        }
    }

    static Optional<SentPhoto> submitted(UUID submission) {
        return find("submission", submission).firstResultOptional();
    }

    /** What each of a visit's is of, the first sent first; the photos themselves stay where they are. */
    static List<Sealed> ofVisit(UUID visitId) {
        return Asked.once(question(visitId), () -> ofVisits(List.of(visitId)));
    }

    /** Has those of each of these visits at hand. */
    static void ready(Collection<UUID> visits) {
        Asked.together(visits, SentPhoto::question, Sealed::visitId, SentPhoto::ofVisits);
    }

    private static Object question(UUID visitId) {
        return List.of(SentPhoto.class, visitId);
    }

    private static List<Sealed> ofVisits(Collection<UUID> visits) {
        return getEntityManager().createQuery("select p.id, p.clientId, p.shows, p.sentAt, p.visitId from SentPhoto p"
            + " where p.visitId in ?1 order by p.sentAt, p.id", Object[].class).setParameter(1, visits)
            .getResultStream().map(SentPhoto::row).toList();
    }

    static Optional<Sealed> small(UUID visitId, UUID id) {
        return getEntityManager().createQuery(
            "select p.id, p.clientId, p.small, p.sentAt, p.visitId from SentPhoto p where p.visitId = ?1 and p.id = ?2",
            Object[].class).setParameter(1, visitId).setParameter(2, id).getResultStream().map(SentPhoto::row)
            .findFirst();
    }

    private static Sealed row(Object[] row) {
        return new Sealed((UUID) row[0], (UUID) row[1], (String) row[2], (Instant) row[3], (UUID) row[4]);
    }

    static Optional<SentPhoto> whole(UUID visitId, UUID id) {
        return find("visitId = ?1 and id = ?2", visitId, id).firstResultOptional();
    }

    /** @return whether there was one */
    static boolean remove(UUID visitId, UUID id) {
        return delete("visitId = ?1 and id = ?2", visitId, id) > 0;
    }

    /** @return whether there were any */
    static boolean removeAll(UUID visitId) {
        return delete("visitId", visitId) > 0;
    }
}
