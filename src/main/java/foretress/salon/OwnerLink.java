package foretress.salon;

import foretress.running.AtStart;
import foretress.running.ConsoleNotices;
import foretress.web.PublicAddress;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Until there is an owner, every start gives a fresh link for becoming it; the one before is void. And whoever may start the program
 * may ask for a link with which an owner who lost the password chooses another.
 */
@Singleton
class OwnerLink implements AtStart {
    private final ConsoleNotices notices;
    private final PublicAddress address;
    private final Clock clock;
    private final boolean lost;

    OwnerLink(ConsoleNotices notices, PublicAddress address, Clock clock,
        @ConfigProperty(name = "foretress.owner-lost-password", defaultValue = "false") boolean lost) {
        this.lost = lost;
        this.notices = notices;
        this.address = address;
        this.clock = clock;
    }

    /** Last of all: a room may have made an owner meanwhile. */
    @Override
    public int order() {
        return 2000;
    }

    @Override
    public void run() {
        List<Staff> owners = Staff.<Staff>list("role = ?1 and active = true", Role.OWNER);
        if (owners.isEmpty()) {
            offer(() -> SetUpCode.forOwner(clock.instant()), "Set up the salon with this link");
        } else if (lost) {
            for (Staff owner : owners) {
                offer(() -> SetUpCode.forStaff(Staff.byId(owner.id).orElseThrow(), clock.instant()),
                    "A new password for " + owner.login + " is chosen with this link");
            }
        }
    }

    private void offer(Callable<String> code, String what) {
        notices.add(what + ", once, within 24 hours: "
            + address.link("/set-up/" + QuarkusTransaction.requiringNew().call(code)));
    }
}
