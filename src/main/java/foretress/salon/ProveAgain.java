package foretress.salon;

import foretress.running.AuditEvent;
import foretress.web.RateLimiter;
import jakarta.enterprise.event.Event;
import jakarta.inject.Singleton;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;

/** Somebody signed in proves once more who they are before an act that must be theirs; slowed down by the sign-in's
 * own counter, which nobody outside it can run up (ASVS 7.5.3). */
@Singleton
public class ProveAgain {
    /** What came of it: proved, or not, or a wait before the next try. */
    public record Outcome(boolean proved, Optional<Duration> pause) {
        /** Whole seconds until the next try, never too few; empty where nobody has to wait. */
        public OptionalLong seconds() {
            return pause.map(wait -> OptionalLong.of(wait.toSeconds() + 1)).orElse(OptionalLong.empty());
        }
    }

    private final Passwords passwords;
    private final RateLimiter brake;
    private final Who who;
    private final Event<AuditEvent> happened;

    ProveAgain(Passwords passwords, RateLimiter brake, Who who, Event<AuditEvent> happened) {
        this.passwords = passwords;
        this.brake = brake;
        this.who = who;
        this.happened = happened;
    }

    public Outcome with(Staff staff, String password) {
        String proof = "proof " + who.session().orElse(staff.id);
        Optional<Duration> wait = brake.guess(proof);
        if (wait.isPresent()) {
            return new Outcome(false, wait);
        }
        boolean right = passwords.check(Staff.byId(staff.id), password);
        if (right) {
            brake.passed(proof);
        }
        String id = staff.id.toString();
        happened.fire(new AuditEvent(id, right ? "proved again" : "proof refused", id));
        return new Outcome(right, Optional.empty());
    }
}
