package foretress.ledger;

import jakarta.inject.Singleton;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Base64;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Names a record in the chain without naming it: whoever has the chain alone cannot tell whose entry it is. */
@Singleton
class Pseudonyms {
    private final SecretKeySpec key;

    Pseudonyms(@ConfigProperty(name = "foretress.ledger-key") String base64) {
        key = new SecretKeySpec(Base64.getDecoder().decode(base64), "HmacSHA256");
    }

    /** HMAC-SHA256 in hexadecimal; nothing stays nothing. */
    String of(String subject) {
        if (subject.isEmpty())
            return "";
        try {
            var mac = Mac.getInstance("HmacSHA256");
            mac.init(key);
            return HexFormat.of().formatHex(mac.doFinal(subject.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }
}
