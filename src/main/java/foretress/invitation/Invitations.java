package foretress.invitation;

import foretress.ledger.Ledger;
import foretress.post.MailSent;
import foretress.visit.State;
import foretress.visit.Task;
import foretress.visit.Tasks;
import foretress.visit.Visit;
import foretress.web.PublicAddress;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Issues links, revokes them, and judges who knocks with one. */
@ApplicationScoped
public class Invitations {
    /** A second mail asked for within this time is the same tap again. */
    private static final Duration SAME_TAP = Duration.ofSeconds(30);
    /** Longer nobody holds the salon's tablet: time to answer everything twice. */
    private static final Duration IN_HAND = Duration.ofHours(3);

    private final Tasks tasks;
    private final Ledger ledger;
    private final PublicAddress address;
    private final Clock clock;
    private final int daysAfter;

    Invitations(Tasks tasks, Ledger ledger, PublicAddress address, Clock clock,
        @ConfigProperty(name = "foretress.link.days-after-visit", defaultValue = "1") int daysAfter) {
        this.tasks = tasks;
        this.ledger = ledger;
        this.address = address;
        this.clock = clock;
        this.daysAfter = daysAfter;
    }

    /**
     * A fresh link for the visit. One that is shown takes the place of every earlier one at once; one that is mailed does so
     * when its mail has left ({@link #carried}), so that a mail that never leaves shuts nobody out. Browsers already let in
     * stay in.
     *
     * @throws IllegalStateException when the visit is over or called off
     */
    @Transactional
    public Token issue(UUID visitId, Invitation.Way way, String actor) {
        Visit visit = ahead(visitId);
        if (way == Invitation.Way.SHOWN) {
            retire(visitId);
        }
        Token token = Token.fresh();
        new Invitation(visit, token, way, actor, clock.instant(), expiry(visit)).persist();
        if (visit.state == State.BOOKED) {
            visit.moveTo(State.INVITED);
        }
        ledger.note(actor, "link issued", visitId.toString());
        return token;
    }

    private static Visit ahead(UUID visitId) {
        Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
        if (!visit.state.isAhead()) {
            throw new IllegalStateException("No link for a visit that is " + visit.state);
        }
        return visit;
    }

    /** This mail carries the link: once it has left, earlier links end. */
    @Transactional
    public void carried(Token token, UUID mailId) {
        Invitation.update("mailId = ?1 where tokenHash = ?2", mailId, token.hash());
    }

    /** A mail has left: the link in it is the one that holds. */
    @Transactional
    void left(@Observes MailSent mail) {
        Invitation.<Invitation>find("mailId", mail.id()).firstResultOptional().ifPresent(sent -> Invitation.update(
            "revokedAt = ?1 where visit.id = ?2 and revokedAt is null and handed = false and issuedAt < ?3",
            clock.instant(), sent.visit.id, sent.issuedAt));
    }

    /** A fresh link as text, to put before the client; it replaces every earlier one. */
    @Transactional
    public String issueLink(UUID visitId, String actor) {
        return address.link("/i/" + issue(visitId, Invitation.Way.SHOWN, actor).reveal());
    }

    /** The address that a token opens. */
    public String address(Token token) {
        return address.link("/i/" + token.reveal());
    }

    /**
     * A door of the salon's own tablet, put into the client's hands; the client's own link stays as it is. Who hands it over
     * vouches for the person as for one to whom a code is read out; the birth date is still asked.
     */
    @Transactional
    Token handOver(UUID visitId, HandOverPurpose what, String actor) {
        Token token = Token.fresh();
        handed(visitId, what, token, actor);
        return token;
    }

    /** The same, already inside: staff asked the client who they are. */
    @Transactional
    Knock.LetIn handOverInside(UUID visitId, HandOverPurpose what, String actor) {
        Invitation given = handed(visitId, what, Token.fresh(), actor);
        given.vouch();
        return enter(given, given.visit.client.language, Optional.empty());
    }

    private Invitation handed(UUID visitId, HandOverPurpose what, Token token, String actor) {
        Visit visit = ahead(visitId);
        Instant now = clock.instant();
        Invitation.update("revokedAt = ?1 where visit.id = ?2 and revokedAt is null and handed = true", now, visitId);
        Invitation given = Invitation.handed(visit, token, what, actor, now, soonest(expiry(visit), now.plus(IN_HAND)));
        given.persist();
        if (visit.state == State.BOOKED && what != HandOverPurpose.FOR_SKIN_TEST) {
            visit.moveTo(State.INVITED);
        }
        ledger.note(actor, "tablet handed to the client", visitId.toString());
        return given;
    }

    private static Instant soonest(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }

    /** The end of the visit's day as the salon counts days, and the policy's days after it. */
    private Instant expiry(Visit visit) {
        return visit.startsThere().toLocalDate().plusDays(1L + daysAfter).atStartOfDay(visit.zone()).toInstant();
    }

    private void retire(UUID visitId) {
        Invitation.update("revokedAt = ?1 where visit.id = ?2 and revokedAt is null and handed = false",
            clock.instant(), visitId);
    }

    /** No link opens from now on and every browser let in before is out. */
    @Transactional
    public void revoke(UUID visitId, String actor) {
        Invitation.update("revokedAt = ?1 where visit.id = ?2 and revokedAt is null", clock.instant(), visitId);
        ClientSession.update("closedAt = ?1 where visit.id = ?2 and closedAt is null", clock.instant(), visitId);
        ledger.note(actor, "link revoked", visitId.toString());
    }

