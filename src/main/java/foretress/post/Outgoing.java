package foretress.post;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** A mail on its way. The sealed body goes once it has left; the row stays. */
@Entity
@Table(name = "outbox")
class Outgoing extends Stored {
    @Column(name = "client_id") UUID clientId;
    @Column(name = "visit_id") private UUID visitId;
    private String kind;
    String language;
    @Column(columnDefinition = "text") String body;
    @Column(name = "made_at") Instant madeAt;
    @Column(name = "due_at") private Instant dueAt;
    int tries;
    @Column(name = "sent_at") private Instant sentAt;
    @Column(name = "given_up_at") private Instant givenUpAt;

    protected Outgoing() {}

    /** Due at once. @param sealing makes the sealed body for the place it will lie in */
    Outgoing(UUID clientId, UUID visitId, String kind, String language, UnaryOperator<String> sealing, Instant now) {
        super(clientId, visitId, kind, language, now);
        this.clientId = clientId;
        this.visitId = visitId;
        this.kind = kind;
        this.language = language;
        this.body = sealed("body", sealing);
        this.madeAt = now;
        this.dueAt = now;
    }

    Post.Progress progress() {
        if (sentAt != null) {
            return Post.Progress.SENT;
        }
        return givenUpAt != null ? Post.Progress.GIVEN_UP : Post.Progress.WAITING;
    }
}
