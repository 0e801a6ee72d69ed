package foretress.salon;

import foretress.running.Hmac;
import foretress.web.PublicAddress;
import jakarta.inject.Singleton;
import jakarta.ws.rs.core.Cookie;
import jakarta.ws.rs.core.NewCookie;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * A device on which somebody signed in before is known by a signed cookie of theirs. It opens nothing; it only keeps a way in that
 * strangers with wrong passwords cannot block. A new password makes all of somebody's devices unknown.
 */
@Singleton
class Devices {
    private static final Duration REMEMBERED = Duration.ofDays(180);

    private final Hmac key;
    private final PublicAddress address;

    Devices(@ConfigProperty(name = "foretress.session-key") String base64, PublicAddress address) {
        this.key = Hmac.ofBase64(base64);
        this.address = address;
    }

    /** The device's own name, when it is known as one of this person's. */
    Optional<String> known(Map<String, Cookie> cookies, Staff staff) {
        return Optional.ofNullable(cookies.get(name(staff))).map(Cookie::getValue).map(value -> value.split("\\.", 2))
            .filter(parts -> parts.length == 2 && Hmac.same(parts[1], sign(staff, parts[0]))).map(parts -> parts[0]);
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
        return key.hex(
            String.join("\n", "device of staff", staff.id.toString(), device, staff.passwordHash().orElse("")));
    }
}
