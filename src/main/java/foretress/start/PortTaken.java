package foretress.start;

import io.quarkus.runtime.QuarkusBindException;
import java.util.Optional;

/** A server that did not come up because another program took its port after {@link Preparation} had found it free: on a busy machine a start takes minutes. */
final class PortTaken {
    private PortTaken() {}

    static Optional<StartRefused> behind(Throwable failure) {
        return TooBusy.causes(failure).filter(QuarkusBindException.class::isInstance)
            .map(QuarkusBindException.class::cast).findFirst()
            .map(taken -> new StartRefused(StartRefused.Reason.PORT_IN_USE,
                "Another program took port %s while this one was starting. Is the server running already? "
                    .formatted(taken.getPort()) + "QUARKUS_HTTP_PORT names another port."));
    }
}
