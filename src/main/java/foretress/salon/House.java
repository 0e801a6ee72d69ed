package foretress.salon;

import io.quarkus.runtime.BlockingOperationControl;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.util.List;
import java.util.Optional;
import org.jboss.logging.Logger;

/** The salon's particulars as templates show them, blank until the owner has set it up: {@code {inject:house.name}}. */
@Named("house")
@RequestScoped
public class House {
    private static final Logger LOG = Logger.getLogger(House.class);
    /** As last seen; error pages show it where the store cannot be asked. */
    private static volatile Optional<Salon> last = Optional.empty();
    private Optional<Salon> salon;

    private Optional<Salon> salon() {
        if (salon == null) {
            salon = BlockingOperationControl.isBlockingAllowed() ? asked() : last;
        }
        return salon;
    }

    private static Optional<Salon> asked() {
        try {
            last = Salon.found();
        } catch (RuntimeException e) {
            LOG.warn("the salon's particulars could not be read, the last known are shown", e);
        }
        return last;
    }

    public boolean isSetUp() {
        return salon().isPresent();
    }

    public String getName() {
        return salon().map(s -> s.name).orElse("");
    }

    public String getTown() {
        return salon().map(s -> s.town).orElse("");
    }

    public String getAddress() {
        return salon().map(s -> s.address).orElse("");
    }

    public String getPhone() {
        return salon().map(s -> s.phone).orElse("");
    }

    /** The number as a {@code tel:} link dials it. */
    public String getDial() {
        return getPhone().replaceAll("[^+0-9]", "");
    }

    public String getUrgentNumber() {
        return salon().map(s -> s.urgentNumber).orElse("");
    }

    public List<String> getLanguages() {
        return salon().map(Salon::languageTags).orElse(List.of("en"));
    }
}
