package foretress.card;

import foretress.bench.BenchPhoto;
import foretress.bench.Keeping;
import foretress.vault.Vault;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** Photos as earlier versions kept them: as they had been sent. */
@Singleton
public class OldFiles {
    @Inject Vault vault;
    @Inject AsSent job;

    /** @return the test's photos, each with the bytes given for it */
    public List<UUID> makeAsSent(UUID testId, byte[]... sent) {
        return QuarkusTransaction.requiringNew().call(() -> {
            List<BenchPhoto> photos = BenchPhoto.of(testId);
            List<UUID> made = new ArrayList<>();
            for (int i = 0; i < sent.length; i++) {
                BenchPhoto photo = photos.get(i);
                BenchPhoto.update("kept = ?1, mediaType = ?2, body = ?3 where id = ?4", Keeping.AS_SENT,
                    "image/png",
                    vault.seal(photo.clientId(), photo.place("body"), sent[i]), photo.id());
                made.add(photo.id());
            }
            return made;
        });
    }

    /** What a start does with them. */
    public void start() {
        job.run();
    }
}
