package foretress.web;

import jakarta.inject.Singleton;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * The token in every form: an HMAC over the session it was shown to (OWASP, Cross-Site Request Forgery Prevention, "signed double
 * submit"). It is the same on every page of a session and good as long as the session lives, so that neither a second tab nor a
 * page that looks again by itself makes the forms that are open unusable.
 */
@Singleton
public class FormTokens {
    /** The form's field. */
    public static final String FIELD = "csrf-token";
    private final SecretKeySpec key;

    FormTokens(@ConfigProperty(name = "foretress.session-key") String base64) {
        key = new SecretKeySpec(
            hmac(new SecretKeySpec(Base64.getDecoder().decode(base64), "HmacSHA256"), "foretress form tokens"),
            "HmacSHA256");
    }

    String of(String session) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(hmac(key, session));
    }

    /** Whether this token was made here for one of these sessions. */
    public boolean prove(String token, List<String> sessions) {
        byte[] given = token.getBytes(StandardCharsets.UTF_8);
        return sessions.stream()
            .anyMatch(session -> MessageDigest.isEqual(given, of(session).getBytes(StandardCharsets.UTF_8)));
    }

    private static byte[] hmac(SecretKeySpec key, String said) {
        try {
            var mac = Mac.getInstance("HmacSHA256");
            mac.init(key);
            return mac.doFinal(said.getBytes(StandardCharsets.UTF_8));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }
}
