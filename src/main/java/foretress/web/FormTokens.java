package foretress.web;

import foretress.running.Hmac;
import jakarta.inject.Singleton;
import java.util.Base64;
import java.util.List;
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
    private final Hmac key;

    FormTokens(@ConfigProperty(name = "foretress.session-key") String base64) {
        key = new Hmac(Hmac.ofBase64(base64).of("foretress form tokens"));
    }

    String of(String session) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(key.of(session));
    }

    /** Whether this token was made here for one of these sessions. */
    public boolean prove(String token, List<String> sessions) {
        return sessions.stream().anyMatch(session -> Hmac.same(token, of(session)));
    }
}
