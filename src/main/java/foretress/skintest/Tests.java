package foretress.skintest;

import jakarta.inject.Singleton;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Tests read from the store and opened. */
@Singleton
class Tests {
    private final Sealing sealing;

    Tests(Sealing sealing) {
        this.sealing = sealing;
    }

    /** The newest first. */
    List<Told> ofClient(UUID clientId) {
        return SkinTest.ofClient(clientId).stream().map(this::told).toList();
    }

    List<Told> ofVisit(UUID clientId, UUID visitId) {
        return ofClient(clientId).stream().filter(told -> told.test().visitId().equals(visitId)).toList();
    }

    Optional<Told> find(UUID id) {
        return SkinTest.byId(id).map(this::told);
    }

    Told told(SkinTest test) {
        return new Told(test, sealing.made(test), Entry.ofTest(test.id()).stream().map(entry -> new Told.Seen(entry, sealing.look(entry))).toList());
    }
}
