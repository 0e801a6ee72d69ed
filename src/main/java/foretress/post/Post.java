package foretress.post;

import foretress.vault.SealedJson;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.Config;
import org.eclipse.microprofile.config.ConfigValue;

/** Takes letters in. A letter given inside a transaction leaves only if that transaction commits. */
@ApplicationScoped
public class Post {
    /** How far a mail has come. */
    public enum Progress { WAITING, SENT, GIVEN_UP }

    /** What became of a mail, and when it was handed in. */
    public record Trace(Progress progress, Instant handedIn) {}

    /** Stands where a letter's client and visit would. */
    private static final UUID HOUSE = new UUID(0, 0);

    private final SealedJson sealed;
    private final Clock clock;
    private final Config config;

    Post(SealedJson sealed, Clock clock, Config config) {
        this.sealed = sealed;
        this.clock = clock;
        this.config = config;
    }

    /**
     * @param kind what sort of letter it is, for finding it again; at most 32 letters
     * @param language BCP 47 language it is written in
     */
    @Transactional
    public UUID mail(UUID clientId, UUID visitId, String kind, String language, Letter letter) {
        var mail = new Outgoing(clientId, visitId, kind, language, sealed.sealing(clientId, letter),
            clock.instant());
        mail.persist();
        return mail.id;
    }

    /** A letter to the salon itself, about no client: sealed with a key of the house's own. */
    public UUID mailHouse(String kind, String language, Letter letter) {
        return mail(HOUSE, HOUSE, kind, language, letter);
    }

    /** Mails of this kind for the visit that have not left are not sent any more: another takes their place. */
    @Transactional
    public void callBack(UUID visitId, String kind) {
        Outgoing.update(
            "givenUpAt = ?1, body = null where visitId = ?2 and kind = ?3 and sentAt is null and givenUpAt is null",
            clock.instant(), visitId, kind);
    }

    /** The newest mail of this kind for the visit. */
    public Optional<Trace> latest(UUID visitId, String kind) {
        return Outgoing.<Outgoing>find("visitId = ?1 and kind = ?2 order by madeAt desc", visitId, kind)
            .firstResultOptional().map(mail -> new Trace(mail.progress(), mail.madeAt));
    }

    /** Whether anybody has said where mail is to be handed over, or it is only shown. */
    public boolean canSend() {
        return isSet("quarkus.mailer.host")
            || config.getOptionalValue("quarkus.mailer.mock", Boolean.class).orElse(false);
    }

    /** A default counts as not set: port 25 of this very machine is nobody's choice. */
    private boolean isSet(String name) {
        ConfigValue value = config.getConfigValue(name);
        return value.getValue() != null && value.getSourceOrdinal() > 0;
    }

    Letter open(Outgoing mail) {
        return sealed.open(mail.clientId, mail.place("body"), mail.body, Letter.class);
    }
}
