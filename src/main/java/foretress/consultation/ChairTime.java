package foretress.consultation;

import foretress.web.Language;
import foretress.web.Stylist;
import jakarta.enterprise.context.RequestScoped;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days and hours as the staff's screens say them. */
@RequestScoped
class ChairTime {
    private final Language language;

    ChairTime(Language language) {
        this.language = language;
    }

    String day(ZonedDateTime moment) {
        return moment.format(DateTimeFormatter.ofPattern("EEEE d MMMM", language.locale()));
    }

    String hour(ZonedDateTime moment) {
        return moment.format(DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT));
    }

    String dayAndTime(ZonedDateTime moment) {
        return moment.format(DateTimeFormatter.ofPattern("EEE d MMM", language.locale())) + ", " + hour(moment);
    }
}
