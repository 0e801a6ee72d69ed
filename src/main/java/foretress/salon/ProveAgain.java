package foretress.salon;

import foretress.web.Caller;
import foretress.web.Happened;
import jakarta.enterprise.event.Event;
import jakarta.inject.Singleton;
import java.time.Duration;
import java.util.Optional;

/** Somebody signed in proves once more who they are before an act that must be theirs; slowed down as signing in is (ASVS 7.5.3). */
@Singleton
public class ProveAgain {
    /** What came of it: proved, or not, or a wait before the next try. */
    public record Outcome(boolean proved, Optional<Duration> pause) {}

    private final Passwords passwords;
    private final Brake brake;
    private final Caller caller;
    private final Event<Happened> happened;

    ProveAgain(Passwords passwords, Brake brake, Caller caller, Event<Happened> happened) {
        this.passwords = passwords;
        this.brake = brake;
        this.caller = caller;
        this.happened = happened;
    }

    public Outcome with(Staff staff, String password) {
        Optional<Duration> wait = brake.take(staff.login, caller.address());
        if (wait.isPresent()) return new Outcome(false, wait);
        boolean right = passwords.check(Staff.byId(staff.id), password);
        if (right) brake.passed(staff.login);
        String id = staff.id.toString();
        happened.fire(new Happened(id, right ? "proved again" : "proof refused", id));
        return new Outcome(right, Optional.empty());
    }
}
