package foretress.web;

import foretress.plan.ClosedDays;
import foretress.plan.Week;
import foretress.salon.Salon;
import io.quarkus.narayana.jta.QuarkusTransaction;
import java.time.ZoneId;
import java.util.List;

/** The invented salon whose name stands on the gallery's pages. */
final class GallerySalon {
    private GallerySalon() {}

    static void open() {
        QuarkusTransaction.requiringNew().run(() -> {
            Salon.deleteAll();
            new Salon(
                new Salon.Contact("Alder & Wren", "3 Millrace Lane", "Tarnbeck", "01632 960 114",
                    "hello@alderandwren.example", "999"),
                new Salon.Custom(ZoneId.of("Europe/London"), "uk", Salon.PaperSize.A4, List.of("en", "es"),
                    Week.parse(""), ClosedDays.parse("")))
                .persist();
        });
    }

    static void close() {
        QuarkusTransaction.requiringNew().run(() -> Salon.deleteAll());
    }
}
