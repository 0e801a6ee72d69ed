package foretress.salon;

import foretress.web.Caller;
import foretress.web.Happened;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.event.Event;
import jakarta.inject.Singleton;
import java.time.Duration;
import java.util.Optional;

/** Lets staff in by login and password. A wrong password, an unknown login and somebody who left are answered alike. */
@Singleton
class SignIn {
    /** What came of a try: somebody, or nobody, or a wait before the next one. */
    record Outcome(Optional<Staff> staff, Optional<Duration> pause) {}

    private final Passwords passwords;
    private final Brake brake;
    private final Caller caller;
    private final Event<Happened> happened;

    SignIn(Passwords passwords, Brake brake, Caller caller, Event<Happened> happened) {
        this.passwords = passwords;
        this.brake = brake;
        this.caller = caller;
        this.happened = happened;
    }

    Outcome attempt(String login, String password) {
        var wait = brake.take(login, caller.address());
        if (wait.isPresent()) return new Outcome(Optional.empty(), wait);
        var staff = Staff.byLogin(login);
        if (!passwords.check(staff, password)) return refused(staff);
        brake.passed(login);
        return new Outcome(staff.map(s -> welcomed(s, password)), Optional.empty());
    }

    private Outcome refused(Optional<Staff> staff) {
        happened.fire(new Happened("nobody", "sign-in refused", staff.map(s -> s.id.toString()).orElse("")));
        return new Outcome(Optional.empty(), Optional.empty());
    }

    private Staff welcomed(Staff staff, String password) {
        return QuarkusTransaction.requiringNew().call(() -> {
            var stored = Staff.byId(staff.id).orElseThrow();
            if (stored.passwordHash().map(PasswordHash::parse).filter(PasswordHash::isOutdated).isPresent())
                stored.passwordHash = passwords.hash(password).toString();
            happened.fire(new Happened(stored.id.toString(), "signed in", stored.id.toString()));
            return stored;
        });
    }
}
