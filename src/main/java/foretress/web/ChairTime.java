package foretress.web;

import jakarta.enterprise.context.RequestScoped;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days and hours as the staff's screens say them. */
@RequestScoped
public class ChairTime {
    private final Language language;

    ChairTime(Language language) {
        this.language = language;
    }

    public String day(ZonedDateTime moment) {
        return moment.format(DateTimeFormatter.ofPattern("EEEE d MMMM", language.locale()));
    }

    public String hour(ZonedDateTime moment) {
        return moment.format(DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT));
    }

    public String dayAndTime(ZonedDateTime moment) {
        return moment.format(DateTimeFormatter.ofPattern("EEE d MMM", language.locale())) + ", " + hour(moment);
    }
}
