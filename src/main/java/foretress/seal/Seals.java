package foretress.seal;

import foretress.running.Held;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.io.ByteArrayInputStream;
import java.security.GeneralSecurityException;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.time.Clock;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/** The salon's seal. The first paper that needs it makes its key; two servers that make one at once have two, and both certificates stay. */
@Singleton
public class Seals {
    private static final Logger LOG = Logger.getLogger(Seals.class);

    private final char[] passphrase;
    private final Clock clock;
    private final Held<List<Kept>> kept = Held.of(List.of("seal_key"), Seals::stored);
    private volatile Optional<SealingKey> current = Optional.empty();

    private record Kept(String certificate, String keystore) {}

    Seals(@ConfigProperty(name = "foretress.seal-key") String passphrase, Clock clock) {
        this.passphrase = passphrase.toCharArray();
        this.clock = clock;
    }

    private static List<Kept> stored() {
        return QuarkusTransaction.joiningExisting().call(() -> SealKey.newestFirst().stream()
            .map(key -> new Kept(key.certificate(), key.keystore())).toList());
    }

    /** @param salon the salon's name, for the certificate of a key that has to be made */
    public byte[] seal(byte[] paper, String salon) {
        return PaperSeal.put(paper, key(salon), clock.instant());
    }

    private synchronized SealingKey key(String salon) {
        if (current.isEmpty()) {
            current = Optional.of(newest().orElseGet(() -> made(salon)));
        }
        return current.get();
    }

    /** A lost passphrase stops no sealing: then a new key is made. */
    private Optional<SealingKey> newest() {
        return kept.get().stream().findFirst().flatMap(key -> {
            try {
                return Optional.of(SealingKey.opened(Base64.getDecoder().decode(key.keystore()), passphrase));
            } catch (GeneralSecurityException e) {
                LOG.warn(
                    "The sealing key does not open with seal.key: a new one is made. Papers sealed before still verify.");
                return Optional.empty();
            }
        });
    }

    private SealingKey made(String salon) {
        SealingKey fresh = SealingKey.make(salon, clock.instant());
        Base64.Encoder text = Base64.getEncoder();
        try {
            var row = new SealKey(clock.instant(), text.encodeToString(fresh.certificate().getEncoded()),
                text.encodeToString(fresh.stored(passphrase)));
            QuarkusTransaction.requiringNew().run(() -> row.persist());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("the new certificate cannot be written", e);
        }
        return fresh;
    }

    /** Of every key there has been, newest first. */
    public List<X509Certificate> certificates() {
        return kept.get().stream().map(key -> certificate(Base64.getDecoder().decode(key.certificate()))).toList();
    }

    /** What {@code verify-paper} takes: the certificates one after the other, as text (RFC 7468). */
    public String certificatesAsText() {
        var text = new StringBuilder();
        Base64.Encoder lines = Base64.getMimeEncoder(64, new byte[] { '\n' });
        for (Kept key : kept.get()) {
            text.append("-----BEGIN CERTIFICATE-----\n")
                .append(lines.encodeToString(Base64.getDecoder().decode(key.certificate())))
                .append("\n-----END CERTIFICATE-----\n");
        }
        return text.toString();
    }

    private static X509Certificate certificate(byte[] der) {
        try {
            return (X509Certificate) CertificateFactory.getInstance("X.509")
                .generateCertificate(new ByteArrayInputStream(der));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("a stored certificate cannot be read", e);
        }
    }
}
