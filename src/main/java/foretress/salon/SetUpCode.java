package foretress.salon;

import foretress.knowledge.Sha256;
import foretress.running.Stored;
import foretress.web.RandomText;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Lets one person choose a first password, once, within a day. 256 random bits, of which only the SHA-256 is kept. */
@Entity
@Table(name = "set_up_code")
class SetUpCode extends Stored {
    static final Duration GOOD_FOR = Duration.ofHours(24);

    @Column(name = "code_sha256", length = 64) String hash;
    /** Nobody yet: the owner, who sets up the salon with it. */
    @ManyToOne
    @JoinColumn(name = "staff_id") private Staff staff;
    @Column(name = "expires_at") private Instant expiresAt;

    protected SetUpCode() {}

    private SetUpCode(String code, Staff staff, Instant expiresAt) {
        super(code, expiresAt);
        this.hash = Sha256.of(code);
        this.staff = staff;
        this.expiresAt = expiresAt;
    }

    /** The code for the one who will own the salon; an earlier one is void. */
    static String forOwner(Instant now) {
        delete("staff is null");
        return fresh(null, now);
    }

    static String forStaff(Staff staff, Instant now) {
        delete("staff", staff);
        return fresh(staff, now);
    }

    private static String fresh(Staff staff, Instant now) {
        String code = RandomText.fresh();
        new SetUpCode(code, staff, now.plus(GOOD_FOR)).persist();
        return code;
    }

    /** The code's row, unless it was used, replaced, ran out or never was; nobody can tell which. */
    static Optional<SetUpCode> find(String code, Instant now) {
        return find("hash", Sha256.of(code)).<SetUpCode>firstResultOptional()
            .filter(found -> now.isBefore(found.expiresAt))
            .filter(found -> found.staff == null || found.staff.active);
    }

    Optional<Staff> staff() {
        return Optional.ofNullable(staff);
    }
}
