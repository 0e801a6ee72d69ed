package foretress.visit;

import foretress.web.DateWords;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;

/** Moments as the staff's screens say them, on the salon's clock. */
public record When(ZoneId zone, LocalDate today, DateWords say, Near words) {
    /** The days that have a name of their own beside today. */
    record Near(String today, String tomorrow, String yesterday) {}

    public String hour(Instant at) {
        return say.hour(at.atZone(zone));
    }

    /** The day by its name, with the year when it is another one. */
    public String day(LocalDate day) {
        return say.weekday(day) + (day.getYear() == today.getYear() ? "" : " " + day.getYear());
    }

    public String date(LocalDate day) {
        return say.date(day);
    }

    /** The nearer the plainer: "today, 14:00", "yesterday, 14:00", "Sat 13 Jun, 17:30". */
    public String moment(Instant at) {
        ZonedDateTime there = at.atZone(zone);
        return near(there.toLocalDate()) + ", " + say.hour(there);
    }

    private String near(LocalDate day) {
        if (day.equals(today)) {
            return words.today();
        }
        if (day.equals(today.plusDays(1))) {
            return words.tomorrow();
        }
        if (day.equals(today.minusDays(1))) {
            return words.yesterday();
        }
        return say.shortWeekday(day) + (day.getYear() == today.getYear() ? "" : " " + day.getYear());
    }
}
