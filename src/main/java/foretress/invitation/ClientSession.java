package foretress.invitation;

import foretress.running.Stored;
import foretress.visit.State;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** One browser let in by birth date. Its cookie names it; only the hash of the cookie is kept. */
@Entity
@Table(name = "door")
public class ClientSession extends Stored {
    @ManyToOne(fetch = FetchType.EAGER, optional = false)
    @JoinColumn(name = "invitation_id") Invitation invitation;
    @ManyToOne(fetch = FetchType.EAGER, optional = false)
    @JoinColumn(name = "visit_id") public Visit visit;
    @Column(name = "cookie_hash") private String cookieHash;
    public String language;
    @Column(name = "opened_at") Instant openedAt;
    /** How many birth dates it took, the right one included. */
    int tries;
    /** Whether the first answers came through this door. */
    private boolean began;
    /** A code was shown. Whoever was handed the salon's tablet needs none, nor does a browser the client answered from before. */
    @Column(name = "proved_by_code") boolean provedByCode;
    /** When one was shown here, and nothing else counts as one. */
    @Column(name = "code_shown_at") Instant codeShownAt;
    @Column(name = "closed_at") private Instant closedAt;

    protected ClientSession() {}

    ClientSession(Invitation invitation, Token cookie, String language, int tries, Instant now) {
        super(invitation, cookie, language, now);
        this.invitation = invitation;
        this.visit = invitation.visit;
        this.cookieHash = cookie.hash();
        this.language = language;
        this.tries = (int) counted(tries);
        this.openedAt = now;
        this.provedByCode = invitation.handed;
    }

    /** With all that a page of the client's asks of it, and the key of what is sealed on the visit. */
    static Optional<ClientSession> behind(String cookieHash) {
        return getEntityManager().createQuery("select d, k from ClientSession d join fetch d.invitation"
            + " join fetch d.visit v join fetch v.client left join fetch v.services"
            + " left join ClientKey k on k.clientId = v.keyOf where d.cookieHash = ?1", Object[].class)
            .setParameter(1, cookieHash).getResultStream().map(row -> (ClientSession) row[0]).findFirst();
    }

    /** This very browser answered for the same client before, and was not made to forget. */
    void known() {
        provedByCode = true;
    }

    /** Whether answers of this client came through this door, and nobody closed it. */
    boolean answeredFor(UUID client) {
        return !invitation.handed && closedAt == null && (began || provedByCode) && visit.client.id.equals(client);
    }

    /** The first answers come through this door. */
    void begin() {
        began = true;
    }

    /** The client reads this language from now on, here and in what is sent. */
    void speak(String tag) {
        visit.client.reads(tag);
        language = tag;
    }

    /** Open until closed, or as long as a link is; a newer link does not shut it. */
    boolean isOpen(Instant now) {
        return closedAt == null && invitation.isOpen(now) && now.isBefore(invitation.inside(openedAt));
    }

    /** Whether it was opened for the visit that this link is for, by the client's own browser. */
    boolean leadsTo(Invitation link) {
        return !invitation.handed && visit.id.equals(link.visit.id);
    }

    /** Whether this browser may see this visit's answers: there are none yet, it gave them, or a code was shown. */
    boolean seesThisVisit() {
        return began || provedByCode || !holdsAnswers();
    }

    /** One called off holds answers if anybody began them, by a link or on paper. */
    private boolean holdsAnswers() {
        return visit.state == State.CANCELLED
            ? visit.standing().isPresent() || count("visit.id = ?1 and began = true", visit.id) > 0
            : visit.state.mayHoldAnswers();
    }
}
