package foretress.post;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** A mail on its way. The sealed body goes once it has left; the row stays. */
@Entity
@Table(name = "outbox")
class Outgoing extends PanacheEntityBase {
    @Id UUID id;
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
        if (kind.isBlank() || language.isBlank())
            throw new IllegalArgumentException("A mail is of some kind and in some language.");
        this.id = UUID.randomUUID();
        this.clientId = clientId;
        this.visitId = visitId;
        this.kind = kind;
        this.language = language;
        this.body = sealing.apply(place(id));
        this.madeAt = now;
        this.dueAt = now;
    }

    static String place(UUID id) {
        return "outbox.body." + id;
    }

    Post.Progress progress() {
        if (sentAt != null)
            return Post.Progress.SENT;
        return givenUpAt != null ? Post.Progress.GIVEN_UP : Post.Progress.WAITING;
    }
}
