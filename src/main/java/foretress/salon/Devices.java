package foretress.salon;

import foretress.web.PublicAddress;
import jakarta.inject.Singleton;
import jakarta.ws.rs.core.Cookie;
import jakarta.ws.rs.core.NewCookie;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Duration;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * A device on which somebody signed in before is known by a signed cookie of theirs. It opens nothing; it only keeps a way in that
 * strangers with wrong passwords cannot block. A new password makes all of somebody's devices unknown.
 */
@Singleton
class Devices {
    private static final Duration REMEMBERED = Duration.ofDays(180);

    private final SecretKeySpec key;
    private final PublicAddress address;

    Devices(@ConfigProperty(name = "foretress.session-key") String base64, PublicAddress address) {
        this.key = new SecretKeySpec(Base64.getDecoder().decode(base64), "HmacSHA256");
        this.address = address;
    }

    /** The device's own name, when it is known as one of this person's. */
    Optional<String> known(Map<String, Cookie> cookies, Staff staff) {
        return Optional.ofNullable(cookies.get(name(staff))).map(Cookie::getValue).map(value -> value.split("\\.", 2))
            .filter(parts -> parts.length == 2 && same(parts[1], sign(staff, parts[0]))).map(parts -> parts[0]);
    }

    /** The same cookie again for a device that is known, so that what is counted for it goes on. */
    NewCookie remember(Map<String, Cookie> cookies, Staff staff) {
        String device = known(cookies, staff).orElseGet(() -> UUID.randomUUID().toString());
        return new NewCookie.Builder(name(staff)).value(device + "." + sign(staff, device)).path("/").httpOnly(true)
            .secure(address.secure())
            .sameSite(NewCookie.SameSite.LAX).maxAge((int) REMEMBERED.toSeconds()).build();
    }

    /** One cookie a person, since a salon's tablet is several people's. */
    private String name(Staff staff) {
        return address.cookieName("device-" + staff.id.toString().substring(0, 8));
    }

    private String sign(Staff staff, String device) {
        try {
            var mac = Mac.getInstance("HmacSHA256");
            mac.init(key);
            var signed =
                String.join("\n", "device of staff", staff.id.toString(), device, staff.passwordHash().orElse(""));
            return HexFormat.of().formatHex(mac.doFinal(signed.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
