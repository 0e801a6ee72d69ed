package foretress.invitation;

import foretress.running.Asked;
import foretress.running.Stored;
import foretress.salon.Policies;
import foretress.visit.Visit;
import jakarta.enterprise.inject.spi.CDI;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A link that opens one visit's door. The link itself is not kept, only the hash of its token. */
@Entity
@Table(name = "invitation")
public class Invitation extends Stored {
    /** How the link went out. */
    public enum Way { MAILED, SHOWN }

    /** Wrong birth dates before the link locks. */
    static final int TRIES = 5;
    /** How long a browser that was let in stays in once the service took place or is off: late reactions come within weeks, a complaint is answered within them. Own decision. */
    private static final Duration AFTERWARDS = Duration.ofDays(90);

    @ManyToOne(fetch = FetchType.EAGER, optional = false)
    @JoinColumn(name = "visit_id") public Visit visit;
    @Column(name = "token_hash") private String tokenHash;
    @Column(name = "issued_at") public Instant issuedAt;
    /** A staff id, or "server". */
    @Column(name = "issued_by") String issuedBy;
    @Column(name = "expires_at") public Instant expiresAt;
    @Column(name = "revoked_at") Instant revokedAt;
    /** Opened on the salon's own tablet, which a member of staff hands to the client. */
    boolean handed;
    /** What the tablet was handed over for; absent on a link, and on tablets handed over before this was kept. */
    @Enumerated(EnumType.STRING)
    @Column(name = "handed_for") private HandOverPurpose handedFor;
    static Optional<Invitation> behind(String tokenHash) {
        return Asked.once(List.of(Invitation.class, tokenHash), () -> find("from Invitation i join fetch i.visit v"
            + " join fetch v.client left join fetch v.services where i.tokenHash = ?1", tokenHash).stream()
            .map(Invitation.class::cast).findFirst());
    }

    /** Whoever handed the tablet over asked the client who they are. */
    boolean vouched;
    /** The mail that carries it; absent when it went another way. */
    @Column(name = "mail_id") private UUID mailId;
    @Enumerated(EnumType.STRING) Way way;
    @Column(name = "wrong_tries") int wrongTries;
    @Column(name = "locked_at") private Instant lockedAt;

    protected Invitation() {}

    Invitation(Visit visit, Token token, Way way, String issuedBy, Instant now, Instant expiry) {
        super(visit, token, way, issuedBy, now, expiry);
        this.visit = visit;
        this.tokenHash = token.hash();
        this.way = way;
        this.issuedBy = issuedBy;
        this.issuedAt = now;
        this.expiresAt = ending(now, expiry);
    }

    /** The salon's own tablet, opened for the visit and put into the client's hands. */
    static Invitation handed(Visit visit, Token token, HandOverPurpose what, String issuedBy, Instant now,
        Instant expiry) {
        var given = new Invitation(visit, token, Way.SHOWN, issuedBy, now, expiry);
        given.handed = true;
        given.handedFor = what;
        return given;
    }

    /** Whoever handed the tablet over asked the client who they are. */
    void vouch() {
        if (!handed) {
            throw new IllegalStateException("Nobody vouches for who opens a link.");
        }
        vouched = true;
    }

    /** Whether the link still leads to a door: not revoked, not expired. */
    boolean isLive(Instant now) {
        return revokedAt == null && isOpen(now);
    }

    /** While the visit is ahead; once it took place or is off, the client's own link opens what was signed and what can be told. */
    boolean isOpen(Instant now) {
        return now.isBefore(until()) && (visit.state.isAhead() || isAfterwards());
    }

    private boolean isAfterwards() {
        return !handed && !visit.state.isAhead();
    }

    /** Afterwards as long as what was signed is kept: so long can consent be taken back. */
    Instant until() {
        return isAfterwards() ? visit.startsThere().plusYears(keptYears()).toInstant() : expiresAt;
    }

    /** Until when a browser stays in that was let in by it; one let in late stays for a day. */
    Instant inside(Instant opened) {
        Instant late = opened.plus(Duration.ofDays(1)), stays = expiresAt.plus(AFTERWARDS);
        return isAfterwards() ? late.isAfter(stays) ? late : stays : expiresAt;
    }

    /** The database makes it, so nobody hands the policy in. */
    private static int keptYears() {
        return CDI.current().select(Policies.class).get().effective().retentionYears();
    }

    boolean isLocked() {
        return lockedAt != null;
    }

    /** Counts a wrong birth date; true when this was the one that locks the link. */
    boolean countWrong(Instant now) {
        wrongTries++;
        if (wrongTries < TRIES) {
            return false;
        }
        lockedAt = now;
        return true;
    }

    /** What the salon's tablet was given out for; empty on the client's own phone. */
    Optional<HandOverPurpose> handed() {
        return handed ? Optional.of(Optional.ofNullable(handedFor).orElse(HandOverPurpose.TO_SIGN)) : Optional.empty();
    }

    void unlock() {
        wrongTries = 0;
        lockedAt = null;
    }
}
