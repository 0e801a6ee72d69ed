package foretress.skintest;

import foretress.vault.SealedJson;
import foretress.vault.Vault;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Tests read from the store and opened. */
@Singleton
class TestStore {
    private final SealedJson sealed;
    private final Vault vault;

    TestStore(SealedJson sealed, Vault vault) {
        this.sealed = sealed;
        this.vault = vault;
    }

    /** The newest first. */
    List<TestFile> ofClient(UUID clientId) {
        return TestApplied.ofClient(clientId).stream().map(this::told).toList();
    }

    List<TestFile> ofVisit(UUID clientId, UUID visitId) {
        return ofClient(clientId).stream().filter(told -> told.test().visitId().equals(visitId)).toList();
    }

    Optional<TestFile> find(UUID id) {
        return TestApplied.byId(id).map(this::told);
    }

    TestFile told(TestApplied test) {
        return new TestFile(test, sealed.open(test, TestMethod.class), SkinTestEntry.ofTest(test.id()).stream()
            .map(entry -> new TestFile.Seen(entry, sealed.open(entry, SkinLook.class))).toList());
    }

    /** Why a look was marked as entered in error. */
    String errorReason(SkinTestEntry entry) {
        return vault.openWord(entry.clientId(), entry.place("error_reason"), entry.errorReason());
    }
}
