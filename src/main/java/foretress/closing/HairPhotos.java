package foretress.closing;

import foretress.ledger.Ledger;
import foretress.picture.RedrawnPhoto;
import foretress.vault.Vault;
import foretress.visit.Visit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import jakarta.persistence.LockModeType;
import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Photos before and after, on the card. Leave that is taken back takes the photo away for good. Call it outside a transaction. */
@Singleton
public class HairPhotos {
    public static final int MOST = 6;

    private final Vault vault;
    private final Ledger ledger;
    private final Clock clock;

    HairPhotos(Vault vault, Ledger ledger, Clock clock) {
        this.vault = vault;
        this.ledger = ledger;
        this.clock = clock;
    }

    /** Before first, then after. */
    public List<HairPhoto> of(UUID visitId) {
        return HairPhoto.of(visitId);
    }

    /** Has those of each of these visits at hand. */
    public void ready(Collection<UUID> visits) {
        HairPhoto.ready(visits);
    }

    public Optional<HairPhoto> one(UUID visitId, UUID id) {
        return of(visitId).stream().filter(photo -> photo.id().equals(id)).findFirst();
    }

    public byte[] bytes(HairPhoto photo) {
        return vault.open(photo);
    }

    /** @return false when the visit has as many as it may have */
    public boolean add(UUID visitId, HairPhoto.Moment moment, RedrawnPhoto drawn, UUID by) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
            return HairPhoto.of(visitId).size() < MOST && keep(visit, moment, drawn, by);
        });
    }

    private boolean keep(Visit visit, HairPhoto.Moment moment, RedrawnPhoto drawn, UUID by) {
        new HairPhoto(visit, moment, by, clock.instant(), vault.sealing(visit.client.id, drawn.jpeg()))
            .persist();
        ledger.note(by.toString(), "photo of the hair kept, with the client's leave", visit.id.toString());
        return true;
    }

    public void remove(HairPhoto found, UUID by) {
        QuarkusTransaction.requiringNew().run(() -> {
            HairPhoto.deleteById(found.id());
            ledger.note(by.toString(), "photo of the hair taken away", found.visitId().toString());
        });
    }
}
