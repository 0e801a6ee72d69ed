package foretress.visit;

import foretress.web.StaffLanguage;
import foretress.web.StaffWords;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;

/** Says moments near and far to staff, each in her own language. */
@Singleton
public class Moments {
    private final StaffLanguage language;
    private final StaffWords say;
    private final Clock clock;

    Moments(StaffLanguage language, StaffWords say, Clock clock) {
        this.language = language;
        this.say = say;
        this.clock = clock;
    }

    /** As they are said now, on the clock of this zone. */
    public When in(ZoneId zone) {
        return new When(zone, LocalDate.ofInstant(clock.instant(), zone), language.dates(),
            new When.Near(say.when_today(), say.when_tomorrow(), say.when_yesterday()));
    }
}
