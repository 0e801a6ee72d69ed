package foretress.salon;

import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import java.time.Clock;

/** Takes somebody on with a password already chosen: for the demo's invented staff. */
@Singleton
public class Hiring {
    private final Passwords passwords;
    private final Clock clock;

    Hiring(Passwords passwords, Clock clock) {
        this.passwords = passwords;
        this.clock = clock;
    }

    @Transactional
    public Staff hire(String name, String login, Role role, String password) {
        var staff = new Staff(name, login, role, clock.instant());
        staff.proves(passwords.hash(password));
        staff.persist();
        return staff;
    }
}
