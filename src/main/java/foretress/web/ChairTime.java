package foretress.web;

import jakarta.enterprise.context.RequestScoped;
import java.time.ZonedDateTime;

/** Days and hours as the staff's screens say them. */
@RequestScoped
public class ChairTime {
    private final Language language;

    ChairTime(Language language) {
        this.language = language;
    }

    private DateWords words() {
        return new DateWords(language.locale());
    }

    public String day(ZonedDateTime moment) {
        return words().weekday(moment);
    }

    public String hour(ZonedDateTime moment) {
        return words().hour(moment);
    }

    public String dayAndTime(ZonedDateTime moment) {
        return words().shortWeekday(moment) + ", " + hour(moment);
    }
}
