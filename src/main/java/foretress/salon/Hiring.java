package foretress.salon;

import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;

/** Takes people on with a password already chosen, the same for all and hashed once: for the demo's invented staff. */
@Singleton
public class Hiring {
    private final Passwords passwords;
    private final Clock clock;

    Hiring(Passwords passwords, Clock clock) {
        this.passwords = passwords;
        this.clock = clock;
    }

    public record Person(String name, String login, Role role) {}

    @Transactional
    public void hire(List<Person> people, String password) {
        PasswordHash hash = passwords.hash(password);
        for (Person person : people) {
            var staff = new Staff(person.name(), person.login(), person.role(), clock.instant());
            staff.proves(hash);
            staff.persist();
        }
    }
}
