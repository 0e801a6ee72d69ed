package foretress.salon;

import foretress.web.AtStart;
import foretress.web.Notices;
import foretress.web.PublicAddress;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.time.Clock;

/** Until there is an owner, every start gives a fresh link for becoming it; the one before is void. */
@Singleton
class OwnerLink implements AtStart {
    private final Notices notices;
    private final PublicAddress address;
    private final Clock clock;

    OwnerLink(Notices notices, PublicAddress address, Clock clock) {
        this.notices = notices;
        this.address = address;
        this.clock = clock;
    }

    /** Last of all: a room may have made an owner meanwhile. */
    @Override public int order() {
        return 2000;
    }

    @Override public void run() {
        if (Staff.count("role", Role.OWNER) > 0) return;
        var code = QuarkusTransaction.requiringNew().call(() -> SetUpCode.forOwner(clock.instant()));
        notices.add("Set up the salon with this link, once, within 24 hours: " + address.link("/set-up/" + code));
    }
}
