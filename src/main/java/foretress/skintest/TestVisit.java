package foretress.skintest;

import foretress.running.Stored;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** The short visit at which a test is put on; its calendar entry keeps one id through every change. */
@Entity
@Table(name = "test_visit")
class TestVisit extends Stored {
    @Column(name = "visit_id") private UUID visitId;
    @Column(name = "client_id") private UUID clientId;
    @Column(name = "starts_at") private Instant startsAt;
    /** Of the calendar entry: 0, and one more with every change (RFC 5545, 3.8.7.4). */
    @Column(name = "sequence_no") private int sequenceNo;
    @Column(name = "booked_by") private UUID bookedBy;
    @Column(name = "booked_at") private Instant bookedAt;
    @Column(name = "cancelled_at") private Instant cancelledAt;
    /** The visit's id while it stands, so that there is one at a time. */
    @Column(name = "open_as") private UUID openAs;

    protected TestVisit() {}

    TestVisit(Visit visit, Instant start, UUID staff, Instant now) {
        super(visit);
        this.visitId = visit.id;
        this.clientId = visit.client.id;
        this.openAs = visit.id;
        booked(start, staff, now);
    }

    void move(Instant start, UUID staff, Instant now) {
        sequenceNo++;
        booked(start, staff, now);
    }

    private void booked(Instant start, UUID staff, Instant now) {
        needed(start, staff, now);
        this.startsAt = start;
        this.bookedBy = staff;
        this.bookedAt = now;
    }

    void callOff(Instant now) {
        sequenceNo++;
        cancelledAt = now;
        openAs = null;
    }

    static Optional<TestVisit> standing(UUID visitId) {
        return find("openAs", visitId).firstResultOptional();
    }

    UUID visitId() {
        return visitId;
    }

    Instant startsAt() {
        return startsAt;
    }

    int sequenceNo() {
        return sequenceNo;
    }
}
