package foretress.consent;

import foretress.knowledge.Sha256;
import foretress.running.Clockwork;
import foretress.salon.Salon;
import foretress.seal.Seals;
import foretress.vault.Unreadable;
import foretress.vault.Vault;
import foretress.visit.Visit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.scheduler.Scheduled;
import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import java.nio.ByteBuffer;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.jboss.logging.Logger;

/**
 * The signed documents with the salon's seal on them. A document is sealed after its signing is kept, so that no signing waits for a seal
 * or fails with it: within half a minute, at the first download, or after a crash at the next start, and once.
 */
@Singleton
public class SealedPapers {
    private static final Logger LOG = Logger.getLogger(SealedPapers.class);

    /** What became of a document since it was sealed. */
    public enum Standing { NEWEST, SUPERSEDED, TAKEN_BACK }

    private final Consents consents;
    private final Seals seals;
    private final Vault vault;
    private final Clock clock;
    private final Clockwork clockwork;
    /** Said once, and not tried again before the next start or a download. */
    private final Set<UUID> unreadable = ConcurrentHashMap.newKeySet();

    SealedPapers(Consents consents, Seals seals, Vault vault, Clock clock, Clockwork clockwork) {
        this.consents = consents;
        this.seals = seals;
        this.vault = vault;
        this.clock = clock;
        this.clockwork = clockwork;
    }

    /**
     * The document with the seal; what was signed is its beginning, byte for byte.
     *
     * @throws Consents.Altered when what is stored is not what was signed
     */
    public byte[] of(SignedConsent document) {
        byte[] own = consents.pdf(document);
        return kept(document.id(), own).orElseGet(() -> seal(document, own));
    }

    /** The same of a document already opened; without a seal where it has none yet. */
    public byte[] sealed(UUID documentId, byte[] own) {
        return kept(documentId, own).orElse(own);
    }

    private Optional<byte[]> kept(UUID documentId, byte[] own) {
        return SealedPaper.of(documentId).map(vault::open).map(seal -> ByteBuffer.allocate(own.length + seal.length)
            .put(own).put(seal).array());
    }

    /** Whoever is first keeps it; who comes second gives out the first one's. What is kept is what stands behind the document's own bytes. */
    private byte[] seal(SignedConsent document, byte[] own) {
        byte[] sealed = seals.seal(own, Salon.the().name);
        byte[] seal = Arrays.copyOfRange(sealed, own.length, sealed.length);
        try {
            QuarkusTransaction.requiringNew()
                .run(() -> new SealedPaper(document.clientId(), document.id(), clock.instant(), Sha256.of(sealed),
                    place -> vault.seal(document.clientId(), place, seal)).persist());
            return sealed;
        } catch (RuntimeException notKept) {
            return QuarkusTransaction.requiringNew().call(() -> kept(document.id(), own)).orElseThrow(() -> notKept);
        }
    }

    @Scheduled(every = "${foretress.seal.every:30s}", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void onTheDot() {
        clockwork.run(() -> {
            sealDue();
            nameDue();
        });
    }

    /** Seals what is not sealed yet; how many. One that cannot be read does not keep the next from it. */
    int sealDue() {
        List<UUID> due = QuarkusTransaction.requiringNew().call(SealedPaper::missing);
        return (int) due.stream().filter(id -> !unreadable.contains(id)).filter(this::sealed).count();
    }

    /** What was sealed before files were found again gets its file's name; how many. */
    int nameDue() {
        List<UUID> due = QuarkusTransaction.requiringNew().call(SealedPaper::unnamed);
        return (int) due.stream().filter(id -> !unreadable.contains(id)).filter(this::named).count();
    }

    private boolean named(UUID id) {
        try {
            QuarkusTransaction.requiringNew().run(() -> {
                byte[] file = of(SignedConsent.findById(id));
                SealedPaper.of(id).orElseThrow().named(Sha256.of(file));
            });
            return true;
        } catch (RuntimeException stays) {
            unreadable.add(id);
            return notSealed(id, stays);
        }
    }

    /** What became of the document of which this file is the sealed one; empty when it is none that is on file. */
    @Transactional
    public Optional<Standing> standing(byte[] file) {
        return SealedPaper.documentOf(Sha256.of(file)).map(id -> SignedConsent.<SignedConsent>findById(id))
            .map(document -> {
                if (Visit.isTakenBack(document.visitId())) {
                    return Standing.TAKEN_BACK;
                }
                return document.isSuperseded() ? Standing.SUPERSEDED : Standing.NEWEST;
            });
    }

    private boolean sealed(UUID id) {
        try {
            return QuarkusTransaction.requiringNew().call(() -> of(SignedConsent.findById(id)).length > 0);
        } catch (Consents.Altered | Unreadable stays) {
            unreadable.add(id);
            return notSealed(id, stays);
        } catch (RuntimeException passing) {
            return notSealed(id, passing);
        }
    }

    private static boolean notSealed(UUID id, RuntimeException why) {
        LOG.warnf("The signed document %s could not be sealed: %s", id, why.getClass().getSimpleName());
        return false;
    }
}
