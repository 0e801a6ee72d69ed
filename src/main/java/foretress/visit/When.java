package foretress.visit;

import foretress.web.DateWords;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;

/** Moments as the staff's screens say them, on the salon's clock. */
public record When(ZoneId zone, LocalDate today) {
    private static final DateWords SAY = DateWords.ENGLISH;

    public static When at(Instant now, ZoneId zone) {
        return new When(zone, LocalDate.ofInstant(now, zone));
    }

    public String hour(Instant at) {
        return SAY.hour(at.atZone(zone));
    }

    /** The day by its name, with the year when it is another one. */
    public String day(LocalDate day) {
        return SAY.weekday(day) + (day.getYear() == today.getYear() ? "" : " " + day.getYear());
    }

    public String date(LocalDate day) {
        return SAY.date(day);
    }

    /** The nearer the plainer: "today, 14:00", "yesterday, 14:00", "Sat 13 Jun, 17:30". */
    public String moment(Instant at) {
        ZonedDateTime there = at.atZone(zone);
        return near(there.toLocalDate()) + ", " + SAY.hour(there);
    }

    private String near(LocalDate day) {
        if (day.equals(today)) {
            return "today";
        }
        if (day.equals(today.plusDays(1))) {
            return "tomorrow";
        }
        if (day.equals(today.minusDays(1))) {
            return "yesterday";
        }
        return SAY.shortWeekday(day) + (day.getYear() == today.getYear() ? "" : " " + day.getYear());
    }
}
