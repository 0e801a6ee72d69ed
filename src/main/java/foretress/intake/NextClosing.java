package foretress.intake;

import foretress.plan.OpeningHours;
import foretress.plan.OpeningHours.Window;
import foretress.salon.Salon;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** By when a promise to call can be kept: the first closing time that leaves two hours of opening before it. */
public final class NextClosing {
    private static final Duration TIME_TO_CALL = Duration.ofHours(2);
    private static final Duration LOOK_AHEAD = Duration.ofDays(21);

    private NextClosing() {}

    public static Instant after(Instant now, Salon salon) {
        OpeningHours hours = salon.hours();
        Map<LocalDate, Instant> closings = hours.between(now, now.plus(LOOK_AHEAD)).stream().collect(Collectors.toMap(
            open -> open.from().atZone(hours.zone()).toLocalDate(), Window::to, (early, late) -> late,
            LinkedHashMap::new));
        // A salon that never opens still promised: the next day at the same time.
        return closings.values().stream().filter(closing -> !now.plus(TIME_TO_CALL).isAfter(closing)).findFirst()
            .orElse(now.plus(Duration.ofDays(1)));
    }
}
