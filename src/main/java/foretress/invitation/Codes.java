package foretress.invitation;

import foretress.ledger.Ledger;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** One-use codes for a second browser: made by mail or at the desk, good for 15 minutes and five tries. */
@ApplicationScoped
public class Codes {
    /** Mailed codes for one visit within {@link #WHILE}; each gives five tries in a hundred million. */
    private static final int MAILED_AT_MOST = 5;
    private static final Duration WHILE = Duration.ofHours(6);

    /** How long after a code everything about a client may be fetched. */
    static final Duration FRESH = Duration.ofMinutes(30);

    private final Clock clock;
    private final Ledger ledger;

    Codes(Clock clock, Ledger ledger) {
        this.clock = clock;
        this.ledger = ledger;
    }

    /** A code to read out; it takes the place of any earlier one. */
    @Transactional
    public String readOut(UUID visitId, String actor) {
        ledger.note(actor, "code read out", visitId.toString());
        return fresh(visitId, false);
    }

    /** A code to mail, or nothing when enough were mailed lately. */
    @Transactional
    Optional<String> toMail(UUID visitId) {
        Instant since = clock.instant().minus(WHILE);
        long mailed = DoorCode.count("visitId = ?1 and mailed = true and madeAt > ?2", visitId, since);
        return mailed >= MAILED_AT_MOST ? Optional.empty() : Optional.of(fresh(visitId, true));
    }

    private String fresh(UUID visitId, boolean mailed) {
        Instant now = clock.instant();
        DoorCode.update("expiresAt = ?1 where visitId = ?2 and usedAt is null and expiresAt > ?1", now, visitId);
        String code = Token.freshCode();
        new DoorCode(visitId, code, mailed, now).persist();
        if (mailed) {
            ledger.note("client", "code mailed", visitId.toString());
        }
        return code;
    }

    /** Whether the code is right; then it is used up and the door may show earlier answers. */
    @Transactional
    boolean prove(UUID doorId, UUID visitId, String typed) {
        Instant now = clock.instant();
        Optional<DoorCode> code =
            DoorCode.find("visitId = ?1 and usedAt is null and expiresAt > ?2 order by madeAt desc",
                visitId, now).firstResultOptional();
        boolean right = code.filter(c -> tryOn(c) && c.codeHash.equals(DoorCode.hash(c.id, digits(typed)))
            && DoorCode.update("usedAt = ?1 where id = ?2 and usedAt is null", now, c.id) == 1).isPresent();
        if (right) {
            ClientSession.update("provedByCode = true, codeShownAt = ?1 where id = ?2", now, doorId);
        }
        ledger.note("client", right ? "code accepted" : "code refused", visitId.toString());
        return right;
    }

    /** Whether a code was shown in this browser within {@link #FRESH}; the salon's tablet and a browser known from before showed none. */
    public boolean shownLately(Guest guest) {
        return !guest.isOnHandedTablet()
            && guest.codeShownAt().filter(at -> at.isAfter(clock.instant().minus(FRESH))).isPresent();
    }

    /** Takes one of the five tries in one statement; false when none is left. */
    private static boolean tryOn(DoorCode code) {
        return DoorCode.update("tries = tries + 1 where id = ?1 and tries < ?2", code.id, DoorCode.TRIES) == 1;
    }

    private static String digits(String typed) {
        return TypedNumber.ascii(typed).replaceAll("[^0-9]", "");
    }
}
