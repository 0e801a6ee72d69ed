package foretress.plan;

import foretress.assessment.Leaflet;
import foretress.assessment.Policy;
import foretress.assessment.Stricter;
import foretress.plan.Week.Span;
import foretress.questionnaire.SaidDate.Hemisphere;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Opening hours and waits as the tests of the planner need them. */
final class Weeks {
    static final ZoneId LONDON = ZoneId.of("Europe/London");
    static final Policy POLICY = new Policy("uk", Map.of("skin-test-wait-hours", 48, "skin-test-validity-months", 6,
        "incompatibility-test-hours", 24), Map.of(), "999", "A4", Hemisphere.NORTH, List.of());
    static final Waits WAITS = new Waits(POLICY, Stricter.of(POLICY), 0);

    private Weeks() {}

    static Week of(String opens, String closes, DayOfWeek... shut) {
        return new Week(Arrays.stream(DayOfWeek.values()).filter(day -> !List.of(shut).contains(day))
            .collect(Collectors.toMap(Function.identity(),
                day -> List.of(new Span(LocalTime.parse(opens), LocalTime.parse(closes))))));
    }

    /** Monday to Saturday, nine to six. */
    static OpeningHours nineToSix(ZoneId zone, LocalDate... closed) {
        return new OpeningHours(of("09:00", "18:00", DayOfWeek.SUNDAY), Set.of(closed), zone);
    }

    static Waits readAgain(int days) {
        return new Waits(POLICY, Stricter.of(POLICY), days);
    }

    static Waits leaflet(Leaflet leaflet) {
        return new Waits(POLICY, Stricter.of(POLICY, Optional.of(leaflet)), 0);
    }

    static Instant at(String wall, ZoneId zone) {
        return LocalDateTime.parse(wall).atZone(zone).toInstant();
    }

    static String wall(Instant instant, ZoneId zone) {
        return instant.atZone(zone).toLocalDateTime().toString();
    }
}
