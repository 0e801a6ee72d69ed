package foretress.start;

import java.sql.SQLException;
import java.util.Optional;
import java.util.stream.Stream;

/** A server that did not come up because the database had no time for it. */
final class TooBusy {
    /** How the pool of connections begins what it says after {@code quarkus.datasource.jdbc.acquisition-timeout}. */
    private static final String SAID = "cquisition timeout";

    private TooBusy() {}

    static Optional<StartRefused> behind(Throwable failure) {
        return causes(failure)
            .filter(cause -> cause instanceof SQLException && String.valueOf(cause.getMessage()).contains(SAID))
            .findFirst()
            .map(cause -> new StartRefused(StartRefused.Reason.TOO_BUSY,
                "The database opened no connection in time: this machine, or the database's server, is too busy. "
                    + "Nothing was changed. Start again when less is running; QUARKUS_DATASOURCE_JDBC_ACQUISITION_TIMEOUT gives it longer than the usual 60S."));
    }

    static Stream<Throwable> causes(Throwable failure) {
        return Stream.iterate(failure, cause -> cause != null, Throwable::getCause).limit(20);
    }
}
