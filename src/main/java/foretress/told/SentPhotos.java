package foretress.told;

import foretress.ledger.Ledger;
import foretress.picture.RedrawnPhoto;
import foretress.vault.Vault;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import jakarta.persistence.LockModeType;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * Photos that clients send by their own link. They change nothing that is found: a person looks at them. What is taken back is deleted.
 * Call it outside a transaction.
 */
@Singleton
public class SentPhotos {
    private static final String SENT = "photo sent by the client", REPLACED = "photo replaced by the client",
        TAKEN_BACK = "photo taken back by the client", DELETED = "photos deleted with the consent taken back",
        SEEN = "photo of the client's seen";
    private static final Comparator<Kept> ORDER = Comparator.comparing(Kept::shows).thenComparing(Kept::sentAt);

    private final Vault vault;
    private final Ledger ledger;
    private final Clock clock;

    /** What became of one that was sent. */
    public enum Sent {
        KEPT,
        /** There are as many of this as there may be, or the visit is over. */
        NO_ROOM,
        /** By a form that sent another one before, or one that was taken back since. */
        OLD_FORM
    }

    /** One that is kept, without the photo itself. */
    public record Kept(UUID id, PhotoOf shows, Instant sentAt) {}

    SentPhotos(Vault vault, Ledger ledger, Clock clock) {
        this.vault = vault;
        this.ledger = ledger;
        this.clock = clock;
    }

    /** Once the client agreed to the notice, and while the visit is still to come. */
    static boolean mayBeSent(Visit visit) {
        return visit.state.hasAnswers() && visit.state.isAhead();
    }

    /** Staff see none of a visit whose client took consent back. */
    static boolean mayBeSeen(Visit visit) {
        return visit.state != State.WITHDRAWN;
    }

    /** By what they are of, then in the order they came. */
    public List<Kept> of(UUID visitId) {
        return SentPhoto.ofVisit(visitId).stream().map(this::kept).sorted(ORDER).toList();
    }

    /** Has those of each of these visits at hand. */
    void ready(Collection<UUID> visits) {
        SentPhoto.ready(visits);
    }

    private Kept kept(SentPhoto.Sealed row) {
        return new Kept(row.id(), PhotoOf.valueOf(vault.openWord(row.clientId(), row.place("shows"), row.text())),
            row.sentAt());
    }

    private List<Kept> of(UUID visitId, PhotoOf shows) {
        return of(visitId).stream().filter(one -> one.shows() == shows).toList();
    }

    /** JPEG; empty when this visit has none of this id. */
    Optional<byte[]> whole(UUID visitId, UUID id) {
        return SentPhoto.whole(visitId, id).map(vault::open);
    }

    /** The same, small. */
    Optional<byte[]> small(UUID visitId, UUID id) {
        return SentPhoto.small(visitId, id).map(row -> vault.open(row.clientId(), row.place("small"), row.text()));
    }

    /**
     * Names the form for the next photo of this: the same on every page until one was sent, so that a page left open elsewhere cannot
     * send again what was taken back since.
     */
    UUID form(Visit visit, PhotoOf shows) {
        long used = PhotoForm.used(visit.id, formOf(visit, shows));
        return UUID.nameUUIDFromBytes((visit.id + " " + shows + " " + used).getBytes(StandardCharsets.UTF_8));
    }

    private String formOf(Visit visit, PhotoOf shows) {
        return vault.code(visit.keyOf, PhotoForm.FORM_OF, shows.name());
    }

    /** The same form with the same photo twice is one photo; where one is kept of a thing, the new one takes its place. */
    public Sent send(UUID submission, UUID visitId, PhotoOf shows, RedrawnPhoto drawn) {
        byte[] small = drawn.small();
        return QuarkusTransaction.requiringNew().call(() -> {
            Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
            if (PhotoForm.isUsed(submission)) {
                return isKept(submission, drawn) ? Sent.KEPT : Sent.OLD_FORM;
            }
            if (!mayBeSent(visit) || !makeRoom(visitId, shows)) {
                return Sent.NO_ROOM;
            }
            keep(submission, visit, shows, drawn, small);
            return Sent.KEPT;
        });
    }

    /** Drawn anew, the same file comes out as the same bytes. */
    private boolean isKept(UUID submission, RedrawnPhoto drawn) {
        return SentPhoto.submitted(submission).filter(kept -> Arrays.equals(vault.open(kept), drawn.jpeg()))
            .isPresent();
    }

    private boolean makeRoom(UUID visitId, PhotoOf shows) {
        List<Kept> there = of(visitId, shows);
        if (shows.most() == 1) {
            there.forEach(one -> take(visitId, one.id(), REPLACED));
        }
        return shows.most() == 1 || there.size() < shows.most();
    }

    private void keep(UUID submission, Visit visit, PhotoOf shows, RedrawnPhoto drawn, byte[] small) {
        UUID client = visit.client.id;
        new SentPhoto(visit, submission, clock.instant(), vault.sealing(client, drawn.jpeg()),
            place -> vault.sealWord(client, place, shows.name()), vault.sealing(client, small)).persistAndFlush();
        new PhotoForm(visit.id, submission, formOf(visit, shows)).persist();
        ledger.note("client", SENT, visit.id.toString());
    }

    void takeBack(UUID visitId, UUID id) {
        QuarkusTransaction.requiringNew().run(() -> take(visitId, id, TAKEN_BACK));
    }

    private void take(UUID visitId, UUID id, String said) {
        if (SentPhoto.remove(visitId, id)) {
            ledger.note("client", said, visitId.toString());
        }
    }

    /** A client who takes consent back takes the photos back with it, in the same transaction. */
    void withTheConsent(@Observes Visits.CalledOff gone) {
        Visit visit = Visit.findById(gone.visitId());
        if (!mayBeSeen(visit) && SentPhoto.removeAll(visit.id)) {
            ledger.note("client", DELETED, visit.id.toString());
        }
    }

    /** A member of staff looked at one closely. */
    void seen(UUID visitId, UUID by) {
        ledger.note(by.toString(), SEEN, visitId.toString());
    }
}
