package foretress.intake;

import foretress.consent.ConsentInput;
import foretress.plan.Week;
import foretress.salon.Salon;
import jakarta.inject.Singleton;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The salon as its clients read it, opening hours in words. */
@Singleton
public class SalonWords {

    public ConsentInput.Salon of(Salon salon, String language) {
        return new ConsentInput.Salon(salon.name, salon.address, salon.town, salon.phone, salon.email,
            opening(salon.week(), Locale.forLanguageTag(language)), salon.urgentNumber);
    }

    /** Days with the same hours that follow each other are said together: "Tue–Fri 9:00–18:00, Sat 9:00–16:00". */
    String opening(Week hours, Locale locale) {
        List<String> said = new ArrayList<>();
        DayOfWeek[] days = DayOfWeek.values();
        for (int i = 0; i < days.length; i++) {
            String open = hours.said(days[i]).orElse("");
            int last = i;
            while (last + 1 < days.length && hours.said(days[last + 1]).orElse("").equals(open)) {
                last++;
            }
            if (!open.isEmpty()) {
                said.add(name(days[i], locale) + (last > i ? "–" + name(days[last], locale) : "") + " " + open);
            }
            i = last;
        }
        return String.join(", ", said);
    }

    private static String name(DayOfWeek day, Locale locale) {
        return day.getDisplayName(TextStyle.SHORT, locale);
    }
}
