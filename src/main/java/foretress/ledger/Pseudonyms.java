package foretress.ledger;

import foretress.running.Hmac;
import jakarta.inject.Singleton;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Names a record in the chain without naming it: whoever has the chain alone cannot tell whose entry it is. */
@Singleton
class Pseudonyms {
    private final Hmac key;

    Pseudonyms(@ConfigProperty(name = "foretress.ledger-key") String base64) {
        key = Hmac.ofBase64(base64);
    }

    /** HMAC-SHA256 in hexadecimal; nothing stays nothing. */
    String of(String subject) {
        return subject.isEmpty() ? "" : key.hex(subject);
    }
}