    /** The newest link of the visit, dead or alive; a tablet handed over is no link. */
    public Optional<Invitation> latest(UUID visitId) {
        return Invitation.find("visit.id = ?1 and handed = false order by issuedAt desc", visitId)
            .firstResultOptional();
    }

    /** What has become of the newest link; empty when none was ever made. */
    Optional<LinkState> state(UUID visitId) {
        return latest(visitId)
            .map(invitation -> new LinkState(stateOf(invitation), invitation.issuedAt, invitation.expiresAt));
    }

    private LinkState.State stateOf(Invitation invitation) {
        if (invitation.revokedAt != null) {
            return LinkState.State.REVOKED;
        }
        if (!invitation.visit.state.isAhead()) {
            return LinkState.State.OVER;
        }
        if (!clock.instant().isBefore(invitation.expiresAt)) {
            return LinkState.State.EXPIRED;
        }
        return invitation.isLocked() ? LinkState.State.LOCKED : LinkState.State.LIVE;
    }

    public Optional<Invitation> live(UUID visitId) {
        return latest(visitId).filter(invitation -> invitation.isLive(clock.instant()));
    }

    /** Whether the link was mailed so short a time ago that this is a second tap on the same button. */
    public boolean wasJustMailed(UUID visitId) {
        return live(visitId).filter(invitation -> invitation.way == Invitation.Way.MAILED)
            .filter(invitation -> invitation.issuedAt.plus(SAME_TAP).isAfter(clock.instant())).isPresent();
    }

    /** The live invitation behind what was presented. A wrong, old, revoked or foreign token are all nothing. */
    public Optional<Invitation> behind(String token) {
        return Invitation.behind(Token.hash(token)).filter(invitation -> invitation.isLive(clock.instant()));
    }

    /** What a knock led to. */
    public sealed interface Knock {
        record NoSuchLink() implements Knock {}
        record Wrong() implements Knock {}
        record Locked() implements Knock {}
        record LetIn(Token cookie, Instant until) implements Knock {}
    }

    /**
     * Judges a birth date. The link's row is held while judging, so that of many tries at once no more than
     * {@link Invitation#TRIES} are judged. No date on file: the client's is taken and the desk is asked to confirm it.
     */
    @Transactional
    public Knock knock(String token, LocalDate birthDate, String language) {
        return knock(token, birthDate, language, Optional.empty());
    }

    /** @param before what the browser was let in with last time, whatever became of that */
    @Transactional
    public Knock knock(String token, LocalDate birthDate, String language, Optional<String> before) {
        return held("tokenHash", Token.hash(token))
            .map(invitation -> judge(invitation, birthDate, language, before))
            .orElseGet(Knock.NoSuchLink::new);
    }

    /** Read and locked in one go: a row read before would be judged by what it was then. */
    private Optional<Invitation> held(String by, Object value) {
        return Invitation.<Invitation>find(by, value).withLock(LockModeType.PESSIMISTIC_WRITE).firstResultOptional()
            .filter(invitation -> invitation.isLive(clock.instant()));
    }

    private Knock judge(Invitation invitation, LocalDate birthDate, String language, Optional<String> before) {
        if (invitation.isLocked()) {
            return new Knock.Locked();
        }
        if (isRight(invitation.visit, birthDate)) {
            return letIn(invitation, language, before);
        }
        ledger.note("client", "birth date refused", invitation.visit.id.toString());
        if (!invitation.countWrong(clock.instant())) {
            return new Knock.Wrong();
        }
        tasks.promise(invitation.visit, Task.Kind.UNLOCK_LINK, Optional.empty(), clock.instant());
        return new Knock.Locked();
    }

    private boolean isRight(Visit visit, LocalDate birthDate) {
        if (visit.client.birthDate().isEmpty() && visit.state.isAhead()) {
            visit.client.bornOn(birthDate, false);
            tasks.promise(visit, Task.Kind.CONFIRM_BIRTH_DATE, Optional.empty(), visit.startsAt);
        }
        return visit.client.birthDate().filter(birthDate::equals).isPresent();
    }

    private Knock letIn(Invitation invitation, String language, Optional<String> before) {
        invitation.visit.client.reads(language);
        Knock.LetIn in = enter(invitation, language, before);
        ledger.note("client", "let in by birth date", invitation.visit.id.toString());
        return in;
    }

    private Knock.LetIn enter(Invitation invitation, String language, Optional<String> before) {
        int tries = invitation.wrongTries + 1;
        invitation.unlock();
        Token cookie = Token.fresh();
        var session = new ClientSession(invitation, cookie, language, tries, clock.instant());
        if (!invitation.handed && before.filter(then -> answered(then, invitation.visit)).isPresent()) {
            session.known();
        }
        session.persist();
        return new Knock.LetIn(cookie, invitation.inside(clock.instant()));
    }

    /** Whether a browser with this cookie answered for the same client before. */
    private static boolean answered(String cookie, Visit visit) {
        return ClientSession.<ClientSession>find("cookieHash", Token.hash(cookie)).firstResultOptional()
            .filter(then -> then.answeredFor(visit.client.id)).isPresent();
    }

    /** The desk has spoken to the client: the link takes birth dates again. */
    @Transactional
    public void unlock(UUID visitId, UUID staffId) {
        Invitation.<Invitation>find("visit.id = ?1 and revokedAt is null", visitId)
            .withLock(LockModeType.PESSIMISTIC_WRITE).list()
            .forEach(Invitation::unlock);
        tasks.kept(visitId, Task.Kind.UNLOCK_LINK, staffId);
        ledger.note(staffId.toString(), "link unlocked", visitId.toString());
    }
}
