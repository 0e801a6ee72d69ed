package foretress.card;

import foretress.bench.BenchPhoto;
import foretress.bench.Keeping;
import foretress.note.NotedPaper;
import foretress.picture.Paper;
import foretress.picture.PhotoRedrawing;
import foretress.picture.RedrawnPhoto;
import foretress.running.AtStart;
import foretress.vault.SealedRow;
import foretress.vault.Vault;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jboss.logging.Logger;

/**
 * Earlier versions kept photos and letters as they came, with where they were taken inside. Once, at start, each of them goes the way
 * that every upload goes now. What cannot be drawn stays on file, and is only handed out as a download. Nothing is done twice.
 */
@Singleton
class AsSent implements AtStart {
    private static final Logger LOG = Logger.getLogger(AsSent.class);

    private final Vault vault;

    AsSent(Vault vault) {
        this.vault = vault;
    }

    @Override
    public int order() {
        return 200;
    }

    @Override
    public void run() {
        int photos = all(this::onePhoto);
        int papers = all(this::onePaper);
        if (photos + papers > 0) {
            LOG.infof("Kept as they had been sent until now, and looked through: %d photos of tests, %d letters",
                photos, papers);
        }
    }

    /** One transaction each: a stop in between loses nothing. */
    private static int all(BooleanSupplier one) {
        int done = 0;
        while (QuarkusTransaction.requiringNew().call(one::getAsBoolean)) {
            done++;
        }
        return done;
    }

    private boolean onePhoto() {
        Optional<BenchPhoto> next = BenchPhoto.<BenchPhoto>find("kept = ?1 order by id", Keeping.AS_SENT)
            .page(0, 1).firstResultOptional();
        next.ifPresent(photo -> {
            Optional<RedrawnPhoto> drawn = opened(photo).flatMap(bytes -> PhotoRedrawing.of(bytes).kept());
            drawn.ifPresentOrElse(fresh -> photo.redrawn(vault.sealing(photo.clientId(), fresh.jpeg())),
                photo::unreadable);
        });
        return next.isPresent();
    }

    private boolean onePaper() {
        Optional<NotedPaper> next =
            NotedPaper.<NotedPaper>find("kept = ?1 order by id", Keeping.AS_SENT).page(0, 1).firstResultOptional();
        next.ifPresent(paper -> {
            Optional<Paper> read = opened(paper).flatMap(bytes -> Paper.of(bytes).kept());
            read.ifPresentOrElse(
                fresh -> paper.readAnew(fresh, vault.sealing(paper.clientId(), fresh.bytes())),
                paper::unreadable);
        });
        return next.isPresent();
    }

    /** A damaged one must not keep the salon shut. */
    private Optional<byte[]> opened(SealedRow row) {
        try {
            return Optional.of(vault.open(row));
        } catch (RuntimeException unreadable) {
            LOG.warnf("%s cannot be opened and stays as it is", row.place("body"));
            return Optional.empty();
        }
    }
}
