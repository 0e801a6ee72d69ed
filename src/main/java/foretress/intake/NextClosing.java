package foretress.intake;

import foretress.salon.OpeningHours;
import foretress.salon.Salon;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/** By when a promise to call can be kept: the first closing time that leaves two hours of opening before it. */
public final class NextClosing {
    private static final Duration TIME_TO_CALL = Duration.ofHours(2);
    private static final int LOOK_AHEAD_DAYS = 21;

    private NextClosing() {}

    public static Instant after(Instant now, Salon salon) {
        ZoneId zone = salon.zoneId();
        LocalDate today = now.atZone(zone).toLocalDate();
        for (int i = 0; i <= LOOK_AHEAD_DAYS; i++) {
            LocalDate day = today.plusDays(i);
            List<OpeningHours.Span> open = salon.hours().on(day.getDayOfWeek());
            if (!open.isEmpty()) {
                Instant closing = day.atTime(open.get(open.size() - 1).to()).atZone(zone).toInstant();
                if (!now.plus(TIME_TO_CALL).isAfter(closing)) {
                    return closing;
                }
            }
        }
        // A salon that never opens still promised: the next day at the same time.
        return now.plus(Duration.ofDays(1));
    }
}
