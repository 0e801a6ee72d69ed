package foretress.salon;

import foretress.running.AuditEvent;
import foretress.web.Caller;
import foretress.web.Fold;
import foretress.web.RateLimiter;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.event.Event;
import jakarta.inject.Singleton;
import jakarta.ws.rs.core.Cookie;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;

/** Lets staff in by login and password. A wrong password, an unknown login and somebody who left are answered alike. */
@Singleton
class SignIn {
    /** What came of a try: somebody, or nobody, or a wait before the next one. */
    record Outcome(Optional<Staff> staff, Optional<Duration> pause) {}

    private static final int LONGEST_LOGIN = 128;

    private final Passwords passwords;
    private final RateLimiter brake;
    private final Devices devices;
    private final Caller caller;
    private final Event<AuditEvent> happened;

    SignIn(Passwords passwords, RateLimiter brake, Devices devices, Caller caller, Event<AuditEvent> happened) {
        this.passwords = passwords;
        this.brake = brake;
        this.devices = devices;
        this.caller = caller;
        this.happened = happened;
    }

    /** @param cookies tell whether this person signed in on this device before; then no stranger's tries stand in the way */
    Outcome attempt(String login, String password, Map<String, Cookie> cookies) {
        Optional<Staff> staff = Staff.byLogin(login);
        Optional<String> device = staff.flatMap(somebody -> devices.known(cookies, somebody));
        String guessed = device.map(known -> "on device " + known).orElseGet(() -> "as " + key(login));
        Optional<Duration> wait = (device.isPresent() ? Optional.<Duration>empty()
            : brake.stranger(RateLimiter.Door.SIGN_IN, caller.address()))
            .or(() -> brake.guess(guessed));
        if (wait.isPresent()) {
            return new Outcome(Optional.empty(), wait);
        }
        if (!passwords.check(staff, password)) {
            return refused(staff);
        }
        brake.passed(guessed);
        return new Outcome(staff.map(s -> welcomed(s, password)), Optional.empty());
    }

    /** No sign-in name is longer; what is made up to be longer takes no more room. */
    private static String key(String login) {
        String folded = Fold.fold(login);
        return folded.length() <= LONGEST_LOGIN ? folded : folded.substring(0, LONGEST_LOGIN);
    }

    private Outcome refused(Optional<Staff> staff) {
        happened.fire(new AuditEvent("nobody", "sign-in refused", staff.map(s -> s.id.toString()).orElse("")));
        return new Outcome(Optional.empty(), Optional.empty());
    }

    private Staff welcomed(Staff staff, String password) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Staff stored = Staff.byId(staff.id).orElseThrow();
            if (stored.passwordHash().map(PasswordHash::parse).filter(PasswordHash::isOutdated).isPresent()) {
                stored.proves(passwords.hash(password));
            }
            happened.fire(new AuditEvent(stored.id.toString(), "signed in", stored.id.toString()));
            return stored;
        });
    }
}
