package foretress.note;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** What one member of staff found out about a medicine's name, for all clients. Taken back, it stays to be read. */
@Entity
@Table(name = "look_up")
public class LookUp extends Stored {
    private String submission;
    @Column(name = "made_at") private Instant madeAt;
    @Column(name = "made_by") private UUID madeBy;
    @Column(columnDefinition = "text") private String body;
    @Column(name = "withdrawn_at") private Instant withdrawnAt;
    @Column(name = "withdrawn_by") private UUID withdrawnBy;
    @Column(name = "withdrawn_why", columnDefinition = "text") private String withdrawnWhy;
    @Version private int version;

    protected LookUp() {}

    /** @param seal seals what was found for the place it is given */
    LookUp(String submission, UUID by, Instant now, UnaryOperator<String> seal) {
        super(submission, by, now);
        this.submission = submission;
        this.madeAt = now;
        this.madeBy = by;
        this.body = sealed("body", seal);
    }

    /** It says nothing any more. */
    void withdraw(UUID by, Instant now, UnaryOperator<String> seal) {
        this.withdrawnAt = now;
        this.withdrawnBy = by;
        this.withdrawnWhy = sealed("withdrawn_why", seal);
    }

    static Optional<LookUp> sent(String submission) {
        return find("submission", submission).firstResultOptional();
    }

    /** Those nobody has taken back, whatever a session holds of them; the newest first. */
    static List<LookUp> standing() {
        return list("withdrawnAt is null order by madeAt desc, id");
    }

    /** The newest first. */
    static List<LookUp> everyOne() {
        return list("order by madeAt desc, id");
    }

    boolean stands() {
        return withdrawnAt == null;
    }

    Optional<Instant> withdrawnAt() {
        return Optional.ofNullable(withdrawnAt);
    }

    Optional<UUID> withdrawnBy() {
        return Optional.ofNullable(withdrawnBy);
    }

    public Instant madeAt() {
        return madeAt;
    }

    public UUID madeBy() {
        return madeBy;
    }

    String body() {
        return body;
    }

    String withdrawnWhy() {
        return withdrawnWhy;
    }
}
