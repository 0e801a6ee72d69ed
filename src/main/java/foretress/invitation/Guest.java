package foretress.invitation;

import foretress.visit.Client;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.web.Language;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import jakarta.persistence.OptimisticLockException;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** The client behind this request, known by the cookie of a door; {@link GuestFilter} fills it in. */
@Named("guest")
@RequestScoped
public class Guest {
    private final Language page;
    private ClientSession door;

    Guest(Language page) {
        this.page = page;
    }

    void cameThrough(ClientSession opened) {
        door = opened;
    }

    public boolean present() {
        return door != null;
    }

    private ClientSession door() {
        return Optional.ofNullable(door).orElseThrow(() -> new IllegalStateException("Nobody came through a door"));
    }

    public UUID doorId() {
        return door().id;
    }

    public UUID invitationId() {
        return door().invitation.id;
    }

    /** How the client came in, for the evidence behind a signature. */
    public Entrance entrance() {
        Invitation came = door().invitation;
        return new Entrance(came.id, came.way, came.issuedBy, came.issuedAt, door().openedAt,
            client().birthDateConfirmed, door().tries, came.handed, came.vouched);
    }

    public UUID visitId() {
        return door().visit.id;
    }

    /** The visit as it stands in the store now. */
    public Visit visit() {
        return Visit.findById(visitId());
    }

    public Client client() {
        return visit().client;
    }

    /** Whether no telephone number of the client is on file. */
    public boolean isWithoutPhone() {
        return client().phone().isEmpty();
    }

    /** The language of the page that is read now, which may have been changed since the door. */
    public String language() {
        return page.getTag();
    }

    boolean changedLanguage() {
        return !door().language.equals(language());
    }

    /** Whether this browser may see the answers of this visit; pages under /answers are reached only then. */
    public boolean seesThisVisit() {
        return door().seesThisVisit();
    }

    /** Whether nothing is to come at this visit: then there is nothing to answer any more, and perhaps something to tell. */
    boolean comesAfterwards() {
        return !door().visit.state.isAhead();
    }

    /** Whether this is the salon's own tablet, to be given back. */
    public boolean isOnHandedTablet() {
        return door().invitation.handed;
    }

    /** What the salon's tablet was handed over for; empty on the client's own phone. */
    Optional<HandOverPurpose> handed() {
        return door().invitation.handed();
    }

    /** Where staff go on once the tablet was given back and they have signed in. */
    String after() {
        return handed().orElse(HandOverPurpose.TO_SIGN).after(visitId());
    }

    /** When a one-use code was shown in this browser. */
    Optional<Instant> codeShownAt() {
        return Optional.ofNullable(door().codeShownAt);
    }

    /** Whether it may see what was answered for earlier visits: only after a one-use code. */
    public boolean seesEarlierVisits() {
        return door().provedByCode;
    }

    /**
     * Marks this browser as the one the first answers came through and the visit as being answered. Call it in the
     * transaction that keeps the first thing the client says.
     *
     * @throws OptimisticLockException when another browser began meanwhile
     */
    @Transactional
    public void begin() {
        ClientSession here = ClientSession.findById(doorId());
        if (here.visit.state == State.INVITED) {
            here.visit.moveTo(State.ANSWERING);
            here.begin();
        }
        if (!here.seesThisVisit()) {
            throw new OptimisticLockException("Another browser began this visit");
        }
    }
}
