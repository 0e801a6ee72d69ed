package foretress.salon;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** One sign-in, while it lasts. It ends when its row goes: on sign-out, when a password changes, when somebody leaves. */
@Entity
@Table(name = "staff_session")
class Session extends Stored {
    /** Nobody stays signed in longer than a working day, however busy (ASVS 7.3.2). */
    static final Duration LONGEST = Duration.ofHours(12);

    @ManyToOne
    @JoinColumn(name = "staff_id") Staff staff;
    @Column(name = "begun_at") private Instant begunAt;

    protected Session() {}

    Session(Staff staff, Instant begunAt) {
        super(staff, begunAt);
        this.staff = staff;
        this.begunAt = begunAt;
    }

    static Optional<Session> alive(UUID id, Instant now) {
        return Session.<Session>findByIdOptional(id)
            .filter(session -> session.staff.active && now.isBefore(session.begunAt.plus(LONGEST)));
    }

    static void endAllOf(Staff staff) {
        delete("staff", staff);
    }

    static void sweep(Instant now) {
        delete("begunAt < ?1", now.minus(LONGEST));
    }
}
