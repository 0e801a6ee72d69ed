package foretress.closing;

import foretress.running.Asked;
import foretress.vault.SealedRow;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** A photo of the hair, kept with the client's leave: drawn anew and sealed. */
@Entity
@Table(name = "hair_photo")
public class HairPhoto extends SealedRow {
    public enum Moment {
        BEFORE, AFTER;

        public static Optional<Moment> of(String name) {
            return Arrays.stream(values()).filter(one -> one.name().equals(name)).findFirst();
        }
    }

    @Column(name = "visit_id") private UUID visitId;
    @Enumerated(EnumType.STRING) private Moment moment;
    @Column(name = "taken_at") private Instant takenAt;
    @Column(name = "taken_by") private UUID takenBy;

    protected HairPhoto() {}

    HairPhoto(Visit visit, Moment moment, UUID by, Instant now, UnaryOperator<String> seal) {
        super(visit.client.id, seal, moment, by, now);
        this.visitId = visit.id;
        this.moment = moment;
        this.takenAt = now;
        this.takenBy = by;
    }

    static List<HairPhoto> of(UUID visitId) {
        return Asked.once(question(visitId), () -> list("visitId = ?1 order by moment desc, takenAt, id", visitId));
    }

    /** Has those of each of these visits at hand. */
    static void ready(Collection<UUID> visits) {
        Asked.together(visits, HairPhoto::question, HairPhoto::visitId,
            these -> HairPhoto.<HairPhoto>list("visitId in ?1 order by moment desc, takenAt, id", these));
    }

    private static Object question(UUID visitId) {
        return List.of(HairPhoto.class, visitId);
    }

    public UUID visitId() {
        return visitId;
    }

    public Moment moment() {
        return moment;
    }

    public Instant takenAt() {
        return takenAt;
    }
}
