package foretress.salon;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.util.Optional;
import java.util.UUID;

/** The member of staff behind this request. */
@Named("who")
@RequestScoped
public class Who {
    private Staff staff;
    private UUID session;

    void is(Staff staff, UUID session) {
        this.staff = staff;
        this.session = session;
    }

    public Optional<Staff> known() {
        return Optional.ofNullable(staff);
    }

    /** @throws IllegalStateException on a route that is open to people who have not signed in */
    public Staff staff() {
        return known().orElseThrow(() -> new IllegalStateException("nobody is signed in on this route"));
    }

    Optional<UUID> session() {
        return Optional.ofNullable(session);
    }

    public boolean isSignedIn() {
        return staff != null;
    }

    public String getName() {
        return known().map(s -> s.name).orElse("");
    }

    public boolean is(Role role) {
        return known().filter(s -> s.role == role).isPresent();
    }

    public boolean isOwner() {
        return is(Role.OWNER);
    }

    public boolean isDesk() {
        return is(Role.DESK);
    }

    public boolean isStylist() {
        return is(Role.STYLIST);
    }
}
