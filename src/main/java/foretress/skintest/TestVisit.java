package foretress.skintest;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** The short visit at which a test is put on; its calendar entry keeps one id through every change. */
@Entity
@Table(name = "test_visit")
class TestVisit extends PanacheEntityBase {
    @Id UUID id;
    @Column(name = "visit_id") UUID visitId;
    @Column(name = "client_id") UUID clientId;
    @Column(name = "starts_at") Instant startsAt;
    /** Of the calendar entry: 0, and one more with every change (RFC 5545, 3.8.7.4). */
    @Column(name = "sequence_no") int sequenceNo;
    @Column(name = "booked_by") UUID bookedBy;
    @Column(name = "booked_at") Instant bookedAt;
    @Column(name = "cancelled_at") Instant cancelledAt;
    /** The visit's id while it stands, so that there is one at a time. */
    @Column(name = "open_as") UUID openAs;

    static Optional<TestVisit> standing(UUID visitId) {
        return find("openAs", visitId).firstResultOptional();
    }
}
