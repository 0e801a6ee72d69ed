package foretress.running;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Clock;

/** The one clock of the application; everything dated asks for it, so that tests can move it. */
public class Clocks {
    @Produces
    @Singleton
    public Clock clock() {
        return Clock.systemUTC();
    }
}
